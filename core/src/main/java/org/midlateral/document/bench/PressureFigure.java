package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.bench.SheetFigures.PressedPlace;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;

/** The finger from the side with the place that is pressed most, in one small figure. */
final class PressureFigure {
  private static final double TYPE = 2.5;

  /** Length of an arrow, and from its tail to its figure (mm on paper). */
  private static final double ARROW = 4.5;

  private static final double HEAD = 1.2;
  private static final double AROUND = 8;
  private static final double EDGE = 1;
  private static final double PAST = 2;

  private PressureFigure() {}

  /**
   * Draws it.
   *
   * @param from station of the piece's proximal end (mm)
   * @param width it may take (mm)
   */
  static Drawing of(DigitSurface digit, double from, PressedPlace place, double width) {
    Views views = Views.fromTheSide(digit);
    List<PointMark> skin = views.skin(from - PAST);
    double left = skin.stream().mapToDouble(PointMark::x).min().orElseThrow();
    double right = skin.stream().mapToDouble(PointMark::x).max().orElseThrow();
    double low = skin.stream().mapToDouble(PointMark::y).min().orElseThrow();
    double top = skin.stream().mapToDouble(PointMark::y).max().orElseThrow();
    double scale = Math.min(0.6, (width - 2) / (right - left));
    // Room on the arrow's side alone.
    boolean above = place.height() >= 0;
    double foot = above ? EDGE : AROUND;
    Sketch sketch = new Sketch();
    List<PointMark> line = new ArrayList<>();
    for (PointMark p : skin) {
      line.add(new PointMark(scale * (p.x() - left), foot + scale * (p.y() - low)));
    }
    sketch.stroke(Pen.GHOST, line, false);
    double reach =
        digit.slice(place.station()).halfDepth() * Math.max(0.2, Math.abs(place.height()));
    PointMark at = views.across(place.station(), reach).get(above ? 0 : 1);
    double x = scale * (at.x() - left);
    double y = foot + scale * (at.y() - low);
    arrow(sketch, x, y, above ? 1 : -1);
    String label = String.format(Locale.ROOT, "%.0f kPa", place.kilopascal());
    double tail = above ? y + ARROW + 1.2 : y - ARROW - TYPE;
    sketch.text(label, x, tail, TYPE, Anchor.MIDDLE, 0);
    return sketch.drawing(width, scale * (top - low) + AROUND + EDGE);
  }

  /** An arrow that ends on the skin, from above or from below. */
  private static void arrow(Sketch sketch, double x, double y, int from) {
    sketch.line(Pen.EDGE, x, y + from * ARROW, x, y);
    sketch.line(Pen.EDGE, x, y, x - HEAD / 2, y + from * HEAD);
    sketch.line(Pen.EDGE, x, y, x + HEAD / 2, y + from * HEAD);
  }
}
