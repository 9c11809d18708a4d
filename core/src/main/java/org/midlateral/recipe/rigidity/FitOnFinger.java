package org.midlateral.recipe.rigidity;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/**
 * The gap between a piece and a finger other than the one it was made on, the PIP axes laid over
 * each other and the centrelines alike. To first order in the gap, section by section.
 */
final class FitOnFinger {
  private static final double STEP = 0.5;

  private FitOnFinger() {}

  /** Least gap under the inner surface (mm); negative where the piece presses into the skin. */
  static double leastClearance(Solid piece, DigitSurface worn) {
    DigitSurface made = piece.piece().digit();
    TriangleMesh mesh = piece.mesh();
    double from = piece.piece().outline().proximal() - 5;
    double end = worn.pulpEnd() - STEP;
    double[][] axes = semiAxes(worn, from, end);
    double shift = worn.pipAxis() - made.pipAxis();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < piece.innerVertices(); i++) {
      SectionPlane plane = SectionPlane.at(made, piece.station(i));
      Vector3D off = mesh.vertex(i).subtract(plane.origin());
      double n = off.dot(plane.dorsal());
      double station = piece.station(i) + off.dot(plane.distal()) + shift;
      double at = (station - from) / STEP;
      int k = (int) at;
      if (at >= 0 && k + 1 < axes[0].length) {
        double a = axes[0][k] + (at - k) * (axes[0][k + 1] - axes[0][k]);
        double b = axes[1][k] + (at - k) * (axes[1][k + 1] - axes[1][k]);
        least = Math.min(least, gap(off.getY() / a, n / b, a, b));
      }
    }
    return least;
  }

  /** Half-width and half-depth every step from a station on. */
  private static double[][] semiAxes(DigitSurface worn, double from, double end) {
    int n = (int) ((end - from) / STEP) + 1;
    double[][] axes = new double[2][n];
    for (int i = 0; i < n; i++) {
      Slice slice = worn.slice(from + i * STEP);
      axes[0][i] = slice.halfWidth();
      axes[1][i] = slice.halfDepth();
    }
    return axes;
  }

  /** Distance from an ellipse, given in shares u and v of its semi-axes; exact for a circle. */
  private static double gap(double u, double v, double a, double b) {
    double radius = Math.hypot(u, v);
    return (radius - 1) * radius / Math.hypot(u / a, v / b);
  }
}
