package org.midlateral.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.AnnotationLine;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * EI along the finger on a logarithmic axis, one line a wrap, as an SVG picture. Lines are told
 * apart by their dashes and by a label on each; colour only helps.
 */
public final class RigidityPlot {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 560;
  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

  /** Dark enough for print, apart in lightness too. */
  private static final Color[] COLOURS = {
    new Color(0xB04A00),
    new Color(0x7A3E9D),
    new Color(0x00599C),
    new Color(0x1B1B1B),
    new Color(0x4B6B00),
    new Color(0x8C1D40)
  };

  private static final float[][] DASHES = {
    {2, 4}, {14, 10}, {}, {11, 4, 3, 6}, {5, 3}, {17, 3, 2, 3}
  };

  /** Where along a line its label stands, as a share of it. */
  private static final double LABEL = 0.75;

  /** Least length of a level stretch (mm), about one period of the dashes. */
  private static final double STRETCH = 3;

  /** The station axis begins and ends at a multiple of this (mm). */
  private static final double TICK = 10;

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
  public record PlotMark(String name, double station) {}

  private RigidityPlot() {}

  /**
   * Draws the picture.
   *
   * @param title above it
   * @param note below it
   * @param lines each with a dash of its own, in order
   * @param marks levels of the finger
   * @return SVG text
   */
  public static String svg(String title, String note, List<PlotLine> lines, List<PlotMark> marks)
      throws IOException {
    XYChart chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .xAxisTitle("distance from the web, proximal to distal (mm)   |   " + note)
            .yAxisTitle("EI (N·mm²), logarithmic")
            .build();
    style(chart, lines);
    for (int i = 0; i < lines.size(); i++) {
      add(chart, lines.get(i), i);
    }
    for (PlotMark mark : marks) {
      chart.addAnnotation(new AnnotationLine(mark.station(), true, false));
      double top = chart.getStyler().getYAxisMax();
      chart.addAnnotation(new AnnotationText(mark.name(), mark.station(), top / 1.2, false));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    VectorGraphicsEncoder.saveVectorGraphic(
        chart, out, VectorGraphicsEncoder.VectorGraphicsFormat.SVG);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static void style(XYChart chart, List<PlotLine> lines) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (PlotLine line : lines) {
      first = Math.min(first, line.stations().get(0));
      last = Math.max(last, line.stations().get(line.stations().size() - 1));
      for (double value : line.values()) {
        least = value > 0 ? Math.min(least, value) : least;
        most = Math.max(most, value);
      }
    }
    XYStyler styler = chart.getStyler();
    styler.setLegendVisible(false);
    styler.setMarkerSize(0);
    styler.setYAxisLogarithmic(true);
    styler.setYAxisMin(Math.pow(10, Math.floor(Math.log10(Math.max(least, most / 1e6)))));
    styler.setYAxisMax(2 * Math.pow(10, Math.ceil(Math.log10(most))));
    styler.setYAxisLogarithmicDecadeOnly(true);
    styler.setYAxisDecimalPattern("###,###");
    styler.setXAxisMin(TICK * Math.floor(first / TICK));
    styler.setXAxisMax(TICK * Math.ceil(last / TICK));
    styler.setXAxisTickMarkSpacingHint(80);
    styler.setLocale(Locale.ROOT);
    styler.setChartBackgroundColor(Color.WHITE);
    styler.setPlotBorderVisible(false);
    styler.setPlotGridLinesColor(new Color(0xD8D8D8));
    styler.setPlotGridLinesStroke(new BasicStroke(0.6f));
    styler.setPlotContentSize(1);
    styler.setChartTitleFont(PLAIN.deriveFont(Font.BOLD, 15f));
    styler.setAxisTitleFont(PLAIN);
    styler.setAxisTickLabelsFont(PLAIN);
    styler.setAnnotationTextFont(PLAIN.deriveFont(Font.BOLD));
    styler.setAnnotationLineColor(new Color(0x909090));
    styler.setAnnotationLineStroke(new BasicStroke(1));
  }

  private static void add(XYChart chart, PlotLine line, int order) {
    List<Double> stations = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    thin(line, chart.getStyler().getYAxisMin(), stations, values);
    XYSeries series = chart.addSeries(line.label(), stations, values);
    series.setMarker(SeriesMarkers.NONE);
    series.setLineColor(COLOURS[order % COLOURS.length]);
    float[] dash = DASHES[order % DASHES.length];
    series.setLineStyle(
        new BasicStroke(
            2.4f,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            10,
            dash.length == 0 ? null : dash,
            0));
    int at = (int) (LABEL * stations.size());
    chart.addAnnotation(
        new AnnotationText(line.label(), stations.get(at), 1.3 * values.get(at), false));
  }

  /**
   * Leaves out points on level stretches: every stretch between two points begins its dashes anew,
   * and a short one has room for none.
   */
  private static void thin(
      PlotLine line, double least, List<Double> stations, List<Double> values) {
    int n = line.values().size();
    double kept = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double value = line.values().get(i);
      boolean steep =
          i > 0 && steep(line.values().get(i - 1), value)
              || i + 1 < n && steep(value, line.values().get(i + 1));
      double station = line.stations().get(i);
      if (value >= least && (steep || i == n - 1 || station - kept >= STRETCH - 1e-9)) {
        stations.add(station);
        values.add(value);
        kept = station;
      }
    }
  }

  private static boolean steep(double from, double to) {
    return Math.abs(Math.log(to / from)) > 0.3;
  }
}
