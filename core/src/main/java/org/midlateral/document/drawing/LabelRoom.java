package org.midlateral.document.drawing;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;

/**
 * Finds a place for a text where it lies on no line and on no other text. All lines are drawn
 * first; each text is then put at the first of its places that is free.
 */
public final class LabelRoom {
  /** Of a capital, over the size of the type. */
  private static final double ABOVE = 0.74;

  /** Of what hangs below the baseline, over the size of the type. */
  private static final double BELOW = 0.22;

  /** Between a text and what stands beside it (mm). */
  private static final double APART = 0.3;

  private final Sketch sketch;

  public LabelRoom(Sketch sketch) {
    this.sketch = sketch;
  }

  /**
   * Draws a text at the first place that is free; nowhere, where none is.
   *
   * @param places of the text, the best one first
   * @return the text where it is drawn
   */
  public Optional<TextLabel> put(List<TextLabel> places) {
    Optional<TextLabel> free = places.stream().filter(this::isFree).findFirst();
    free.ifPresent(sketch::label);
    return free;
  }

  private boolean isFree(TextLabel label) {
    Envelope box = box(label);
    return sketch.drawing(0, 0).marks().stream().noneMatch(mark -> meets(mark, box));
  }

  private static boolean meets(Mark mark, Envelope box) {
    if (mark instanceof TextLabel other) {
      Envelope around = box(other);
      around.expandBy(APART);
      return around.intersects(box);
    }
    return mark instanceof LineStroke stroke && crosses(stroke, box);
  }

  private static boolean crosses(LineStroke stroke, Envelope box) {
    Envelope around = box.copy();
    around.expandBy(APART + stroke.pen().weight() / 2);
    RectangleLineIntersector rectangle = new RectangleLineIntersector(around);
    List<PointMark> points = stroke.points();
    int ends = stroke.closed() ? points.size() : points.size() - 1;
    for (int i = 0; i < ends; i++) {
      PointMark next = points.get((i + 1) % points.size());
      if (rectangle.intersects(coordinate(points.get(i)), coordinate(next))) {
        return true;
      }
    }
    return false;
  }

  private static Coordinate coordinate(PointMark point) {
    return new Coordinate(point.x(), point.y());
  }

  /** The room of a text that runs along x, or upward along y (mm). */
  private static Envelope box(TextLabel label) {
    double width = Typeface.of(label.bold()).width(label.text(), label.size());
    double start =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double x = label.at().x();
    double y = label.at().y();
    double above = ABOVE * label.size();
    double below = BELOW * label.size();
    return label.turn() == 0
        ? new Envelope(x + start, x + start + width, y - below, y + above)
        : new Envelope(x - above, x + below, y + start, y + start + width);
  }
}
