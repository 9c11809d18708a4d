package org.midlateral.document.followup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;

/**
 * Readings over the weeks.
 *
 * @param title above it, with the unit
 * @param lines each with a symbol of its own, in order
 * @param room a band across the chart; empty for none
 * @param pieces when a piece was made
 * @param days from the first visit to the last
 * @param downward whether the axis grows downward, as for what is short of extension
 * @param least the axis reaches as far at least
 * @param most the axis reaches as far at least
 */
public record TimeChart(
    String title,
    List<ChartLine> lines,
    Optional<ChartRoom> room,
    List<PieceMark> pieces,
    int days,
    boolean downward,
    double least,
    double most) {
  private static final double TYPE = 2.5;
  private static final double LEFT = 12;
  private static final double RIGHT = 32;
  private static final double BELOW = 6;
  private static final double ABOVE = 8.5;

  /** Half of the width of a symbol (mm). */
  private static final double SYMBOL = 0.8;

  private static final double BAND = 0.88;
  private static final double ROOM = 0.94;
  private static final int WEEK = 7;
  private static final int MOST_TICKS = 14;
  private static final double[] STEPS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
  private static final int ROWS = 5;

  /** Labels at the lines' ends keep so far apart (mm). */
  private static final double APART = 3;

  public TimeChart {
    lines = List.copyOf(lines);
    pieces = List.copyOf(pieces);
  }

  /**
   * One line; visits without the reading are passed over.
   *
   * @param label at its end
   * @param points by day, ascending
   * @param off half of the width of the band that the readings' error makes; 0 for none
   */
  public record ChartLine(String label, List<PointMark> points, double off) {
    public ChartLine {
      points = List.copyOf(points);
    }
  }

  /**
   * A band between two values, over some of the days.
   *
   * @param label in it
   * @param spans one for each piece
   */
  public record ChartRoom(String label, List<RoomSpan> spans) {
    public ChartRoom {
      spans = List.copyOf(spans);
    }
  }

  /**
   * A part of it.
   *
   * @param from day
   * @param to day
   * @param low value
   * @param high value
   */
  public record RoomSpan(double from, double to, double low, double high) {}

  /**
   * When a piece was made, or adjusted.
   *
   * @param day from the first visit
   * @param label beside the mark
   */
  public record PieceMark(double day, String label) {}

  /** The drawing. */
  Drawing drawing(double width, double height) {
    return new Plot(width, height).drawing();
  }

  private double lowest() {
    double low = least;
    for (ChartLine line : lines) {
      for (PointMark point : line.points()) {
        low = Math.min(low, point.y() - line.off());
      }
    }
    for (RoomSpan span : room.map(ChartRoom::spans).orElse(List.of())) {
      low = Math.min(low, span.low());
    }
    return low;
  }

  private double highest() {
    double high = most;
    for (ChartLine line : lines) {
      for (PointMark point : line.points()) {
        high = Math.max(high, point.y() + line.off());
      }
    }
    for (RoomSpan span : room.map(ChartRoom::spans).orElse(List.of())) {
      high = Math.max(high, span.high());
    }
    return high;
  }

  /** The chart on paper. */
  private final class Plot {
    private final Sketch sketch = new Sketch();
    private final double width;
    private final double height;
    private final double step;
    private final double low;
    private final double high;

    Plot(double width, double height) {
      this.width = width;
      this.height = height;
      double from = lowest();
      double to = highest();
      double each = STEPS[STEPS.length - 1];
      for (int i = STEPS.length - 1; i >= 0; i--) {
        each = (to - from) / STEPS[i] <= ROWS ? STEPS[i] : each;
      }
      this.step = each;
      this.low = each * Math.floor(from / each + 1e-9);
      this.high = each * Math.ceil(to / each - 1e-9);
    }

    Drawing drawing() {
      sketch.bold(title, 0, height - 3, TYPE + 0.4);
      band();
      axes();
      marks();
      lines();
      return sketch.drawing(width, height);
    }

    private double x(double day) {
      return LEFT + (width - LEFT - RIGHT) * day / Math.max(1, days);
    }

    private double y(double value) {
      double share = (value - low) / (high - low);
      return BELOW + (height - BELOW - ABOVE) * (downward ? 1 - share : share);
    }

    private void band() {
      room.ifPresent(
          band -> {
            for (RoomSpan span : band.spans()) {
              sketch.area(
                  ROOM,
                  List.of(
                      new PointMark(x(span.from()), y(span.low())),
                      new PointMark(x(span.to()), y(span.low())),
                      new PointMark(x(span.to()), y(span.high())),
                      new PointMark(x(span.from()), y(span.high()))));
            }
          });
      for (ChartLine line : lines) {
        if (line.off() > 0 && line.points().size() > 1) {
          List<PointMark> ring = new ArrayList<>();
          line.points().forEach(p -> ring.add(new PointMark(x(p.x()), y(p.y() + line.off()))));
          List<PointMark> back = new ArrayList<>(line.points());
          Collections.reverse(back);
          back.forEach(p -> ring.add(new PointMark(x(p.x()), y(p.y() - line.off()))));
          sketch.area(BAND, ring);
        }
      }
    }

    private void axes() {
      for (double value = low; value <= high + step / 2; value += step) {
        sketch.line(Pen.GHOST, LEFT, y(value), width - RIGHT, y(value));
        String form = step < 0.1 ? "%.2f" : step < 1 ? "%.1f" : "%.0f";
        String text =
            String.format(Locale.ROOT, form, value + 0.0).replaceFirst("^-(0\\.?0*)$", "$1");
        sketch.text(text, LEFT - 1.5, y(value) - TYPE / 3, TYPE, Anchor.END, 0);
      }
      sketch.line(Pen.EDGE, LEFT, BELOW, LEFT, height - ABOVE);
      sketch.line(Pen.EDGE, LEFT, BELOW, width - RIGHT, BELOW);
      int every = Math.max(1, (int) Math.ceil(days / (double) WEEK / MOST_TICKS));
      for (int week = 0; week * WEEK <= days; week += every) {
        sketch.line(Pen.FINE, x(week * WEEK), BELOW, x(week * WEEK), BELOW - 1);
        sketch.text("" + week, x(week * WEEK), BELOW - 4, TYPE, Anchor.MIDDLE, 0);
      }
      sketch.text("weeks", width - RIGHT + 5.5, BELOW - 4, TYPE);
    }

    private void marks() {
      double top = height - ABOVE;
      for (PieceMark piece : pieces) {
        sketch.line(Pen.AXIS, x(piece.day()), BELOW, x(piece.day()), top);
        sketch.text(piece.label(), x(piece.day()) + 1, top + 0.9, TYPE);
      }
    }

    private void lines() {
      double taken = Double.NEGATIVE_INFINITY;
      List<ChartLine> byEnd = new ArrayList<>(lines);
      byEnd.removeIf(line -> line.points().isEmpty());
      byEnd.sort((a, b) -> Double.compare(y(end(a).y()), y(end(b).y())));
      for (ChartLine line : byEnd) {
        List<PointMark> placed =
            line.points().stream().map(p -> new PointMark(x(p.x()), y(p.y()))).toList();
        int kind = lines.indexOf(line);
        if (placed.size() > 1) {
          sketch.stroke(kind == 0 ? Pen.MARK : kind == 1 ? Pen.FOLD : Pen.EDGE, placed, false);
        }
        placed.forEach(point -> symbol(point, kind));
        PointMark end = placed.get(placed.size() - 1);
        double at = Math.max(end.y(), taken + APART);
        taken = at;
        symbol(new PointMark(width - RIGHT + 3, at), kind);
        sketch.text(line.label(), width - RIGHT + 5.5, at - TYPE / 3, TYPE);
      }
    }

    private static PointMark end(ChartLine line) {
      return line.points().get(line.points().size() - 1);
    }

    /** A filled square, an open one, a filled diamond, an open one. */
    private void symbol(PointMark at, int kind) {
      double turned = kind % 4 < 2 ? 0 : 1.3 * SYMBOL;
      double s = SYMBOL;
      List<PointMark> ring =
          turned > 0
              ? List.of(
                  new PointMark(at.x() - turned, at.y()),
                  new PointMark(at.x(), at.y() - turned),
                  new PointMark(at.x() + turned, at.y()),
                  new PointMark(at.x(), at.y() + turned))
              : List.of(
                  new PointMark(at.x() - s, at.y() - s),
                  new PointMark(at.x() + s, at.y() - s),
                  new PointMark(at.x() + s, at.y() + s),
                  new PointMark(at.x() - s, at.y() + s));
      sketch.area(kind % 2 == 0 ? 0 : 1, ring).stroke(Pen.EDGE, ring, true);
    }
  }
}
