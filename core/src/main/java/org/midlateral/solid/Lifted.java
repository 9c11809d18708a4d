package org.midlateral.solid;

import java.util.Arrays;
import java.util.List;
import org.midlateral.digit.Slice;
import org.midlateral.mesh.query.MedianSplit;
import org.midlateral.piece.Piece;

/** The points of a piece's domain with their places on its inner surface. */
final class Lifted {
  private final Piece piece;
  private final OffsetSurface surface;
  private double[] angle;
  private double[] station;

  /** Raised over the wall by this much (mm). */
  private double[] height;

  /** Inner point and normal, n by 6, row-major. */
  private double[] frame;

  private int size;

  private Lifted(Piece piece, OffsetSurface surface, PlaneMesh plane) {
    this.piece = piece;
    this.surface = surface;
    this.size = plane.size();
    this.angle = plane.angles();
    this.station = plane.stations();
    this.height = new double[size];
    this.frame = new double[6 * size];
  }

  /** The points of a triangulated domain. */
  static Lifted of(
      Piece piece,
      OffsetSurface surface,
      List<EdgeLoop> loops,
      Contours contours,
      PlaneMesh plane) {
    Lifted lifted = new Lifted(piece, surface, plane);
    int at = 0;
    for (EdgeLoop loop : loops) {
      for (int i = 0; i < loop.vertices(); i++) {
        loop.place(2 * i, lifted.frame, 6 * at++);
      }
    }
    Slice slice = null;
    boolean uniform = false;
    for (int i = at; i < lifted.size; i++) {
      double s = lifted.station[i];
      if (slice == null || slice.station() != s) {
        slice = piece.digit().slice(s);
        uniform = piece.gap().uniformAt(s);
      }
      surface.at(slice, lifted.angle[i], uniform, lifted.frame, i);
      int c = i - at;
      lifted.height[i] =
          c < contours.size() ? contours.height(c) : contours.height(piece, slice, lifted.angle[i]);
    }
    return lifted;
  }

  /** Adds a point as much raised as one that is there. */
  void add(double atAngle, double atStation, int raisedAs) {
    if (size == angle.length) {
      int room = size + size / 8 + 16;
      angle = Arrays.copyOf(angle, room);
      station = Arrays.copyOf(station, room);
      height = Arrays.copyOf(height, room);
      frame = Arrays.copyOf(frame, 6 * room);
    }
    angle[size] = atAngle;
    station[size] = atStation;
    height[size] = height[raisedAs];
    Slice slice = piece.digit().slice(atStation);
    surface.at(slice, atAngle, piece.gap().uniformAt(atStation), frame, size);
    size++;
  }

  /**
   * Brings triangles into an order in which those of any stretch lie close together, and numbers
   * the points as they first come up.
   *
   * @param corners of the triangles
   * @param fixed the first so many points keep their numbers
   * @return corners of the same triangles
   */
  int[] inOrder(int[] corners, int fixed) {
    double[] xyz = new double[3 * size];
    for (int i = 0; i < size; i++) {
      System.arraycopy(frame, 6 * i, xyz, 3 * i, 3);
    }
    int[] order = MedianSplit.order(xyz, corners);
    int[] ordered = new int[corners.length];
    int[] number = new int[size];
    Arrays.setAll(number, i -> i < fixed ? i : -1);
    int next = fixed;
    for (int i = 0; i < corners.length; i++) {
      int v = corners[3 * order[i / 3] + i % 3];
      if (number[v] < 0) {
        number[v] = next++;
      }
      ordered[i] = number[v];
    }
    renumber(number);
    return ordered;
  }

  private void renumber(int[] number) {
    double[] oldAngle = angle;
    double[] oldStation = station;
    double[] oldHeight = height;
    double[] oldFrame = frame;
    angle = new double[size];
    station = new double[size];
    height = new double[size];
    frame = new double[6 * size];
    for (int i = 0; i < size; i++) {
      angle[number[i]] = oldAngle[i];
      station[number[i]] = oldStation[i];
      height[number[i]] = oldHeight[i];
      System.arraycopy(oldFrame, 6 * i, frame, 6 * number[i], 6);
    }
  }

  int size() {
    return size;
  }

  /** Angle off the piece's midline (rad). */
  double angle(int i) {
    return angle[i];
  }

  /** Station (mm). */
  double station(int i) {
    return station[i];
  }

  /** Wall at a point, and what is raised on it (mm). */
  double thickness(int i) {
    return piece.wall() + height[i];
  }

  /** Coordinate of the inner point (mm), axis 0 to 2, or of its unit normal, 3 to 5. */
  double frame(int i, int k) {
    return frame[6 * i + k];
  }
}
