package org.midlateral.solid;

import java.util.Arrays;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;
import org.midlateral.piece.RaisedSlopes;

/**
 * Points along the foot and along the brow of what is raised on a piece, so that its mesh follows
 * the outlines ({@link RaisedSlopes}).
 */
final class Contours {
  /** Spacing of the points (mm): under twice the slope's width, so that every step is an edge. */
  private static final double SPACING = 0.33;

  /**
   * Shorter rings, as in the narrowest letters, are left out: their corners would be slivers (mm).
   */
  private static final double LEAST_RING = 4 * SPACING;

  /**
   * Two points never stand closer than this (mm): less than a slope's width, which on the skin is
   * less than on the outside.
   */
  private static final double CROWDED = 0.5 * SPACING;

  /** A ring of wider spaced points on either side leads over to the open lattice (mm). */
  private static final double APRON_SPACING = 0.5;

  /** The lattice keeps this far from all of these points, at most (mm). */
  private static final double KEEP_OFF = 0.52;

  /** The lattice keeps this share of its spacing from them, so that wide strokes are filled. */
  private static final double CLEAR = 0.62;

  private static final Polygon NOTHING = new GeometryFactory().createPolygon();

  private double[] angle = new double[0];
  private double[] station = new double[0];
  private double[] girth = new double[0];
  private double[] height = new double[0];
  private final double raised;
  private final IndexedPointInAreaLocator inside;
  private final Envelope box;
  private int size;

  private Contours(double raised, Geometry brow) {
    this.raised = raised;
    this.inside = new IndexedPointInAreaLocator(brow);
    this.box = brow.getEnvelopeInternal();
  }

  /** The contours of what is raised on a piece; none where nothing is. */
  static Contours of(Piece piece, SizingField density) {
    if (piece.raised().isEmpty()) {
      return new Contours(0, NOTHING);
    }
    Raised raised = piece.raised().get();
    RaisedSlopes slopes = raised.slopes();
    Contours contours = new Contours(raised.height(), slopes.brow());
    contours.add(piece, density, slopes.foot(), SPACING, 0);
    contours.add(piece, density, slopes.brow(), SPACING, raised.height());
    contours.add(piece, density, slopes.around(), APRON_SPACING, 0);
    contours.add(piece, density, slopes.within(), APRON_SPACING, raised.height());
    return contours;
  }

  private void add(Piece piece, SizingField density, Geometry shape, double spacing, double high) {
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) shape.getGeometryN(i);
      add(piece, density, polygon.getExteriorRing(), spacing, high);
      for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
        add(piece, density, polygon.getInteriorRingN(k), spacing, high);
      }
    }
  }

  /** How far the lattice keeps from a contour's point (mm). */
  static double keepOff(SizingField density, double station) {
    return Math.min(KEEP_OFF, CLEAR * density.spacing(station));
  }

  /**
   * Points evenly along a ring, as lengths count where steps round the finger are narrower; closer
   * where the lattice is finer.
   */
  private void add(Piece piece, SizingField density, LineString ring, double spacing, double high) {
    if (ring.getLength() < LEAST_RING) {
      return;
    }
    Coordinate[] c = ring.getCoordinates();
    double[] at = new double[c.length];
    double before = angle(piece, c[0].x, c[0].y);
    for (int k = 1; k < c.length; k++) {
      double here = angle(piece, c[k].x, c[k].y);
      double turn = here - before;
      double stretch = turn == 0 ? 1 : (density.stretched(here) - density.stretched(before)) / turn;
      double round = stretch * (c[k].x - c[k - 1].x);
      double along = c[k].y - c[k - 1].y;
      double length = Math.sqrt(round * round + along * along);
      at[k] = at[k - 1] + length / Math.min(spacing, density.spacing(c[k].y));
      before = here;
    }
    int n = (int) Math.ceil(at[c.length - 1]);
    int k = 0;
    for (int i = 0; i < n; i++) {
      double target = at[c.length - 1] * i / n;
      while (at[k + 1] <= target) {
        k++;
      }
      double share = (target - at[k]) / (at[k + 1] - at[k]);
      double girth = c[k].x + share * (c[k + 1].x - c[k].x);
      put(piece, girth, c[k].y + share * (c[k + 1].y - c[k].y), high);
    }
  }

  /** Keeps a point, unless it would crowd one that is there already. */
  private void put(Piece piece, double girth, double at, double high) {
    for (int i = 0; i < size; i++) {
      double along = station[i] - at;
      double round = this.girth[i] - girth;
      if (along * along + round * round < CROWDED * CROWDED) {
        return;
      }
    }
    if (size == angle.length) {
      angle = Arrays.copyOf(angle, 2 * size + 64);
      station = Arrays.copyOf(station, angle.length);
      this.girth = Arrays.copyOf(this.girth, angle.length);
      height = Arrays.copyOf(height, angle.length);
    }
    angle[size] = angle(piece, girth, at);
    this.girth[size] = girth;
    station[size] = at;
    height[size++] = high;
  }

  private static double angle(Piece piece, double girth, double station) {
    return piece.midline().angle(piece.digit().slice(station), girth);
  }

  int size() {
    return size;
  }

  /** Angles off the piece's midline (rad), appended to others. */
  double[] anglesAfter(double[] first) {
    return after(first, angle);
  }

  /** Stations (mm), appended to others. */
  double[] stationsAfter(double[] first) {
    return after(first, station);
  }

  /** Height over the outer surface of a contour's point (mm). */
  double height(int i) {
    return height[i];
  }

  /** Height over the outer surface of a point between the contours (mm). */
  double height(Piece piece, Slice slice, double own) {
    if (slice.station() < box.getMinY() || slice.station() > box.getMaxY()) {
      return 0;
    }
    Coordinate at = new Coordinate(piece.midline().girth(slice, own), slice.station());
    return box.contains(at) && inside.locate(at) == Location.INTERIOR ? raised : 0;
  }

  private double[] after(double[] first, double[] own) {
    double[] all = Arrays.copyOf(first, first.length + size);
    System.arraycopy(own, 0, all, first.length, size);
    return all;
  }
}
