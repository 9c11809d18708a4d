package org.midlateral.recipe.plate;

import org.midlateral.document.format.NamedSolid;
import org.midlateral.recipe.record.MakingRecord;

/**
 * A part that waits for a plate.
 *
 * @param record of the order it is of
 * @param solid with its title, mesh and pose
 */
record PlatePart(MakingRecord record, NamedSolid solid) {
  /** How high it stands (mm). */
  double height() {
    double[] range = heights();
    return range[1] - range[0];
  }

  /** The lowest and the highest it reaches in its pose, before it is set on the bed (mm). */
  double[] heights() {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int v = 0; v < solid.mesh().vertexCount(); v++) {
      double z = solid.pose().apply(solid.mesh().vertex(v)).getZ();
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
    return new double[] {low, high};
  }
}
