package org.midlateral.document.bench;

import java.util.Optional;

/**
 * What the sheet says of the mechanics: the angle, the worst place, the forces.
 *
 * @param angle at which the joint is held, in words; empty where that is not known
 * @param worst the place that is pressed most; empty where that is not known
 * @param forces that hold the joint; empty where there is no room for three
 */
public record SheetFigures(
    Optional<String> angle, Optional<PressedPlace> worst, Optional<ThreeForces> forces) {
  /** Nothing was computed. */
  public static final SheetFigures NONE =
      new SheetFigures(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * A place that is pressed.
   *
   * @param station mm
   * @param height on the finger from the side: 1 its back, 0 its side, -1 its volar side
   * @param kilopascal mean over 1 cm²
   * @param where in words, as {@code under the dorsal shell over the PIP joint}
   */
  public record PressedPlace(double station, int height, double kilopascal, String where) {}

  /**
   * Forces (N).
   *
   * @param proximal at the proximal end
   * @param pip over the PIP joint
   * @param distal at the distal end
   */
  public record ThreeForces(double proximal, double pip, double distal) {}
}
