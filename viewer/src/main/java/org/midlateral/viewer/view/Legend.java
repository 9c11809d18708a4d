package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** The legend of a colouring: a strip of colours with values beside it. */
final class Legend {
  static final int BAR_WIDTH = 16;
  static final int BAR_HEIGHT = 180;
  private static final int MARGIN = 12;
  private static final int PADDING = 8;

  private final Colouring colouring;
  private final Palette palette;

  Legend(Colouring colouring, Palette palette) {
    this.colouring = colouring;
    this.palette = palette;
  }

  /** The strip of colours in a view of some width. */
  static Rectangle2D bar(int width, int lineHeight) {
    return new Rectangle2D.Double(
        width - MARGIN - PADDING - BAR_WIDTH,
        MARGIN + PADDING + 2 * lineHeight + 6,
        BAR_WIDTH,
        BAR_HEIGHT);
  }

  /** Draws it and gives the place it takes. */
  Rectangle2D draw(Graphics2D g, int width) {
    FontMetrics font = g.getFontMetrics();
    Quantity quantity = colouring.quantity();
    Rectangle2D bar = bar(width, font.getHeight());
    double w = font.stringWidth(quantity.title()) + 2 * PADDING;
    double right = bar.getMaxX() + PADDING;
    Rectangle2D card =
        new Rectangle2D.Double(
            right - w, MARGIN, w, bar.getMaxY() - MARGIN + font.getHeight() / 2.0 + PADDING);
    g.setColor(Veil.of(palette.card(), 0.92));
    g.fill(card);
    g.setColor(palette.ink());
    float top = MARGIN + PADDING + font.getAscent();
    right(g, quantity.title(), right - PADDING, top);
    g.setColor(palette.quiet());
    right(g, "in " + quantity.unit(), right - PADDING, top + font.getHeight());
    strip(g, bar);
    marks(g, bar);
    return card;
  }

  private void strip(Graphics2D g, Rectangle2D bar) {
    Scale scale = colouring.scale();
    for (int i = 0; i < BAR_HEIGHT; i++) {
      double share = 1 - (i + 0.5) / BAR_HEIGHT;
      g.setColor(new Color(scale.colour(scale.low() + share * (scale.high() - scale.low()))));
      g.fill(new Rectangle2D.Double(bar.getX(), bar.getY() + i, BAR_WIDTH, 1));
    }
  }

  private void marks(Graphics2D g, Rectangle2D bar) {
    Scale scale = colouring.scale();
    FontMetrics font = g.getFontMetrics();
    List<Double> marks = scale.marks();
    for (double mark : marks) {
      double share = (mark - scale.low()) / (scale.high() - scale.low());
      double y = bar.getMaxY() - share * bar.getHeight();
      g.setColor(palette.quiet());
      g.draw(new Line2D.Double(bar.getX() - 4, y, bar.getX(), y));
      g.setColor(palette.ink());
      right(g, Scale.text(mark), bar.getX() - 7, (float) (y + font.getAscent() / 2.0 - 2));
    }
  }

  private static void right(Graphics2D g, String text, double x, float y) {
    g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text)), y);
  }
}
