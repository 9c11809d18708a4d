package org.midlateral.document.pattern;

import java.util.List;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.mechanics.closure.Strap;

/** Draws the two straps and the hook they close on, at true size; their distal edge is up. */
final class StrapFigure {
  private static final double TYPE = 2.5;
  private static final double GAP = 7;
  private static final String ATTACHED = "attached";

  private StrapFigure() {}

  static Drawing of(List<Strap> straps, Lengths lengths) {
    Strap strap = straps.get(0);
    double pitch = strap.width() + GAP;
    Sketch sketch = new Sketch();
    sketch.box(Pen.CUT, 0, 0, strap.hook(), strap.width());
    sketch.text(
        "hook, on the trough's volar side: " + lengths.with(strap.hook()),
        0,
        strap.width() + 1.6,
        TYPE);
    sketch.line(Pen.AXIS, strap.hook() / 2, 0, strap.hook() / 2, strap.width());
    for (int k = 0; k < straps.size(); k++) {
      one(sketch, straps.get(k), pitch * (straps.size() - k), k == 0, lengths);
    }
    return sketch.drawing(strap.length(), pitch * (straps.size() + 1));
  }

  /** One strap; the lower half is cut away on the first, the upper half on the second. */
  private static void one(Sketch sketch, Strap strap, double y, boolean first, Lengths lengths) {
    double middle = y + strap.halfWidth();
    double keptEdge = first ? y + strap.width() : y;
    double cutEdge = first ? y : y + strap.width();
    sketch.stroke(
        Pen.CUT,
        List.of(
            new PointMark(0, cutEdge),
            new PointMark(0, keptEdge),
            new PointMark(strap.length(), keptEdge),
            new PointMark(strap.length(), middle),
            new PointMark(strap.attached(), middle),
            new PointMark(strap.attached(), cutEdge)),
        true);
    sketch.line(Pen.FOLD, strap.attached(), middle, strap.attached(), keptEdge);
    if (Typeface.REGULAR.width(ATTACHED, TYPE) < strap.attached() - 2) {
      double low = first ? middle - strap.halfWidth() / 2 : middle + strap.halfWidth() / 2;
      sketch.text(ATTACHED, 1.5, low - 1, TYPE);
    }
    sketch.text(
        (first ? "closes from the radial side" : "closes from the ulnar side"),
        strap.attached() + 4,
        middle + (first ? 1 : -1) * strap.width() / 4 - 1,
        TYPE);
    sketch.text(
        (first ? "strap 1: " : "strap 2: ")
            + lengths.with(strap.length())
            + " long, "
            + lengths.with(strap.width())
            + " wide; beyond "
            + lengths.with(strap.attached())
            + (first ? " the proximal half is cut away" : " the distal half is cut away"),
        0,
        y + strap.width() + 1.6,
        TYPE);
  }
}
