package org.midlateral.viewer.view;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/** The legend of a colouring: a strip of colours with values under it. */
final class Legend {
  private static final int HEIGHT = 56;

  /** In a picture that has no room for words beside the strip they stand over it. */
  private static final int NARROW = 460;

  private static final int WORDS = 26;
  private static final int BAR_HEIGHT = 14;
  private static final int BAR_TOP = 12;
  private static final int MARGIN = 14;
  private static final int END = 34;

  /** Of the two principal strains of a surface the one further from zero is shown. */
  private static final String SIGNED = "principal, %: + stretched, \u2212 squeezed";

  private final ShownColours colours;
  private final Colouring colouring;
  private final Palette palette;

  Legend(ShownColours colours, Palette palette) {
    this.colours = colours;
    this.colouring = colours.now();
    this.palette = palette;
  }

  /** Height in a picture of some width (px). */
  static int height(int width) {
    return width < NARROW ? HEIGHT + WORDS : HEIGHT;
  }

  void draw(Graphics2D g, int width) {
    FontMetrics font = g.getFontMetrics();
    String title = colouring.quantity().title();
    String caption = caption();
    boolean narrow = width < NARROW;
    g.setColor(palette.card());
    g.fillRect(0, 0, width, height(width));
    float base = (narrow ? 4 : BAR_TOP) + font.getAscent();
    g.setColor(palette.ink());
    g.drawString(title, MARGIN, base);
    g.setColor(palette.quiet());
    g.drawString(caption, MARGIN, base + font.getHeight());
    double words = Math.max(font.stringWidth(title), font.stringWidth(caption));
    double left = narrow ? MARGIN : MARGIN + words + END;
    double top = narrow ? BAR_TOP + WORDS + 4 : BAR_TOP;
    Rectangle2D bar = new Rectangle2D.Double(left, top, width - left - END, BAR_HEIGHT);
    strip(g, bar);
    marks(g, bar);
  }

  /** In what, and what the scale was chosen by. */
  String caption() {
    Quantity quantity = colouring.quantity();
    if (quantity.isSigned()) {
      return SIGNED;
    }
    if (quantity.reference().isPresent()) {
      return "in "
          + quantity.unit()
          + "; mark at "
          + Scale.text(quantity.reference().get())
          + ": see the caution";
    }
    return "in " + quantity.unit() + (colours.areTwo() ? ", one scale for both" : ", fitted");
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
    List<Rectangle2D> taken = new ArrayList<>();
    Optional<Double> reference = colouring.quantity().reference();
    reference.ifPresent(
        value -> {
          double x = at(value, bar);
          g.setColor(palette.card());
          g.fill(new Rectangle2D.Double(x - 2.5, bar.getY() - 3, 5, BAR_HEIGHT + 8));
          g.setColor(palette.caution());
          g.fill(new Rectangle2D.Double(x - 1, bar.getY() - 3, 2, BAR_HEIGHT + 8));
          label(g, value, bar, palette.caution(), taken);
        });
    // The ends first: they are never left out for want of room.
    List<Double> marks = new ArrayList<>(scale.marks());
    if (marks.size() > 2) {
      marks.add(1, marks.remove(marks.size() - 1));
    }
    for (double mark : marks) {
      double x = at(mark, bar);
      g.setColor(palette.quiet());
      g.draw(new Line2D.Double(x, bar.getMaxY(), x, bar.getMaxY() + 4));
      label(g, mark, bar, palette.ink(), taken);
    }
  }

  private double at(double value, Rectangle2D bar) {
    Scale scale = colouring.scale();
    double share = (value - scale.low()) / (scale.high() - scale.low());
    return bar.getX() + share * bar.getWidth();
  }

  /** Writes a value under its place, unless another stands there. */
  private void label(
      Graphics2D g, double value, Rectangle2D bar, Color ink, List<Rectangle2D> taken) {
    FontMetrics font = g.getFontMetrics();
    String text = colouring.quantity().isSigned() ? Scale.signed(value) : Scale.text(value);
    double w = font.stringWidth(text);
    double x = at(value, bar) - w / 2;
    Rectangle2D place = new Rectangle2D.Double(x - 5, bar.getMaxY(), w + 10, font.getHeight());
    if (taken.stream().noneMatch(place::intersects)) {
      taken.add(place);
      g.setColor(ink);
      g.drawString(text, (float) x, (float) bar.getMaxY() + 5 + font.getAscent());
    }
  }
}
