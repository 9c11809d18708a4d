package org.midlateral.viewer.view;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;

/** A few lines of text on a card over the picture. */
final class NoteCard {
  private static final int PADDING = 6;

  private NoteCard() {}

  /** Draws it, kept inside the picture, and gives the place it takes. */
  static Rectangle2D draw(Graphics2D g, String text, double x, double y, Palette palette) {
    FontMetrics font = g.getFontMetrics();
    String[] lines = text.split("\n");
    int widest = Arrays.stream(lines).mapToInt(font::stringWidth).max().orElse(0);
    double w = widest + 2 * PADDING;
    double h = lines.length * font.getHeight() + PADDING;
    Rectangle clip = g.getClipBounds();
    double left = clip == null ? x : Math.max(2, Math.min(x, clip.getMaxX() - w - 2));
    double top = clip == null ? y : Math.max(2, Math.min(y, clip.getMaxY() - h - 2));
    Rectangle2D card = new Rectangle2D.Double(left, top, w, h);
    g.setColor(palette.card());
    g.fill(card);
    g.setColor(palette.quiet());
    g.draw(card);
    g.setColor(palette.ink());
    double base = top + PADDING / 2.0 + font.getAscent();
    for (String line : lines) {
      g.drawString(line, (float) left + PADDING, (float) base);
      base += font.getHeight();
    }
    return card;
  }
}
