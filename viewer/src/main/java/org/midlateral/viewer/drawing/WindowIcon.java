package org.midlateral.viewer.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The window's icon: a finger's section in its trough, closed dorsally. */
public final class WindowIcon {
  private static final int[] SIZES = {16, 24, 32, 48, 64, 128};

  private WindowIcon() {}

  /** The icon in the sizes that systems ask for. */
  public static List<? extends Image> images() {
    return IntStream.of(SIZES).mapToObj(WindowIcon::image).toList();
  }

  private static BufferedImage image(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    double skin = 0.24 * size;
    g.setColor(SkinTone.NEUTRAL.colour());
    g.fill(new Ellipse2D.Double(skin, skin, size - 2 * skin, size - 2 * skin));
    double rim = 0.13 * size;
    double across = size - 2 * rim;
    g.setStroke(new BasicStroke(0.13f * size, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(Palette.LIGHT.trough());
    g.draw(new Arc2D.Double(rim, rim, across, across, 190, 160, Arc2D.OPEN));
    g.setColor(Palette.LIGHT.shell());
    g.draw(new Arc2D.Double(rim, rim, across, across, 30, 120, Arc2D.OPEN));
    g.dispose();
    return image;
  }
}
