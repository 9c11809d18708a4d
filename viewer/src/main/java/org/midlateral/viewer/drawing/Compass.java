package org.midlateral.viewer.drawing;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Hand;
import org.midlateral.viewer.render.Orbit;

/** Which way is distal, dorsal and radial in the picture. */
public final class Compass {
  private static final double ARM = 26;
  private static final double LEAST = 0.25;
  private static final double REACH = 62;

  private Compass() {}

  private record Arm(String name, Vector3D direction) {}

  /** Draws it in the lower right corner and gives the place it takes. */
  public static Rectangle2D draw(
      Graphics2D g, Orbit orbit, Hand hand, int width, int height, Palette palette) {
    double cx = width - REACH - 14;
    double cy = height - REACH + 8;
    Vector3D radial = Vector3D.of(0, hand == Hand.LEFT ? -1 : 1, 0);
    List<Arm> arms =
        List.of(
            new Arm("distal", Vector3D.Unit.PLUS_X),
            new Arm("dorsal", Vector3D.Unit.PLUS_Z),
            new Arm("radial", radial));
    FontMetrics font = g.getFontMetrics();
    g.setStroke(new BasicStroke(1.5f));
    for (Arm arm : arms) {
      double dx = arm.direction().dot(orbit.right());
      double dy = -arm.direction().dot(orbit.up());
      double seen = Math.hypot(dx, dy);
      if (seen >= LEAST) {
        g.setColor(palette.quiet());
        g.draw(new Line2D.Double(cx, cy, cx + ARM * dx, cy + ARM * dy));
        double w = font.stringWidth(arm.name());
        double x = cx + (ARM + 8 + w / 2 * Math.abs(dx / seen)) * dx / seen;
        double y = cy + (ARM + 9) * dy / seen;
        // On a picture so small or so near that the finger lies under it, a name still reads.
        g.setColor(palette.paper());
        g.fill(new Rectangle2D.Double(x - w / 2 - 2, y - 8, w + 4, 16));
        g.setColor(palette.ink());
        g.drawString(arm.name(), (float) (x - w / 2), (float) (y + font.getAscent() / 2.0 - 2));
      }
    }
    return new Rectangle2D.Double(cx - REACH, cy - REACH + 14, 2 * REACH, 2 * REACH - 20);
  }
}
