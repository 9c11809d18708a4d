package org.midlateral.recipe.plate;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;

/**
 * A part turned about the upright.
 *
 * @param part which
 * @param turn from the finger's frame
 * @param footprint it has then
 */
record TurnedPart(PlatePart part, AffineTransformMatrix3D turn, Footprint footprint) {
  /** Turns about the upright that are tried (degrees). */
  private static final int STEP = 30;

  /** A part in every way it may be turned about the upright. */
  static List<TurnedPart> ways(PlatePart part) {
    return IntStream.iterate(0, angle -> angle < 360, angle -> angle + STEP)
        .mapToObj(degrees -> of(part, degrees))
        .toList();
  }

  private static TurnedPart of(PlatePart part, int degrees) {
    double angle = Math.toRadians(degrees);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    AffineTransformMatrix3D about = AffineTransformMatrix3D.of(c, -s, 0, 0, s, c, 0, 0, 0, 0, 1, 0);
    AffineTransformMatrix3D turn = about.multiply(part.solid().pose());
    return new TurnedPart(part, turn, Footprint.of(part.solid().mesh(), turn));
  }
}
