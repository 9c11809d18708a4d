package org.midlateral.mechanics.finite;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.cut.DesignRefused;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Piece;
import org.midlateral.trough.Trough;

/**
 * One wrap of the comparison, all of the same finger, held with the same moment.
 *
 * @param wrap share of the circumference that the trough covers; {@link #CLOSED} for the
 *     mid-lateral trough with its dorsal shell bonded on
 * @param answer how it gives way
 */
public record WrapAnswer(double wrap, HeldAnswer answer) {
  /** Stands for the closed section. */
  public static final double CLOSED = 1;

  private static final double MIDLATERAL = 0.5;

  /**
   * Compares wraps.
   *
   * @param measured a finger
   * @param design everything but the wrap; the dorsal shell is laid on whether it asks for one or
   *     not
   * @param material of both pieces
   * @param moment of the finger about the PIP axis (N·mm)
   * @param wraps shares of the circumference, or {@link #CLOSED}
   * @throws DesignRefused where one of them has no room on the finger
   */
  public static List<WrapAnswer> compare(
      Measurements measured, Design design, Isotropic material, double moment, double... wraps)
      throws DesignRefused {
    List<WrapAnswer> answers = new ArrayList<>();
    for (double wrap : wraps) {
      answers.add(new WrapAnswer(wrap, held(measured, design, material, moment, wrap).answer()));
    }
    return List.copyOf(answers);
  }

  /**
   * One wrap, as drawn for a right hand.
   *
   * @param wrap share of the circumference, or {@link #CLOSED}
   * @throws DesignRefused where it has no room on the finger
   * @see #compare
   */
  public static HeldShell held(
      Measurements measured, Design design, Isotropic material, double moment, double wrap)
      throws DesignRefused {
    boolean closed = wrap == CLOSED;
    Design own = withWrap(design, closed ? MIDLATERAL : wrap);
    DigitSurface digit = TapedDigit.of(measured);
    Relief relief = Relief.of(measured, own.relief(), digit);
    Piece bare = Trough.of(own.trough(), digit, MidlateralCut.of(measured, own.trough(), digit));
    Piece trough = relief.over(bare);
    FingerShell shell =
        closed
            ? FingerShell.bonded(trough, DorsalShell.of(own, digit, bare, relief), material)
            : FingerShell.trough(trough, material);
    return HeldShell.solve(shell, HeldJoint.on(digit, trough.outline(), moment));
  }

  private static Design withWrap(Design design, double wrap) {
    TroughDesign t = design.trough();
    return design.withTrough(
        new TroughDesign(
            wrap,
            t.wall(),
            t.clearance(),
            t.liner(),
            t.webClearance(),
            t.proximalMargin(),
            t.distal(),
            t.distalMargin(),
            t.corner(),
            t.flare(),
            t.flareWidth(),
            t.vents()));
  }
}
