package org.midlateral.mesh.plane;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Triangles of plane points, looked at edge by edge and in decimal arithmetic. */
public final class PlaneTriangles {
  /** An edge between two points, the smaller number first. */
  public record Edge(int low, int high) {
    static Edge of(int a, int b) {
      return new Edge(Math.min(a, b), Math.max(a, b));
    }
  }

  private final DecimalPlane plane;
  private final int[] corners;

  /** By edge, the far corners of the triangles beside it. */
  private final Map<Edge, List<Integer>> far = new HashMap<>();

  /**
   * These triangles.
   *
   * @param corners m by 3
   */
  public PlaneTriangles(double[] x, double[] y, int[] corners) {
    this.plane = new DecimalPlane(x, y);
    this.corners = corners;
    for (int t = 0; t < corners.length; t += 3) {
      for (int i = 0; i < 3; i++) {
        Edge edge = Edge.of(corners[t + i], corners[t + (i + 1) % 3]);
        far.computeIfAbsent(edge, e -> new ArrayList<>()).add(corners[t + (i + 2) % 3]);
      }
    }
  }

  public int size() {
    return corners.length / 3;
  }

  public Set<Edge> edges() {
    return far.keySet();
  }

  /** Edges with one triangle. */
  public Set<Edge> boundary() {
    return far.keySet().stream().filter(e -> far.get(e).size() == 1).collect(Collectors.toSet());
  }

  /** Points that are corners. */
  public Set<Integer> points() {
    Set<Integer> points = new TreeSet<>();
    for (int corner : corners) {
      points.add(corner);
    }
    return points;
  }

  /** Triangles that do not turn counter-clockwise. */
  public List<Integer> turnedOver() {
    List<Integer> wrong = new ArrayList<>();
    for (int t = 0; t < corners.length; t += 3) {
      if (plane.turn(corners[t], corners[t + 1], corners[t + 2]) <= 0) {
        wrong.add(t / 3);
      }
    }
    return wrong;
  }

  /** Twice the area of all. */
  public BigDecimal twiceArea() {
    BigDecimal sum = BigDecimal.ZERO;
    for (int t = 0; t < corners.length; t += 3) {
      sum = sum.add(plane.twiceArea(corners[t], corners[t + 1], corners[t + 2]));
    }
    return sum;
  }

  /**
   * How an edge's far corner on one side lies to the circle through the triangle on the other.
   *
   * @return 1 inside: not Delaunay; 0 on the circle: a tie; -1 outside, or no second triangle
   */
  public int inCircle(Edge edge) {
    List<Integer> two = far.get(edge);
    if (two.size() == 1) {
      return -1;
    }
    int c = two.get(0);
    boolean ahead = plane.turn(edge.low, edge.high, c) > 0;
    return plane.inCircle(
        ahead ? edge.low : edge.high, ahead ? edge.high : edge.low, c, two.get(1));
  }

  /** Edges that two triangles run along in one direction. */
  public List<Edge> tangled() {
    Set<List<Integer>> met = new HashSet<>();
    List<Edge> twice = new ArrayList<>();
    for (int t = 0; t < corners.length; t += 3) {
      for (int i = 0; i < 3; i++) {
        int from = corners[t + i];
        int to = corners[t + (i + 1) % 3];
        if (!met.add(List.of(from, to))) {
          twice.add(Edge.of(from, to));
        }
      }
    }
    return twice;
  }

  /** Edges of the boundary that have a point outside, where all are on the hull. */
  public List<Edge> dented() {
    Set<Integer> points = points();
    return boundary().stream()
        .filter(
            e -> {
              int inside = plane.turn(e.low, e.high, far.get(e).get(0));
              return points.stream().anyMatch(p -> plane.turn(e.low, e.high, p) == -inside);
            })
        .toList();
  }

  /** Edges that break the criterion. */
  public List<Edge> notDelaunay() {
    return far.keySet().stream().filter(e -> inCircle(e) > 0).toList();
  }
}
