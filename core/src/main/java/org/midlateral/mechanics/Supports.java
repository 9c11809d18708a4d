package org.midlateral.mechanics;

import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.SupportDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Refusals;

/** Finds where the three forces act. */
public final class Supports {
  /** Length over which the closure presses, centred on the PIP axis (mm). */
  public static final double CLOSURE = 12;

  /** A shorter zone is no support (mm). Common practice, no source. */
  private static final double LEAST_ZONE = 2;

  /** A cast that leaves the DIP joint free ends this far before its crease (mm). */
  private static final double BEFORE_CREASE = 1;

  private Supports() {}

  /**
   * The three forces on a trough: at its two ends and over the PIP axis.
   *
   * @param moment of the finger about the PIP axis (N·mm)
   * @throws DesignRefused where the trough is too short on one side of the joint
   */
  public static ThreePoint worn(
      double moment, SupportDesign design, DigitSurface digit, Outline outline)
      throws DesignRefused {
    double pip = digit.pipAxis();
    double proximal = Math.min(outline.proximal() + design.proximalZone(), pip - CLOSURE / 2);
    double distal = Math.max(outline.distal() - design.distalZone(), pip + CLOSURE / 2);
    requireZone("proximal", proximal - outline.proximal());
    requireZone("distal", outline.distal() - distal);
    ContactZone near = ContactZone.under(digit, outline, outline.proximal(), proximal);
    ContactZone far = ContactZone.under(digit, outline, distal, outline.distal());
    return new ThreePoint(moment, pip, near, far, closure(digit));
  }

  private static void requireZone(String end, double length) throws DesignRefused {
    if (length < LEAST_ZONE) {
      throw new DesignRefused(Refusals.leverArmShort(end, length, LEAST_ZONE));
    }
  }

  /**
   * The same moment held by the same piece cut as short as a cast: from the web to just before the
   * DIP crease, so that the DIP joint is free.
   *
   * @param wrap share of the circumference covered
   * @return empty where so short a piece has no room for three forces
   */
  public static Optional<ThreePoint> castLength(
      double moment,
      SupportDesign design,
      double wrap,
      Measurements measurements,
      DigitSurface digit) {
    double pip = digit.pipAxis();
    double end = measurements.webToPip() + measurements.pipToDip() - BEFORE_CREASE;
    double proximal = Math.min(design.proximalZone(), pip - CLOSURE / 2);
    double distal = Math.max(end - design.distalZone(), pip + CLOSURE / 2);
    if (proximal < LEAST_ZONE || end - distal < LEAST_ZONE) {
      return Optional.empty();
    }
    return Optional.of(
        new ThreePoint(
            moment,
            pip,
            ContactZone.on(digit, 0, proximal, s -> wrap / 2 * digit.circumference(s)),
            ContactZone.on(digit, distal, end, s -> wrap / 2 * digit.circumference(s)),
            closure(digit)));
  }

  private static ContactZone closure(DigitSurface digit) {
    double pip = digit.pipAxis();
    return ContactZone.on(
        digit, pip - CLOSURE / 2, pip + CLOSURE / 2, s -> digit.circumference(s) / 2);
  }
}
