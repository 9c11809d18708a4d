package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;

/** The checks of a solid that its inspection takes short cuts in, the long way round. */
public final class SlowChecks {
  /** The wall may be reported too small by the chord error, and no more than G9 allows (mm). */
  private static final double WALL_MISS = 0.02;

  private SlowChecks() {}

  /** What the long way finds and the inspection, which passed the solid, did not. */
  public static List<String> faults(Solid solid, double reportedWall) {
    List<String> faults = new ArrayList<>();
    int meetings = filed(solid.mesh()).meetings(10, new int[0]).length / 2;
    if (meetings > 0) {
      faults.add(meetings + " pairs of triangles meet");
    }
    double wall = filed(solid.inner()).gap(filed(solid.outer())).distance();
    if (wall < Conformance.LEAST_WALL * solid.piece().wall()) {
      faults.add("the wall is " + wall + " mm");
    }
    if (wall < reportedWall - 1e-9 || wall > reportedWall + WALL_MISS) {
      faults.add("the wall is " + wall + " mm where " + reportedWall + " mm is reported");
    }
    return faults;
  }

  private static MeshTree filed(TriangleMesh mesh) {
    return MeshTree.of(MeshAudit.filed(mesh));
  }
}
