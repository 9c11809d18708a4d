package org.midlateral.document.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The figures of the mechanics for the sheet, and where their bands come from.
 *
 * @param answer how the joint is held, in a line; empty where that is not known
 * @param pressed the places that are pressed most, the hardest first
 * @param figures in the order in which the sheet lists them; may be empty
 * @param draws behind the bands; empty where there are none
 */
public record SheetFigures(
    Optional<String> answer,
    List<PressedPlace> pressed,
    List<SheetFigure> figures,
    Optional<Draws> draws) {
  /** Nothing was computed. */
  public static final SheetFigures NONE =
      new SheetFigures(Optional.empty(), List.of(), List.of(), Optional.empty());

  public SheetFigures {
    pressed = List.copyOf(pressed);
    figures = List.copyOf(figures);
  }

  /**
   * A place that is pressed.
   *
   * @param station mm
   * @param height on the finger from the side: 1 its back, 0 its side, -1 its volar side
   * @param kilopascal mean over 1 cm²
   */
  public record PressedPlace(double station, int height, double kilopascal) {}

  /**
   * Tape readings drawn at random.
   *
   * @param samples how many were drawn
   * @param seed they were drawn from
   * @param tapeError standard deviation of each reading (mm)
   * @param refused those that could not be made and are left out
   */
  public record Draws(int samples, long seed, double tapeError, int refused) {

    /** How to read the bands. */
    String said() {
      return String.format(
              Locale.ROOT,
              "Bands: the joint's under errors of tape, goniometer, joint and skin; the others the middle"
                  + " nine tenths of %d draws (seed %d) of tape readings that err by"
                  + " %.1f mm, one standard deviation",
              samples,
              seed,
              tapeError)
          + (refused == 0 ? "." : "; " + refused + " that cannot be made are left out.");
    }
  }
}
