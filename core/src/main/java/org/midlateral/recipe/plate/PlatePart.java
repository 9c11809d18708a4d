package org.midlateral.recipe.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.recipe.record.MakingRecord;

/**
 * A part that waits for a plate.
 *
 * @param record of the order it is of
 * @param solid with its title, mesh and pose
 */
record PlatePart(MakingRecord record, NamedSolid solid) {
  /** Turns about the upright that are tried (degrees). */
  private static final int STEP = 30;

  /** The part in every way it may be turned about the upright. */
  List<TurnedPart> ways() {
    List<TurnedPart> ways = new ArrayList<>();
    IntStream.iterate(0, angle -> angle < 360, angle -> angle + STEP)
        .mapToObj(this::turned)
        .forEach(ways::add);
    return ways;
  }

  private TurnedPart turned(int degrees) {
    double angle = Math.toRadians(degrees);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    AffineTransformMatrix3D about = AffineTransformMatrix3D.of(c, -s, 0, 0, s, c, 0, 0, 0, 0, 1, 0);
    AffineTransformMatrix3D turn = about.multiply(solid.pose());
    return new TurnedPart(this, turn, Footprint.of(solid.mesh(), turn));
  }

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
