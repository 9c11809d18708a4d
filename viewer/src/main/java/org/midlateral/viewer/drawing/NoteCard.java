package org.midlateral.viewer.drawing;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** A few lines of text on a card over the picture. */
public final class NoteCard {
  private static final int PADDING = 6;

  /** From the edges of the picture, at least (px). */
  private static final int EDGE = 6;

  private NoteCard() {}

  /** The place that it takes with its upper left corner there. */
  public static Rectangle2D place(Graphics2D g, String text, double x, double y, int width) {
    FontMetrics font = g.getFontMetrics();
    List<String> lines = lines(font, text, width - 2 * (EDGE + PADDING));
    int widest = lines.stream().mapToInt(font::stringWidth).max().orElse(0);
    double w = widest + 2 * PADDING;
    return new Rectangle2D.Double(x, y, w, lines.size() * font.getHeight() + PADDING);
  }

  /** The lines of a text, none wider than there is room. */
  private static List<String> lines(FontMetrics font, String text, int most) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\n", -1)) {
      StringBuilder line = new StringBuilder();
      for (String word : paragraph.split(" ", -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && font.stringWidth(longer) > most) {
          lines.add(line.toString());
          line.setLength(0);
          line.append(word);
        } else {
          line.setLength(0);
          line.append(longer);
        }
      }
      lines.add(line.toString());
    }
    return lines;
  }

  /**
   * Draws it, kept inside the picture, and gives the place it takes.
   *
   * @param width of the picture (px)
   */
  public static Rectangle2D draw(
      Graphics2D g, String text, double x, double y, int width, Palette palette) {
    FontMetrics font = g.getFontMetrics();
    Rectangle2D size = place(g, text, x, y, width);
    double w = size.getWidth();
    double h = size.getHeight();
    Rectangle clip = g.getClipBounds();
    double left = Math.max(2, Math.min(x, width - w - 2));
    double top = clip == null ? y : Math.max(2, Math.min(y, clip.getMaxY() - h - 2));
    Rectangle2D card = new Rectangle2D.Double(left, top, w, h);
    g.setColor(palette.card());
    g.fill(card);
    g.setColor(palette.quiet());
    g.draw(card);
    g.setColor(palette.ink());
    double base = top + PADDING / 2.0 + font.getAscent();
    for (String line : lines(font, text, width - 2 * (EDGE + PADDING))) {
      g.drawString(line, (float) left + PADDING, (float) base);
      base += font.getHeight();
    }
    return card;
  }
}
