package org.midlateral.mechanics;

import java.util.List;

/** Circular sections as fine polygons, and their closed forms. The pole is the circle's centre. */
final class Arcs {
  private Arcs() {}

  /** A volar arc with square ends, of this half-angle (rad), mid radius and wall. */
  static Loop open(double half, double radius, double wall, int steps) {
    return between(-half, half, radius, wall, steps);
  }

  /** The arc between two turns from the volar midline (rad), with square ends. */
  static Loop between(double from, double to, double radius, double wall, int steps) {
    double[] yn = new double[4 * (steps + 1)];
    for (int i = 0; i <= steps; i++) {
      double turn = from + (to - from) * i / steps;
      int back = 2 * (2 * steps + 1 - i);
      put(yn, 2 * i, turn, radius + wall / 2);
      put(yn, back, turn, radius - wall / 2);
    }
    return new Loop(yn);
  }

  /** A full ellipse, counter-clockwise, or clockwise as a hole. */
  static Loop ellipse(double a, double b, int steps, boolean hole) {
    double[] yn = new double[2 * steps];
    for (int i = 0; i < steps; i++) {
      double turn = 2 * Math.PI * i / steps * (hole ? -1 : 1);
      yn[2 * i] = a * Math.cos(turn);
      yn[2 * i + 1] = b * Math.sin(turn);
    }
    return new Loop(yn);
  }

  static List<Loop> ring(double outer, double inner, int steps) {
    return List.of(ellipse(outer, outer, steps, false), ellipse(inner, inner, steps, true));
  }

  private static void put(double[] yn, int at, double turn, double radius) {
    yn[at] = radius * Math.sin(turn);
    yn[at + 1] = -radius * Math.cos(turn);
  }

  /** Area of a hollow sector. */
  static double area(double half, double radius, double wall) {
    return 2 * half * radius * wall;
  }

  /** Distance of a hollow sector's centroid from the centre. */
  static double centroid(double half, double outer, double inner) {
    return 2 * Math.sin(half) * (cube(outer) - cube(inner)) / (3 * half * (sq(outer) - sq(inner)));
  }

  /** Second moment of a hollow sector about its own chord-wise centroidal axis. */
  static double second(double half, double radius, double wall) {
    double outer = radius + wall / 2;
    double inner = radius - wall / 2;
    double about = (sq(sq(outer)) - sq(sq(inner))) / 4 * (half + Math.sin(half) * Math.cos(half));
    return about - area(half, radius, wall) * sq(centroid(half, outer, inner));
  }

  /** The thin form of {@link #second}. */
  static double thin(double half, double radius, double wall) {
    return cube(radius)
        * wall
        * (half + Math.sin(half) * Math.cos(half) - 2 * sq(Math.sin(half)) / half);
  }

  /**
   * Area, distance of the centroid, second moment about the chord-wise centroidal axis and about
   * the symmetry axis of an arc whose ends are half rounds with their crests at the half-angle: a
   * hollow sector and two half discs by the parallel axis theorem.
   */
  static double[] rounded(double half, double radius, double wall) {
    double r = wall / 2;
    double start = half - Math.atan(r / radius);
    double outer = radius + r;
    double inner = radius - r;
    double disc = Math.PI * r * r / 2;
    double reach = 4 * r / (3 * Math.PI);
    // The half disc's centroid lies past the sector's end, along the end's tangent.
    double y = radius * Math.sin(start) + reach * Math.cos(start);
    double n = -radius * Math.cos(start) + reach * Math.sin(start);
    double along = r * r * r * r * (Math.PI / 8 - 8 / (9 * Math.PI));
    double across = Math.PI * r * r * r * r / 8;
    double sine = sq(Math.sin(start));
    double ownY = along * sine + across * (1 - sine);
    double ownN = along * (1 - sine) + across * sine;
    double sector = area(start, radius, wall);
    double area = sector + 2 * disc;
    double first = -sector * centroid(start, outer, inner) + 2 * disc * n;
    double quarter = (sq(sq(outer)) - sq(sq(inner))) / 4;
    double mixed = Math.sin(start) * Math.cos(start);
    double aboutY = quarter * (start + mixed) + 2 * (ownY + disc * n * n);
    double aboutN = quarter * (start - mixed) + 2 * (ownN + disc * y * y);
    return new double[] {area, first / area, aboutY - first * first / area, aboutN};
  }

  static double sq(double x) {
    return x * x;
  }

  static double cube(double x) {
    return x * x * x;
  }
}
