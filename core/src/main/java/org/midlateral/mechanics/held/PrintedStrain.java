package org.midlateral.mechanics.held;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.finite.StrainField;
import org.midlateral.mechanics.finite.SurfacePoint;
import org.midlateral.mechanics.finite.WallFace;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.solid.Solid;

/** Carries the strains of the coarse shell over to the surface of a printed piece. */
final class PrintedStrain {
  private final FingerShell shell;
  private final StrainField strains;

  PrintedStrain(FingerShell shell, StrainField strains) {
    this.shell = shell;
    this.strains = strains;
  }

  double[] on(Solid printed) {
    boolean dorsal = printed.piece().dorsal();
    if (dorsal && !shell.closed()) {
      throw new IllegalArgumentException("the dorsal shell was not part of the computation");
    }
    int layer = dorsal ? 1 : 0;
    int first = shell.firstNode(layer);
    TriangleMesh mesh = printed.mesh();
    int n = printed.innerVertices();
    double[] out = new double[mesh.vertexCount()];
    for (int i = 0; i < n; i++) {
      double s = printed.station(i);
      Vector3D middle = mesh.vertex(i).add(mesh.vertex(n + i)).multiply(0.5);
      SurfacePoint spot = shell.on(layer, s, ShellLayer.turn(printed.piece(), s, middle));
      out[i] = at(spot, WallFace.BACK);
      out[n + i] = at(spot, WallFace.FRONT);
    }
    int ofEdge = 2 * n + (printed.rimStrips() - 1) * printed.firstLoop();
    for (int i = 2 * n; i < ofEdge; i++) {
      int node = first + shell.layer(layer).nearestOnCrest(mesh.vertex(i));
      out[i] = larger(strains.at(node, WallFace.FRONT), strains.at(node, WallFace.BACK));
    }
    for (int i = ofEdge; i < out.length; i++) {
      int beside = nearestOnVents(printed, mesh.vertex(i));
      out[i] = larger(out[beside], out[n + beside]);
    }
    return out;
  }

  private static double larger(double front, double back) {
    return Math.abs(front) > Math.abs(back) ? front : back;
  }

  /** Vents are not in the computed shell: their rounds take what is found beside them. */
  private static int nearestOnVents(Solid printed, Vector3D point) {
    int best = printed.firstLoop();
    double least = Double.POSITIVE_INFINITY;
    for (int i = printed.firstLoop(); i < printed.edgeVertices(); i++) {
      double distance = printed.mesh().vertex(i).distanceSq(point);
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }

  /**
   * Where stretch and squeeze are alike the sign jumps from one to the other while the size runs
   * on: sizes are interpolated, and the sign is the largest share's.
   */
  private double at(SurfacePoint spot, WallFace side) {
    double sum = 0;
    double most = 0;
    double largest = 0;
    for (int c = 0; c < 3; c++) {
      double weight = Math.max(0, spot.weights()[c]);
      double share = weight * strains.at(shell.model().corner(spot.triangle(), c), side);
      largest = Math.abs(share) > Math.abs(largest) ? share : largest;
      sum += Math.abs(share);
      most += weight;
    }
    return Math.copySign(sum / most, largest);
  }
}
