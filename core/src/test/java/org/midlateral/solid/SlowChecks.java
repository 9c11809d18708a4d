package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;

/** The checks of a solid that its inspection takes short cuts in, the long way round. */
public final class SlowChecks {
  /** A straight distance between corners may miss the smallest one by the sag of an edge (mm). */
  private static final double WALL_MISS = 0.01;

  private SlowChecks() {}

  /** What the long way finds and the inspection, which passed the solid, did not. */
  public static List<String> faults(Solid solid, double reportedWall) {
    List<String> faults = new ArrayList<>();
    int meetings = MeshTree.of(MeshAudit.filed(solid.mesh())).meetings(10, new int[0]).length / 2;
    if (meetings > 0) {
      faults.add(meetings + " pairs of triangles meet");
    }
    double wall = MeshTree.of(solid.inner()).gap(MeshTree.of(solid.outer())).distance();
    if (wall < Conformance.LEAST_WALL * solid.piece().wall()) {
      faults.add("the wall is " + wall + " mm");
    }
    if (wall > reportedWall + 1e-9 || wall < reportedWall - WALL_MISS) {
      faults.add("the wall is " + wall + " mm where " + reportedWall + " mm is reported");
    }
    return faults;
  }
}
