package org.midlateral.document.drawing;

import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;

/** Two bars of 50 mm, along and across, to check a print with a ruler. */
public final class ScaleBars {
  /** Length of a bar (mm). */
  public static final double LENGTH = 50;

  private static final double MARGIN = 2;
  private static final double TYPE = 2.4;

  private ScaleBars() {}

  /** The figure; both bars start at (2, 2). */
  public static Drawing drawing() {
    Sketch sketch = new Sketch();
    sketch.line(Pen.MARK, MARGIN, MARGIN, MARGIN + LENGTH, MARGIN);
    sketch.line(Pen.MARK, MARGIN, MARGIN, MARGIN, MARGIN + LENGTH);
    for (int i = 0; i <= 5; i++) {
      double at = MARGIN + 10.0 * i;
      double tick = i % 5 == 0 ? 2 : 1.2;
      sketch.line(Pen.MARK, at, MARGIN - tick, at, MARGIN + tick);
      sketch.line(Pen.MARK, MARGIN - tick, at, MARGIN + tick, at);
    }
    sketch.text("50 mm: measure before you cut", MARGIN + 4, MARGIN + 3, TYPE);
    sketch.text("50 mm", MARGIN + 4, MARGIN + LENGTH - 9, TYPE, Anchor.START, 90);
    return sketch.drawing(MARGIN + LENGTH + MARGIN, MARGIN + LENGTH + MARGIN);
  }
}
