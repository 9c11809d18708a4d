package org.midlateral.viewer.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.midlateral.viewer.render.Orbit;

/** A length in mm to measure the picture by. */
public final class ScaleBar {
  private static final double[] LENGTHS = {100, 50, 20, 10, 5, 2, 1};
  private static final double MOST_PIXELS = 150;
  private static final int MARGIN = 16;
  private static final int TICK = 5;

  private ScaleBar() {}

  /** Length of the bar (mm) in a view of some size. */
  static double length(Orbit orbit, int width, int height) {
    double pixel = orbit.pixel(width, height);
    for (double length : LENGTHS) {
      if (length / pixel <= MOST_PIXELS) {
        return length;
      }
    }
    return LENGTHS[LENGTHS.length - 1];
  }

  /** Draws it and gives the place it takes. */
  public static Rectangle2D draw(
      Graphics2D g, Orbit orbit, int width, int height, Palette palette) {
    double length = length(orbit, width, height);
    double pixels = length / orbit.pixel(width, height);
    double y = height - MARGIN;
    g.setColor(palette.ink());
    g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    g.draw(new Line2D.Double(MARGIN, y, MARGIN + pixels, y));
    for (int i = 0; i <= 2; i++) {
      double x = MARGIN + pixels * i / 2;
      g.draw(new Line2D.Double(x, y - TICK, x, y));
    }
    g.drawString((int) length + " mm", MARGIN, (float) y - TICK - 4);
    double tall = g.getFontMetrics().getHeight() + TICK + 6;
    return new Rectangle2D.Double(MARGIN, y - tall, Math.max(pixels, 60), tall + 4);
  }
}
