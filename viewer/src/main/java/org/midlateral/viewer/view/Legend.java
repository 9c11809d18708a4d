package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** The legend of a colouring: a strip of colours with values under it. */
final class Legend {
  static final int HEIGHT = 56;
  private static final int BAR_HEIGHT = 14;
  private static final int BAR_TOP = 12;
  private static final int MARGIN = 14;
  private static final int END = 34;

  /** Of the two principal strains of a surface the one further from zero is shown. */
  private static final String SIGNED = "principal, %: + stretched, \u2212 squeezed";

  private final Colouring colouring;
  private final Palette palette;

  Legend(Colouring colouring, Palette palette) {
    this.colouring = colouring;
    this.palette = palette;
  }

  void draw(Graphics2D g, int width) {
    FontMetrics font = g.getFontMetrics();
    Quantity quantity = colouring.quantity();
    g.setColor(palette.card());
    g.fillRect(0, 0, width, HEIGHT);
    g.setColor(palette.ink());
    float base = BAR_TOP + font.getAscent();
    g.drawString(quantity.title(), MARGIN, base);
    g.setColor(palette.quiet());
    String unit = quantity.isSigned() ? SIGNED : "in " + quantity.unit();
    g.drawString(unit, MARGIN, base + font.getHeight());
    double words = Math.max(font.stringWidth(quantity.title()), font.stringWidth(unit));
    double left = MARGIN + words + END;
    Rectangle2D bar =
        new Rectangle2D.Double(left, BAR_TOP, Math.max(60, width - left - END), BAR_HEIGHT);
    strip(g, bar);
    marks(g, bar);
  }

  private void strip(Graphics2D g, Rectangle2D bar) {
    Scale scale = colouring.scale();
    int steps = (int) Math.ceil(bar.getWidth());
    for (int i = 0; i < steps; i++) {
      double share = (i + 0.5) / steps;
      g.setColor(new Color(scale.colour(scale.low() + share * (scale.high() - scale.low()))));
      double x = bar.getX() + bar.getWidth() * i / steps;
      g.fill(new Rectangle2D.Double(x, bar.getY(), bar.getWidth() / steps + 0.5, BAR_HEIGHT));
    }
  }

  private void marks(Graphics2D g, Rectangle2D bar) {
    Scale scale = colouring.scale();
    FontMetrics font = g.getFontMetrics();
    for (double mark : scale.marks()) {
      double share = (mark - scale.low()) / (scale.high() - scale.low());
      double x = bar.getX() + share * bar.getWidth();
      boolean signed = colouring.quantity().isSigned();
      String text = signed ? Scale.signed(mark) : Scale.text(mark);
      g.setColor(palette.quiet());
      g.draw(new Line2D.Double(x, bar.getMaxY(), x, bar.getMaxY() + 4));
      g.setColor(palette.ink());
      g.drawString(
          text,
          (float) (x - font.stringWidth(text) / 2.0),
          (float) bar.getMaxY() + 5 + font.getAscent());
    }
  }
}
