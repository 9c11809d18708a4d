package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.ChordError;
import org.midlateral.inspection.Conformance;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;

/** The checks of a solid that its inspection takes short cuts in, the long way round. */
public final class SlowChecks {
  private SlowChecks() {}

  /** What the long way finds and the inspection, which passed the solid, did not. */
  public static List<String> faults(Solid solid, Conformance reported) {
    List<String> faults = new ArrayList<>();
    int meetings = filed(solid.mesh()).selfIntersections(10, new int[0]).length / 2;
    if (meetings > 0) {
      faults.add(meetings + " pairs of triangles meet");
    }
    double wall = filed(solid.inner()).gap(filed(solid.outer())).distance();
    if (wall < ErrorBudget.LEAST_WALL * solid.piece().wall()) {
      faults.add("the wall is " + wall + " mm");
    }
    // Reported too small by the chord error at most, and never too large.
    if (wall < reported.minWall() - 1e-9 || wall > reported.minWall() + reported.chordError()) {
      faults.add("the wall is " + wall + " mm where " + reported.minWall() + " mm is reported");
    }
    double chord = chordError(solid);
    if (Math.abs(chord - reported.chordError()) > 1e-6) {
      faults.add(
          "the chord error is " + chord + " mm where " + reported.chordError() + " mm is reported");
    }
    return faults;
  }

  private static BoundingVolumeHierarchy filed(TriangleMesh mesh) {
    return BoundingVolumeHierarchy.of(mesh.filed());
  }

  /**
   * The exact surfaces against the whole mesh at the middle of every triangle and of every edge; on
   * the slope of what is raised, the inner one alone.
   */
  private static double chordError(Solid solid) {
    OffsetSurface surface = new OffsetSurface(solid.piece());
    BoundingVolumeHierarchy mesh = filed(solid.mesh());
    double[][] weights = {{1 / 3.0, 1 / 3.0, 1 / 3.0}, {0.5, 0.5, 0}, {0, 0.5, 0.5}, {0.5, 0, 0.5}};
    double[] p = new double[6];
    double worst = solid.rimError();
    for (int t = 0; t < solid.innerTriangles(); t++) {
      for (double[] weight : weights) {
        double angle = 0;
        double station = 0;
        double wall = 0;
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int c = 0; c < 3; c++) {
          int v = solid.mesh().corner(t, c);
          angle += weight[c] * solid.angle(v);
          station += weight[c] * solid.station(v);
          int over = v + solid.innerVertices();
          double here = solid.mesh().vertex(v).distance(solid.mesh().vertex(over));
          wall += weight[c] * here;
          least = weight[c] > 0 ? Math.min(least, here) : least;
          most = weight[c] > 0 ? Math.max(most, here) : most;
        }
        boolean uniform = solid.piece().gap().uniformAt(station);
        surface.at(solid.piece().digit().slice(station), angle, uniform, p, 0);
        worst = Math.max(worst, mesh.distance(p[0], p[1], p[2], 1));
        if (most - least < ChordError.LEVEL) {
          double x = p[0] + wall * p[3];
          double y = p[1] + wall * p[4];
          worst = Math.max(worst, mesh.distance(x, y, p[2] + wall * p[5], 1));
        }
      }
    }
    return worst;
  }
}
