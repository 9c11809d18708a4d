package org.midlateral.viewer.view;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.drawing.Translucent;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.Projection;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.scene.Landmark;

/**
 * The landmarks' names beside the finger: levels on one side, creases and axes on the other, each
 * tied to its line, none over another nor over another's tie.
 */
final class LandmarkLabels {
  private static final double GAP = 26;

  /** Share of the finger's length that is seen, under which it counts as seen from an end. */
  private static final double END_ON = 0.25;

  private static final int PADDING = 4;

  /** Along the finger from abreast of its mark, in heights of a line, a name is tried. */
  private static final double[] SLIDES = {0, 1, -1, 2, -2, 3, -3};

  private final Orbit orbit;
  private final Projection projection;
  private final int width;
  private final int height;
  private final Palette palette;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Rectangle2D> barrier;
  private final List<Rectangle2D> covered;
  private final List<WrittenName> names = new ArrayList<>();

  /**
   * Labels in a picture.
   *
   * @param taken places where nothing may be written (px)
   * @param barrier what no name may stand behind either, being another's (px)
   * @param covered where finger and pieces are seen: written on only where there is no other room
   */
  LandmarkLabels(
      Orbit orbit,
      int width,
      int height,
      Palette palette,
      List<Rectangle2D> taken,
      List<Rectangle2D> barrier,
      List<Rectangle2D> covered) {
    this.barrier = List.copyOf(barrier);
    this.covered = List.copyOf(covered);
    this.orbit = orbit;
    this.projection = orbit.projection(width, height);
    this.width = width;
    this.height = height;
    this.palette = palette;
    this.taken.addAll(taken);
  }

  /**
   * A name that was written.
   *
   * @param mark whose it is
   * @param box where (px)
   * @param line that ties it to its mark
   */
  record WrittenName(Landmark mark, Rectangle2D box, Line2D line) {}

  /**
   * A name and where it is tied.
   *
   * @param x of the tie (px), as y
   * @param side +1 or -1 across the finger
   */
  private record Tie(Landmark mark, double x, double y, int side) {}

  void draw(Graphics2D g, List<Landmark> marks) {
    // Across the finger in the picture, to the right or up.
    double fx = orbit.right().getX();
    double fy = -orbit.up().getX();
    double length = Math.hypot(fx, fy);
    double nx = length < END_ON ? 1 : -fy / length;
    double ny = length < END_ON ? 0 : fx / length;
    int turn = nx - ny < 0 ? -1 : 1;
    List<Tie> ties = new ArrayList<>();
    for (Landmark mark : marks) {
      boolean level = mark.kind() == Landmark.Kind.LEVEL || mark.kind() == Landmark.Kind.CREASE;
      // Seen from an end all levels lie on one another.
      if (!mark.name().isEmpty() && !(level && length < END_ON)) {
        ties.add(tie(mark, nx * turn, ny * turn));
      }
    }
    ties.sort(Comparator.comparingDouble(t -> t.x() * fx + t.y() * fy));
    for (Tie tie : ties) {
      draw(g, tie, nx * turn * tie.side(), ny * turn * tie.side());
    }
  }

  private Tie tie(Landmark mark, double nx, double ny) {
    int side = mark.kind() == Landmark.Kind.LEVEL ? 1 : -1;
    Vector3D best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (Vector3D anchor : mark.anchor()) {
      Vector3D p = projection.of(anchor);
      double out = side * (p.getX() * nx + p.getY() * ny);
      if (out > most) {
        most = out;
        best = p;
      }
    }
    return new Tie(mark, best.getX(), best.getY(), side);
  }

  private void draw(Graphics2D g, Tie tie, double nx, double ny) {
    FontMetrics font = g.getFontMetrics();
    double w = font.stringWidth(tie.mark().name()) + 2 * PADDING;
    double h = font.getHeight();
    for (boolean beside : new boolean[] {true, false}) {
      for (double slide : SLIDES) {
        for (double gap = GAP; gap < GAP + 16 * h; gap += h / 2) {
          double cx = tie.x() + nx * (gap + w / 2 * Math.abs(nx)) - ny * slide * h;
          double cy = tie.y() + ny * (gap + h / 2 * Math.abs(ny)) + nx * slide * h;
          Rectangle2D box = new Rectangle2D.Double(cx - w / 2, cy - h / 2, w, h);
          if (meetsAny(box, barrier)) {
            break;
          }
          if (isFree(box) && !(beside && meetsAny(box, covered))) {
            WrittenName name = new WrittenName(tie.mark(), box, line(tie, box, nx, ny));
            if (crossesNone(name) && !isOnItsOwn(box, tie.mark())) {
              draw(g, name);
              names.add(name);
              taken.add(new Rectangle2D.Double(box.getX() - 4, box.getY() - 1, w + 8, h + 2));
              return;
            }
          }
        }
      }
    }
  }

  /** From a mark to the near side of its name. */
  private static Line2D line(Tie tie, Rectangle2D box, double nx, double ny) {
    return new Line2D.Double(
        tie.x(),
        tie.y(),
        box.getCenterX() - nx * box.getWidth() / 2 * Math.abs(nx),
        box.getCenterY() - ny * box.getHeight() / 2 * Math.abs(ny));
  }

  private boolean crossesNone(WrittenName name) {
    return names.stream()
        .noneMatch(
            other ->
                name.line.intersects(other.box)
                    || other.line.intersects(name.box)
                    || name.line.intersectsLine(other.line));
  }

  /** Whether a place covers the line that its name is of. */
  private boolean isOnItsOwn(Rectangle2D box, Landmark mark) {
    SurfaceShape line = mark.shape();
    for (int v = 0; v < line.vertexCount(); v++) {
      double px = line.at(v, 0);
      double py = line.at(v, 1);
      double pz = line.at(v, 2);
      if (box.contains(projection.x(px, py, pz), projection.y(px, py, pz))) {
        return true;
      }
    }
    return false;
  }

  /** The names that were written. */
  List<WrittenName> names() {
    return List.copyOf(names);
  }

  private boolean isFree(Rectangle2D box) {
    return box.getX() >= 2
        && box.getY() >= 2
        && box.getMaxX() <= width - 2
        && box.getMaxY() <= height - 2
        && !meetsAny(box, taken);
  }

  /** Asked of thousands of places for each picture, so without a stream. */
  private static boolean meetsAny(Rectangle2D box, List<Rectangle2D> others) {
    for (Rectangle2D other : others) {
      if (box.intersects(other)) {
        return true;
      }
    }
    return false;
  }

  private void draw(Graphics2D g, WrittenName name) {
    Rectangle2D box = name.box;
    g.setStroke(new BasicStroke(1));
    g.setColor(palette.quiet());
    g.draw(name.line);
    g.setColor(Translucent.of(palette.card(), 0.85));
    g.fill(box);
    g.setColor(SceneContents.colour(name.mark.kind(), palette));
    FontMetrics font = g.getFontMetrics();
    g.drawString(
        name.mark.name(), (float) box.getX() + PADDING, (float) (box.getY() + font.getAscent()));
  }
}
