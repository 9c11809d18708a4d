package org.midlateral.document.drawing;

import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.measurement.LengthUnit;

/** Two bars, along and across, to check a print with a ruler: 50 mm, or 2 inches. */
public final class ScaleBars {
  /** Where both bars start, from the left and from below (mm). */
  private static final double MARGIN = 2;

  private static final double TYPE = 2.4;

  private ScaleBars() {}

  /** Length of a bar (mm). */
  public static double length(LengthUnit unit) {
    return unit == LengthUnit.IN ? 50.8 : 50;
  }

  /** Length of a bar as it is written. */
  public static String name(LengthUnit unit) {
    return unit == LengthUnit.IN ? "2 in" : "50 mm";
  }

  /** The figure: a tick every centimetre, or every quarter of an inch. */
  public static Drawing of(LengthUnit unit) {
    double length = length(unit);
    int parts = unit == LengthUnit.IN ? 8 : 5;
    int inLong = unit == LengthUnit.IN ? 4 : 5;
    double end = MARGIN + length;
    Sketch sketch = new Sketch();
    sketch.line(Pen.MARK, MARGIN, MARGIN, end, MARGIN);
    sketch.line(Pen.MARK, MARGIN, MARGIN, MARGIN, end);
    for (int i = 0; i <= parts; i++) {
      double at = MARGIN + length * i / parts;
      double tick = i % inLong == 0 ? 2 : 1.2;
      sketch.line(Pen.MARK, at, MARGIN - tick, at, MARGIN + tick);
      sketch.line(Pen.MARK, MARGIN - tick, at, MARGIN + tick, at);
    }
    sketch.text(name(unit) + ": measure before you cut", MARGIN + 4, MARGIN + 3, TYPE);
    sketch.text(name(unit), MARGIN + 4, end - 9, TYPE, Anchor.START, 90);
    return sketch.drawing(end + MARGIN, end + MARGIN);
  }
}
