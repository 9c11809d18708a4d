package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.SvgFile;
import org.midlateral.document.drawing.Typeface;

/**
 * EI along the finger on a logarithmic axis, one line a wrap. Lines are told apart by pen and dash
 * and by a label on each.
 *
 * @param subject whose it is and of what, under the heading
 * @param note below it
 * @param lines each with a pen of its own, in order
 * @param levels of the finger
 */
public record RigidityPlot(
    String subject, String note, List<PlotLine> lines, List<PlotLevel> levels) {
  private static final String TITLE = "Bending rigidity along the finger, by share of girth";
  private static final double WIDTH = 188;
  private static final double HEIGHT = 126;
  private static final double MARGIN = 4;
  private static final double LEFT = 28;
  private static final double RIGHT = 8;
  private static final double BELOW = 21;
  private static final double ABOVE = 22;
  private static final double TYPE = 2.8;
  private static final double HEADING = 3.4;

  /** None of them is cut along. */
  private static final Pen[] PENS = {Pen.AXIS, Pen.FOLD, Pen.MARK, Pen.EDGE, Pen.FINE};

  /** Where along a line its label stands, as a share of it: elsewhere than its neighbours'. */
  private static final double[] LABELS = {0.78, 0.68, 0.58};

  /** Lines across are grey, and so thick (mm). */
  private static final double GREY = 0.8;

  private static final double THIN = 0.2;

  /** The station axis begins and ends at a multiple of this (mm). */
  private static final double TICK = 10;

  /** No more decades are shown: a rim's corner comes near to nothing. */
  private static final double DECADES = 6;

  public RigidityPlot {
    lines = List.copyOf(lines);
    levels = List.copyOf(levels);
  }

  /**
   * One line.
   *
   * @param label that stands on it
   * @param stations ascending (mm)
   * @param values EI at each (N·mm²); those that are not positive are not drawn
   */
  public record PlotLine(String label, List<Double> stations, List<Double> values) {
    public PlotLine {
      stations = List.copyOf(stations);
      values = List.copyOf(values);
    }
  }

  /**
   * A level of the finger, marked by an upright line.
   *
   * @param name of the level
   * @param station mm
   */
  public record PlotLevel(String name, double station) {}

  /** The file, SVG 1.1, UTF-8. */
  public byte[] svg() {
    return SvgFile.bytes(drawing(), TITLE + ", " + subject);
  }

  /** The picture. */
  public Drawing drawing() {
    return new Plot().drawing();
  }

  private double least(ToDoubleFunction<PlotLine> of) {
    return lines.stream().mapToDouble(of).min().orElseThrow();
  }

  private double most(ToDoubleFunction<PlotLine> of) {
    return lines.stream().mapToDouble(of).max().orElseThrow();
  }

  /** The plot on paper. */
  private final class Plot {
    private final Sketch sketch = new Sketch();
    private final double from;
    private final double to;
    private final double low;
    private final double high;

    Plot() {
      from = TICK * Math.floor(least(line -> line.stations().get(0)) / TICK);
      to = TICK * Math.ceil(most(line -> line.stations().get(line.stations().size() - 1)) / TICK);
      double stiffest = most(line -> line.values().stream().mapToDouble(v -> v).max().orElse(0));
      double weakest =
          least(
              line ->
                  line.values().stream().mapToDouble(v -> v).filter(v -> v > 0).min().orElse(1));
      high = Math.ceil(Math.log10(stiffest));
      low = Math.max(Math.floor(Math.log10(weakest)), high - DECADES);
    }

    Drawing drawing() {
      double top = HEIGHT - MARGIN - HEADING;
      sketch.bold(TITLE, MARGIN, top, HEADING);
      sketch.text(subject, MARGIN, top - 1.6 * TYPE, TYPE);
      axes();
      for (PlotLevel level : levels) {
        double x = x(level.station());
        sketch.line(Pen.GHOST, x, BELOW, x, HEIGHT - ABOVE);
        sketch.text(level.name(), x, HEIGHT - ABOVE + 1.2, TYPE, Anchor.MIDDLE, 0);
      }
      for (int i = 0; i < lines.size(); i++) {
        sketch.stroke(PENS[i % PENS.length], placed(lines.get(i)), false);
      }
      for (int i = 0; i < lines.size(); i++) {
        label(lines.get(i), LABELS[i % LABELS.length]);
      }
      sketch.text(note, MARGIN, MARGIN, TYPE);
      return sketch.drawing(WIDTH, HEIGHT);
    }

    private double x(double station) {
      return LEFT + (WIDTH - LEFT - RIGHT) * (station - from) / (to - from);
    }

    private double y(double value) {
      return BELOW + (HEIGHT - BELOW - ABOVE) * (Math.log10(value) - low) / (high - low);
    }

    private void axes() {
      double right = WIDTH - RIGHT;
      for (double decade = low; decade <= high; decade++) {
        double value = Math.pow(10, decade);
        sketch.area(GREY, corners(LEFT, y(value) - THIN / 2, right, y(value) + THIN / 2));
        String text = String.format(Locale.ROOT, decade < 0 ? "%s" : "%,.0f", value);
        sketch.text(text, LEFT - 1.5, y(value) - TYPE / 3, TYPE, Anchor.END, 0);
      }
      for (double station = from; station <= to; station += TICK) {
        sketch.line(Pen.FINE, x(station), BELOW, x(station), BELOW - 1.2);
        String text = String.format(Locale.ROOT, "%.0f", station + 0.0);
        sketch.text(text, x(station), BELOW - 4.6, TYPE, Anchor.MIDDLE, 0);
      }
      sketch.line(Pen.EDGE, LEFT, BELOW, LEFT, HEIGHT - ABOVE);
      sketch.line(Pen.EDGE, LEFT, BELOW, right, BELOW);
      double middle = (LEFT + right) / 2;
      sketch.text(
          "distance from the web, proximal to distal (mm)",
          middle,
          MARGIN + 7.4,
          TYPE,
          Anchor.MIDDLE,
          0);
      double half = (BELOW + HEIGHT - ABOVE) / 2;
      sketch.text("EI (N·mm²), logarithmic", MARGIN + TYPE, half, TYPE, Anchor.MIDDLE, 90);
    }

    private List<PointMark> placed(PlotLine line) {
      List<PointMark> points = new ArrayList<>();
      for (int i = 0; i < line.values().size(); i++) {
        double value = line.values().get(i);
        if (value >= Math.pow(10, low)) {
          points.add(new PointMark(x(line.stations().get(i)), y(value)));
        }
      }
      return points;
    }

    private static List<PointMark> corners(double left, double low, double right, double high) {
      return List.of(
          new PointMark(left, low),
          new PointMark(right, low),
          new PointMark(right, high),
          new PointMark(left, high));
    }

    /** On its line, clear of others that pass there. */
    private void label(PlotLine line, double share) {
      int at = (int) (share * line.stations().size());
      double x = x(line.stations().get(at));
      double y = y(line.values().get(at)) - TYPE / 3;
      double half = Typeface.BOLD.width(line.label(), TYPE) / 2 + 0.6;
      sketch.area(1, corners(x - half, y - 0.6, x + half, y + 0.9 * TYPE));
      sketch.label(new TextLabel(line.label(), new PointMark(x, y), TYPE, true, Anchor.MIDDLE, 0));
    }
  }
}
