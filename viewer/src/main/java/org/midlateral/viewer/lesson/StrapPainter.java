package org.midlateral.viewer.lesson;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Locale;
import org.midlateral.mechanics.Loop;
import org.midlateral.viewer.drawing.Palette;

/**
 * Draws the finger in a section and the strap that closes the pieces round it.
 *
 * @param middle of the section (px)
 * @param axis where n is zero (px)
 * @param scale of the section (px/mm)
 */
record StrapPainter(Graphics2D g, Palette palette, double middle, double axis, double scale) {
  /** Of an arrow, in lines of text. */
  private static final double ARROW = 1.2;

  private static final double HEAD = 4;

  /**
   * Draws them.
   *
   * @param pieces as they are drawn: y and n (mm)
   * @param skin the same of the finger
   * @param pull on either rim (N); 0 for no load
   */
  void draw(List<Loop> pieces, Loop skin, double pull) {
    g.setColor(palette.quiet());
    g.draw(path(skin));
    Strap strap = Strap.round(pieces, skin);
    g.setColor(palette.axis());
    g.setStroke(new BasicStroke(2.5f));
    g.draw(path(strap.line()));
    if (pull > 0) {
      strap.rims().forEach(rim -> pull(rim, strap.widest(), pull));
    }
    g.setStroke(new BasicStroke(1));
  }

  /**
   * The rim is drawn dorsally, as it is loaded where the change of shape is computed; the newtons
   * stand outside of the strap.
   */
  private void pull(Strap.Rim rim, double widest, double newtons) {
    FontMetrics font = g.getFontMetrics();
    double x = middle + rim.y() * scale;
    double from = axis - rim.n() * scale;
    double to = from - ARROW * font.getHeight();
    g.draw(new Line2D.Double(x, from, x, to + HEAD));
    Path2D head = new Path2D.Double();
    head.moveTo(x, to - HEAD);
    head.lineTo(x - HEAD, to + HEAD);
    head.lineTo(x + HEAD, to + HEAD);
    head.closePath();
    g.fill(head);
    String text = String.format(Locale.ROOT, "%.1f N", newtons);
    double w = font.stringWidth(text);
    double off = widest * scale + 2.0 * HEAD;
    double beside = rim.y() < 0 ? middle - off - w : middle + off;
    g.setColor(palette.ink());
    g.drawString(text, (float) beside, (float) (to + font.getAscent() / 2.0));
    g.setColor(palette.axis());
  }

  private Path2D path(Loop loop) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < loop.size(); i++) {
      double x = middle + loop.y(i) * scale;
      double y = axis - loop.n(i) * scale;
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    path.closePath();
    return path;
  }
}
