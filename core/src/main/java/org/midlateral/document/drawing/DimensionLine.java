package org.midlateral.document.drawing;

import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;

/** Draws a dimension: a line between two ends with short strokes, and its figure. */
public final class DimensionLine {
  private static final double END = 1.1;
  private static final double TYPE = 2.4;

  private DimensionLine() {}

  /** Along x, the figure above the line, or beside it where there is no room. */
  public static void level(Sketch sketch, double x0, double x1, double y, String figure) {
    sketch.line(Pen.FINE, x0, y, x1, y);
    sketch.line(Pen.FINE, x0, y - END, x0, y + END).line(Pen.FINE, x1, y - END, x1, y + END);
    if (Typeface.REGULAR.width(figure, TYPE) < x1 - x0 - 0.5) {
      sketch.text(figure, (x0 + x1) / 2, y + 0.7, TYPE, Anchor.MIDDLE, 0);
    } else {
      sketch.text(figure, x1 + 1, y - TYPE * 0.35, TYPE);
    }
  }

  /** Along y, the figure to the right of the line. */
  public static void upright(Sketch sketch, double x, double y0, double y1, String figure) {
    sketch.line(Pen.FINE, x, y0, x, y1);
    sketch.line(Pen.FINE, x - END, y0, x + END, y0).line(Pen.FINE, x - END, y1, x + END, y1);
    sketch.text(figure, x + 1.2, (y0 + y1) / 2 - TYPE * 0.35, TYPE);
  }
}
