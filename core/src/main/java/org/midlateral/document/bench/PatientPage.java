package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.NailPlate;
import org.midlateral.document.bench.PatientWords.PatientAdvice;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.Page.Role;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.solid.Solid;

/** Writes the page for the patient: large print, one side, no name. */
final class PatientPage {
  /** Size of the type (mm): 14 points. */
  static final double TYPE = 4.94;

  private static final double LINE = 1.22 * TYPE;
  private static final double HEADING = 5.4;
  private static final double BETWEEN = 1.6;
  private static final double GUTTER = 5;

  /** A line to write on. */
  private static final String LONG_BLANK = "__________";

  /** Half of the width of a band in a picture (mm of the finger). */
  private static final double HALF_BAND = 3;

  /** In place of a way: what closes it is drawn. */
  private static final int CLOSED = 2;

  /** How far a piece is drawn off the finger (mm). */
  private static final double APART = 13;

  /** Distance of the head of an arrow's barbs from its point (mm). */
  private static final double BARB = 2;

  private final DigitSurface digit;
  private final Measurements measured;
  private final Views views;
  private final List<Solid> solids;

  /** Of the solids, each cut once for all pictures. */
  private final List<Silhouette> silhouettes;

  private final double width = (PaperSize.USED_WIDTH - 2 * GUTTER) / 3;
  private final List<Block> blocks = new ArrayList<>();
  private final List<Double> bands;
  private double top;

  private PatientPage(
      DigitSurface digit, Measurements measured, List<Solid> solids, Closure closure) {
    this.digit = digit;
    this.measured = measured;
    this.views = Views.fromTheSide(digit);
    this.solids = List.copyOf(solids);
    this.silhouettes = solids.stream().map(solid -> Silhouette.of(digit, solid)).toList();
    this.bands = bands(closure, digit, solids.get(0));
  }

  /**
   * The page.
   *
   * @param measured tells where nail and creases are drawn
   * @param solids what is worn, the trough first
   */
  static List<Page> of(
      DigitSurface digit,
      Measurements measured,
      List<Solid> solids,
      Closure closure,
      PageFrame frame) {
    PatientWords words =
        new PatientWords(solids.size() > 1, closure.served(), closure.tape().stations().size());
    PatientPage page = new PatientPage(digit, measured, solids, closure);
    page.top = frame.top() - 1;
    page.pictures(words.hasTop());
    words.all().forEach(page::advice);
    return frame.around(List.of(page.blocks));
  }

  /** How far each piece is off the finger, and which way it goes; +1 is upward, 0 not at all. */
  private record Moves(double trough, double shell, int troughWay, int shellWay) {}

  private void pictures(boolean hasTop) {
    row(
        "Put it on",
        hasTop
            ? List.of("1. Lay your finger in.", "2. Put the top on.", "3. Close it.")
            : List.of("1. Lay your finger in.", "2. Close it."),
        hasTop
            ? List.of(
                new Moves(-APART, Double.NaN, 1, 0),
                new Moves(0, APART, 0, -1),
                new Moves(0, 0, 0, CLOSED))
            : List.of(new Moves(-APART, Double.NaN, 1, 0), new Moves(0, Double.NaN, 0, CLOSED)));
    row(
        "Take it off",
        hasTop
            ? List.of("1. Open it. Lift the top.", "2. Lift your finger out.")
            : List.of("Open it. Lift your finger out."),
        hasTop
            ? List.of(new Moves(0, APART, 0, 1), new Moves(-APART, Double.NaN, -1, 0))
            : List.of(new Moves(-APART, Double.NaN, -1, 0)));
  }

  private void row(String heading, List<String> captions, List<Moves> moves) {
    heading(heading);
    double height = 0;
    for (int i = 0; i < moves.size(); i++) {
      Drawing drawing = picture(moves.get(i), captions.get(i));
      height = drawing.height();
      blocks.add(
          Block.figure(
              heading + ": " + captions.get(i), drawing, i * (width + GUTTER), top - height));
    }
    top -= height + BETWEEN;
  }

  /** The finger from the side, its tip to the right, and the pieces where the moves put them. */
  private Drawing picture(Moves moves, String caption) {
    double start = solids.get(0).piece().outline().proximal() - 2;
    List<PointMark> skin = views.skin(start);
    double scale = width / (digit.pulpEnd() - start + 2);
    double low = skin.stream().mapToDouble(PointMark::y).min().orElseThrow() - 4 - APART;
    double high = skin.stream().mapToDouble(PointMark::y).max().orElseThrow() + 5 + APART;
    Sketch sketch = new Sketch();
    List<PointMark> finger = placed(skin, start, low, scale, 0);
    nailAndCreases(sketch, start, low, scale);
    for (int i = 0; i < solids.size(); i++) {
      double off = i == 0 ? moves.trough : moves.shell;
      if (Double.isNaN(off)) {
        continue;
      }
      List<PointMark> outline = placed(views.outline(silhouettes.get(i)), start, low, scale, off);
      sketch.area(i == 0 ? 0.82 : 0.92, outline).stroke(Pen.EDGE, outline, true);
      arrow(sketch, outline, i == 0 ? moves.troughWay : moves.shellWay);
    }
    sketch.stroke(Pen.EDGE, finger, false);
    if (moves.shellWay == CLOSED) {
      bands(sketch, start, low, scale);
    }
    double height = scale * (high - low);
    sketch.text(caption, 0, height + 1.2, TYPE * 0.95);
    return sketch.drawing(width, height + TYPE + 1);
  }

  /** By which the finger is told to be one, and its tip from its other end. */
  private void nailAndCreases(Sketch sketch, double start, double low, double scale) {
    List<PointMark> nail = placed(views.nail(NailPlate.of(measured, digit)), start, low, scale, 0);
    sketch.area(1, nail).stroke(Pen.EDGE, nail, true);
    double pip = measured.webToPip();
    for (double station : new double[] {pip, pip + measured.pipToDip()}) {
      sketch.stroke(Pen.EDGE, placed(views.crease(station), start, low, scale, 0), false);
    }
  }

  /** What closes it, where it lies. */
  private void bands(Sketch sketch, double start, double low, double scale) {
    for (double station : bands) {
      List<PointMark> first = band(station - HALF_BAND);
      List<PointMark> last = band(station + HALF_BAND);
      List<PointMark> ring =
          placed(
              List.of(first.get(0), last.get(0), last.get(1), first.get(1)), start, low, scale, 0);
      sketch.area(1, ring).stroke(Pen.EDGE, ring, true);
    }
  }

  private List<PointMark> band(double station) {
    return views.across(station, views.reach(station, silhouettes) + 0.5);
  }

  /** Stations where the closure's bands are drawn (mm). */
  private static List<Double> bands(Closure closure, DigitSurface digit, Solid trough) {
    double from = trough.piece().outline().flankStart() + HALF_BAND;
    double to = trough.piece().outline().flankEnd() - HALF_BAND;
    int turns = (int) ((to - from) / (2 * HALF_BAND));
    return switch (closure.served()) {
      case TAPE -> closure.tape().stations();
      case STRAP -> List.of(digit.pipAxis() - HALF_BAND, digit.pipAxis() + HALF_BAND);
      case WRAP, SLEEVE ->
          IntStream.rangeClosed(0, turns).mapToObj(i -> from + (to - from) * i / turns).toList();
    };
  }

  private static List<PointMark> placed(
      List<PointMark> line, double start, double low, double scale, double off) {
    return line.stream()
        .map(p -> new PointMark(scale * (p.x() - start), scale * (p.y() - low + off)))
        .toList();
  }

  /** An arrow at a piece: above one that lies over the finger, below one that lies under it. */
  private static void arrow(Sketch sketch, List<PointMark> outline, int way) {
    if (way == 0 || way == CLOSED) {
      return;
    }
    double left = outline.stream().mapToDouble(PointMark::x).min().orElseThrow();
    double right = outline.stream().mapToDouble(PointMark::x).max().orElseThrow();
    double x = left + 0.8 * (right - left);
    double middle = outline.stream().mapToDouble(PointMark::y).average().orElseThrow();
    double from = middle - 3.5 * way;
    double to = middle + 3.5 * way;
    sketch.line(Pen.CUT, x, from, x, to);
    sketch.line(Pen.CUT, x - BARB, to - BARB * way, x, to);
    sketch.line(Pen.CUT, x + BARB, to - BARB * way, x, to);
  }

  private void heading(String text) {
    top -= HEADING * 1.25;
    Sketch sketch = new Sketch().bold(text, 0, 1.2, HEADING);
    blocks.add(
        Block.text(Role.HEADING, sketch.drawing(PaperSize.USED_WIDTH, HEADING * 1.25), 0, top));
  }

  /** Running text; a blank to write on begins a line, and what follows it another. */
  private static List<String> lines(PatientAdvice advice) {
    List<String> lines = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (String sentence : advice.sentences()) {
      if (sentence.contains(LONG_BLANK)) {
        wrap(text, lines);
        lines.add(sentence);
      } else {
        text.append(text.isEmpty() ? "" : " ").append(sentence);
      }
    }
    wrap(text, lines);
    return lines;
  }

  private static void wrap(StringBuilder text, List<String> lines) {
    if (!text.isEmpty()) {
      lines.addAll(Typeface.REGULAR.wrapped(text.toString(), TYPE, PaperSize.USED_WIDTH));
      text.setLength(0);
    }
  }

  private void advice(PatientAdvice advice) {
    heading(advice.heading());
    List<String> lines = lines(advice);
    double height = lines.size() * LINE;
    Sketch sketch = new Sketch();
    for (int i = 0; i < lines.size(); i++) {
      sketch.text(lines.get(i), 0, height - (i + 1) * LINE + 0.3 * TYPE, TYPE);
    }
    top -= height;
    blocks.add(Block.text(Role.PARAGRAPH, sketch.drawing(PaperSize.USED_WIDTH, height), 0, top));
    top -= BETWEEN;
  }
}
