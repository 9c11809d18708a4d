package org.midlateral.document.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.FilledArea;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;

/**
 * A drawing of a stated size; x to the right, y upward, from its lower left corner.
 *
 * @param width (mm)
 * @param height (mm)
 * @param marks in the order in which they are drawn
 */
public record Drawing(double width, double height, List<Mark> marks) {

  public Drawing {
    marks = List.copyOf(marks);
  }

  /** Collects the marks of a drawing. */
  public static final class Sketch {
    private final List<Mark> marks = new ArrayList<>();

    /** A line from one point to another. */
    public Sketch line(Pen pen, double x0, double y0, double x1, double y1) {
      return stroke(pen, List.of(new PointMark(x0, y0), new PointMark(x1, y1)), false);
    }

    /** A line through points. */
    public Sketch stroke(Pen pen, List<PointMark> points, boolean closed) {
      marks.add(new LineStroke(pen, points, closed));
      return this;
    }

    /** A rectangle by its lower left corner and its size. */
    public Sketch box(Pen pen, double x, double y, double width, double height) {
      return stroke(pen, corners(x, y, width, height), true);
    }

    /** A grey area. */
    public Sketch area(double grey, List<PointMark> points) {
      marks.add(new FilledArea(grey, points));
      return this;
    }

    /** A text that starts at a point. */
    public Sketch text(String text, double x, double y, double size) {
      return text(text, x, y, size, Anchor.START, 0);
    }

    /** A text at a point. */
    public Sketch text(String text, double x, double y, double size, Anchor anchor, double turn) {
      return label(new TextLabel(text, new PointMark(x, y), size, false, anchor, turn));
    }

    /** A bold text that starts at a point. */
    public Sketch bold(String text, double x, double y, double size) {
      return label(new TextLabel(text, new PointMark(x, y), size, true, Anchor.START, 0));
    }

    /** Any text; an empty one is left out. */
    public Sketch label(TextLabel label) {
      if (!label.text().isBlank()) {
        marks.add(label);
      }
      return this;
    }

    /** Another drawing's marks, moved. */
    public Sketch add(Drawing drawing, double x, double y) {
      marks.addAll(drawing.moved(x, y).marks);
      return this;
    }

    /** The drawing so far. */
    public Drawing drawing(double width, double height) {
      return new Drawing(width, height, marks);
    }

    private static List<PointMark> corners(double x, double y, double width, double height) {
      return List.of(
          new PointMark(x, y),
          new PointMark(x + width, y),
          new PointMark(x + width, y + height),
          new PointMark(x, y + height));
    }
  }

  /** The same without the texts that are anchored outside a rectangle (mm). */
  public Drawing withoutTextsOutside(double x, double y, double width, double height) {
    return new Drawing(
        this.width,
        this.height,
        marks.stream()
            .filter(
                mark ->
                    !(mark instanceof TextLabel label)
                        || label.at().x() >= x
                            && label.at().x() <= x + width
                            && label.at().y() >= y
                            && label.at().y() <= y + height)
            .toList());
  }

  /** The same marks elsewhere. */
  public Drawing moved(double x, double y) {
    UnaryOperator<PointMark> move = p -> new PointMark(p.x() + x, p.y() + y);
    return new Drawing(width, height, marks.stream().map(mark -> moved(mark, move)).toList());
  }

  private static Mark moved(Mark mark, UnaryOperator<PointMark> move) {
    if (mark instanceof LineStroke s) {
      return new LineStroke(s.pen(), s.points().stream().map(move).toList(), s.closed());
    }
    if (mark instanceof FilledArea a) {
      return new FilledArea(a.grey(), a.points().stream().map(move).toList());
    }
    TextLabel label = (TextLabel) mark;
    return label.withAt(move.apply(label.at()));
  }
}
