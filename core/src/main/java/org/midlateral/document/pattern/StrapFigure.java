package org.midlateral.document.pattern;

import java.util.List;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.measurement.Hand;
import org.midlateral.mechanics.closure.Strap;

/**
 * Draws the hook and the two straps that close on it, at true size, as seen from outside with the
 * distal edge up: each strap beside where it leaves the hook, its loop side beneath.
 */
final class StrapFigure {
  private static final double TYPE = 2.5;
  private static final double GAP = 7;
  private static final double ABOVE = 1.6;

  private StrapFigure() {}

  static Drawing of(List<Strap> straps, Hand hand, Lengths lengths) {
    Strap strap = straps.get(0);
    Sketch sketch = new Sketch();
    // Strap 1 lies proximal and leaves over the right edge of the hook, strap 2 over the left one.
    String right = hand == Hand.RIGHT ? "radial" : "ulnar";
    String left = hand == Hand.RIGHT ? "ulnar" : "radial";
    hook(sketch, strap, lengths);
    beside(sketch, strap, left, right);
    double second = strap.width() + GAP;
    double first = second + strap.halfWidth() + GAP;
    one(sketch, straps.get(1), second, false, "strap 2, distal, over the " + left, lengths);
    one(sketch, strap, first, true, "strap 1, proximal, over the " + right, lengths);
    return sketch.drawing(strap.length(), first + strap.halfWidth() + GAP);
  }

  private static void hook(Sketch sketch, Strap strap, Lengths lengths) {
    double middle = strap.hook() / 2;
    double lane = strap.halfWidth();
    sketch.box(Pen.CUT, 0, 0, strap.hook(), strap.width());
    sketch.line(Pen.AXIS, middle, 0, middle, strap.width());
    sketch.line(Pen.AXIS, 0, lane, strap.hook(), lane);
    quarter(sketch, "1 closes", 0, middle, lane / 2);
    quarter(sketch, "1 stays", middle, strap.hook(), lane / 2);
    quarter(sketch, "2 stays", 0, middle, lane + lane / 2);
    quarter(sketch, "2 closes", middle, strap.hook(), lane + lane / 2);
    sketch.text(
        "hook, on the trough's volar side: "
            + lengths.with(strap.hook())
            + " long, "
            + lengths.with(strap.width())
            + " wide",
        0,
        strap.width() + ABOVE,
        TYPE);
  }

  /** A word in a quarter of the hook, where it has room. */
  private static void quarter(Sketch sketch, String word, double from, double to, double middle) {
    if (2 * middle > TYPE && Typeface.REGULAR.width(word, TYPE) < to - from - 1) {
      sketch.text(word, (from + to) / 2, middle - TYPE * 0.35, TYPE, Anchor.MIDDLE, 0);
    }
  }

  /** How the hook lies, right of it. */
  private static void beside(Sketch sketch, Strap strap, String left, String right) {
    double x = strap.hook() + 3;
    sketch.text("left edge " + left + ", right edge " + right, x, strap.width() - 3, TYPE);
    sketch.text("upper edge distal", x, strap.width() - 3 - 1.4 * TYPE, TYPE);
  }

  /** One strap; its attached end is on the left of the first, on the right of the second. */
  private static void one(
      Sketch sketch, Strap strap, double y, boolean first, String name, Lengths lengths) {
    double top = y + strap.halfWidth();
    double meets = strap.girth() - strap.free();
    sketch.box(Pen.CUT, 0, y, strap.length(), strap.halfWidth());
    for (double along : new double[] {strap.attached(), meets}) {
      double x = first ? along : strap.length() - along;
      sketch.line(Pen.FOLD, x, y, x, top);
    }
    double own = first ? strap.girth() : strap.length() - strap.girth();
    sketch.line(Pen.MARK, own, y, own, top);
    word(sketch, strap, "stays", new double[] {0, strap.attached()}, y, first);
    word(sketch, strap, "closes", new double[] {meets, strap.girth()}, y, first);
    word(sketch, strap, "over itself", new double[] {strap.girth(), strap.length()}, y, first);
    sketch.text(
        name
            + " edge: "
            + lengths.with(strap.length())
            + " long, "
            + lengths.with(strap.halfWidth())
            + " wide",
        0,
        top + ABOVE,
        TYPE);
  }

  /** A word between two places along a strap. */
  private static void word(
      Sketch sketch, Strap strap, String word, double[] along, double y, boolean first) {
    double from = first ? along[0] : strap.length() - along[1];
    double to = first ? along[1] : strap.length() - along[0];
    if (strap.halfWidth() > TYPE && Typeface.REGULAR.width(word, TYPE) < to - from - 1) {
      double middle = y + strap.halfWidth() / 2 - TYPE * 0.35;
      sketch.text(word, (from + to) / 2, middle, TYPE, Anchor.MIDDLE, 0);
    }
  }
}
