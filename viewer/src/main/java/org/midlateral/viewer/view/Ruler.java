package org.midlateral.viewer.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.viewer.drawing.NoteCard;
import org.midlateral.viewer.drawing.Palette;

/** The straight distance between two points that were clicked on surfaces. */
final class Ruler {
  private static final double DOT = 3.5;

  /** Where pieces are drawn off the finger, a point goes with its own. */
  record Spot(int piece, Vector3D onFinger) {}

  private final List<Spot> spots = new ArrayList<>();
  private boolean on;

  boolean isOn() {
    return on;
  }

  /** Begins with no point, or ends. */
  void setOn(boolean measuring) {
    on = measuring;
    spots.clear();
  }

  boolean isEmpty() {
    return spots.isEmpty();
  }

  void clear() {
    spots.clear();
  }

  /** Takes a point; the third begins anew. */
  void take(Spot spot) {
    if (spots.size() == 2) {
      spots.clear();
    }
    spots.add(spot);
  }

  /** The distance in words; empty before there are two points. */
  Optional<String> text(LengthUnit unit, Function<Spot, Vector3D> place) {
    return spots.size() < 2
        ? Optional.empty()
        : Optional.of(text(place.apply(spots.get(0)), place.apply(spots.get(1)), unit));
  }

  private static String text(Vector3D from, Vector3D to, LengthUnit unit) {
    int places = unit == LengthUnit.MM ? 1 : 2;
    double length = from.distance(to) / unit.millimetres();
    return String.format(Locale.ROOT, "%." + places + "f %s, straight", length, unit.symbol());
  }

  /**
   * Draws what there is of it.
   *
   * @param pointed what is under the pointer, as the point to come; empty for nothing
   * @param place where a point is now (mm)
   * @param seen where that appears (px)
   * @param width of the picture (px)
   */
  void draw(
      Graphics2D g,
      Optional<Spot> pointed,
      LengthUnit unit,
      Function<Spot, Vector3D> place,
      Function<Vector3D, Vector3D> seen,
      int width,
      Palette palette) {
    List<Vector3D> points = new ArrayList<>();
    spots.forEach(spot -> points.add(place.apply(spot)));
    if (points.size() == 1) {
      pointed.ifPresent(spot -> points.add(place.apply(spot)));
    }
    for (Vector3D point : points) {
      Vector3D at = seen.apply(point);
      g.setColor(palette.card());
      g.fill(dot(at, DOT + 1.5));
      g.setColor(palette.axis());
      g.fill(dot(at, DOT));
    }
    if (points.size() == 2) {
      Vector3D from = seen.apply(points.get(0));
      Vector3D to = seen.apply(points.get(1));
      Line2D line = new Line2D.Double(from.getX(), from.getY(), to.getX(), to.getY());
      g.setColor(palette.card());
      g.setStroke(new BasicStroke(4));
      g.draw(line);
      g.setColor(palette.axis());
      g.setStroke(new BasicStroke(2));
      g.draw(line);
      g.setStroke(new BasicStroke(1));
      String text = text(points.get(0), points.get(1), unit);
      double x = (from.getX() + to.getX()) / 2 + 10;
      NoteCard.draw(g, text, x, (from.getY() + to.getY()) / 2 + 8, width, palette);
    }
  }

  private static Ellipse2D dot(Vector3D at, double radius) {
    return new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
  }
}
