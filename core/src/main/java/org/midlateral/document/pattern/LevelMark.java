package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.piece.Piece;

/**
 * Where the marks of one level lie, each side alike, counted from the volar midline.
 *
 * @param level measured
 * @param station (mm)
 * @param midlateral to the mid-lateral line
 * @param trim to the trim line; the same where the wrap is one half
 * @param round once round, from the dorsal midline to itself
 */
public record LevelMark(Level level, double station, Arc midlateral, Arc trim, Arc round) {

  /**
   * One arc at three distances from the skin.
   *
   * @param skin on the skin (mm)
   * @param flat in the flat sheet, the middle of its thickness (mm)
   * @param over over the moulded sheet (mm)
   */
  public record Arc(double skin, double flat, double over) {}

  /** The marks of every level that a tape was laid round, proximal to distal. */
  public static List<LevelMark> of(Measurements measurements, TroughDesign design, Piece trough) {
    SheetOffset off =
        new SheetOffset(design.liner() + trough.wall() / 2, design.liner() + trough.wall());
    List<LevelMark> marks = new ArrayList<>();
    for (Level level : measurements.circumference().keySet()) {
      double station = measurements.stationOf(level);
      Slice slice = trough.digit().slice(station);
      double c = slice.circumference();
      Arc half = arc(slice, off, c / 2);
      Arc round = new Arc(2 * half.skin(), 2 * half.flat(), 2 * half.over());
      marks.add(
          new LevelMark(
              level,
              station,
              arc(slice, off, c / 4),
              arc(slice, off, design.wrap() * c / 2),
              round));
    }
    return marks;
  }

  /** How far middle and outside of the moulded sheet lie off the skin (mm). */
  private record SheetOffset(double middle, double outside) {}

  private static Arc arc(Slice slice, SheetOffset off, double girth) {
    return new Arc(
        girth,
        SheetArc.length(slice, girth, off.middle),
        SheetArc.length(slice, girth, off.outside));
  }
}
