package org.midlateral.document.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;

/**
 * Names in the margin beside a figure, each led to its place. Those that would lie on one another
 * give way downward.
 */
public final class MarginLabels {
  /** Between two baselines, over the size of the type. */
  private static final double LEADING = 1.35;

  /** From the baseline up to the middle of a line of text, over the size of the type. */
  private static final double MIDDLE = 0.35;

  /** Length of a leader's slope, and of what follows it up to the text (mm). */
  private static final double SLOPE = 3;

  private static final double AFTER = 1.5;
  private static final double BEFORE_TEXT = 1;

  private final double edge;
  private final double way;
  private final double type;
  private final List<MarginLabel> labels = new ArrayList<>();

  /**
   * An empty margin.
   *
   * @param edge where the figure ends and the margin begins (mm)
   * @param right whether the margin is right of the figure
   * @param type size of the type (mm)
   */
  public MarginLabels(double edge, boolean right, double type) {
    this.edge = edge;
    this.way = right ? 1 : -1;
    this.type = type;
  }

  /**
   * A name.
   *
   * @param lines of it, one below the other
   * @param x where its leader begins (mm)
   * @param y of its place (mm)
   */
  private record MarginLabel(List<String> lines, double x, double y) {}

  /** Adds a name, of one line or of several, whose leader begins at a point of the figure. */
  public MarginLabels add(double x, double y, String... lines) {
    labels.add(new MarginLabel(List.of(lines), x, y));
    return this;
  }

  /** Draws them all. */
  public void draw(Sketch sketch) {
    List<MarginLabel> downward = new ArrayList<>(labels);
    downward.sort(Comparator.comparingDouble(label -> -label.y()));
    double free = Double.POSITIVE_INFINITY;
    for (MarginLabel label : downward) {
      double y = Math.min(label.y(), free);
      double bend = edge + way * SLOPE;
      double end = bend + way * AFTER;
      sketch.stroke(
          Pen.FINE,
          List.of(
              new PointMark(label.x(), label.y()),
              new PointMark(edge, label.y()),
              new PointMark(bend, y),
              new PointMark(end, y)),
          false);
      double baseline = y - MIDDLE * type;
      for (String line : label.lines()) {
        sketch.text(
            line, end + way * BEFORE_TEXT, baseline, type, way > 0 ? Anchor.START : Anchor.END, 0);
        baseline -= LEADING * type;
      }
      free = y - label.lines().size() * LEADING * type;
    }
  }

  /** Room that the names take, from the figure's edge on (mm). */
  public double width() {
    double widest =
        labels.stream()
            .flatMap(label -> label.lines().stream())
            .mapToDouble(line -> Typeface.REGULAR.width(line, type))
            .max()
            .orElse(0);
    return SLOPE + AFTER + BEFORE_TEXT + widest;
  }
}
