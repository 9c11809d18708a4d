package org.midlateral.document.drawing;

import java.util.List;

/** One thing on a drawing. */
public sealed interface Mark {

  /**
   * A point.
   *
   * @param x to the right (mm)
   * @param y upward (mm)
   */
  record PointMark(double x, double y) {}

  /**
   * A line through points.
   *
   * @param pen it is drawn with
   * @param points at least two
   * @param closed whether the last is joined to the first
   */
  record LineStroke(Pen pen, List<PointMark> points, boolean closed) implements Mark {
    public LineStroke {
      points = List.copyOf(points);
    }
  }

  /**
   * An area in an even grey without an edge.
   *
   * @param grey 0 black to 1 white
   * @param points its corners
   */
  record FilledArea(double grey, List<PointMark> points) implements Mark {
    public FilledArea {
      points = List.copyOf(points);
    }
  }

  /**
   * A line of text.
   *
   * @param text without line breaks; signs that the typeface lacks become its replacement sign
   * @param at the start, middle or end of its baseline
   * @param size of the type (mm)
   * @param bold whether it is bold
   * @param anchor which point of the baseline
   * @param turn of the baseline, counter-clockwise (degrees)
   */
  record TextLabel(String text, PointMark at, double size, boolean bold, Anchor anchor, double turn)
      implements Mark {
    public TextLabel {
      text = Typeface.of(bold).shown(text);
    }

    TextLabel withAt(PointMark other) {
      return new TextLabel(text, other, size, bold, anchor, turn);
    }
  }

  /** A point of a baseline. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
