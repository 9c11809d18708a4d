package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/** Draws the blank at true size, with its levels in the left margin. */
final class BlankFigure {
  /** Room for the names of the levels, left of the blank (mm). */
  static final double MARGIN = 25;

  /** Room above for the title and below for the width (mm). */
  private static final double ABOVE = 7;

  private static final double BELOW = 7;

  /** Half of the cutting line, right of the blank (mm). */
  private static final double EDGE = 0.5;

  private static final double TYPE = 2.5;

  private final Blank blank;
  private final DigitSurface digit;
  private final Measurements measurements;
  private final List<LevelMark> marks;
  private final Lengths lengths;
  private final double middleOff;
  private final Sketch sketch = new Sketch();

  private BlankFigure(
      Blank blank,
      DigitSurface digit,
      Measurements measurements,
      List<LevelMark> marks,
      Lengths lengths,
      double middleOff) {
    this.blank = blank;
    this.digit = digit;
    this.measurements = measurements;
    this.marks = marks;
    this.lengths = lengths;
    this.middleOff = middleOff;
  }

  /**
   * The figure.
   *
   * @param middleOff from the skin to the middle of the sheet (mm)
   */
  static Drawing of(
      Blank blank,
      DigitSurface digit,
      Measurements measurements,
      List<LevelMark> marks,
      Lengths lengths,
      double middleOff) {
    BlankFigure figure = new BlankFigure(blank, digit, measurements, marks, lengths, middleOff);
    figure.draw();
    return figure.sketch.drawing(MARGIN + blank.width() + EDGE, BELOW + blank.length() + ABOVE);
  }

  private double x(double girth) {
    return MARGIN + blank.width() / 2 + girth;
  }

  private double y(double station) {
    return BELOW + station + measurements.palmarCreaseToWeb();
  }

  private void draw() {
    List<PointMark> outline = new ArrayList<>();
    for (var c : blank.outline().getExteriorRing().getCoordinates()) {
      outline.add(new PointMark(x(c.x), y(c.y)));
    }
    sketch.stroke(Pen.CUT, outline.subList(0, outline.size() - 1), true);
    double top = y(0) - measurements.palmarCreaseToWeb() + blank.length();
    sketch.line(Pen.AXIS, x(0), y(-measurements.palmarCreaseToWeb()), x(0), top);
    sketch.text(
        "volar midline", x(-1.2), y(-measurements.palmarCreaseToWeb()) + 2, TYPE, Anchor.START, 90);
    sketch.bold("BLANK", MARGIN, top + 2.2, 3.2);
    sketch.text(
        "cut along the heavy line, from a cold sheet of " + lengths.thin(blank.thickness()),
        MARGIN + 15,
        top + 2.2,
        TYPE);
    pinchLines();
    level("web", 0, Pen.AXIS, tongueAt(0));
    level("end of the pulp", digit.pulpEnd(), Pen.AXIS, blank.width() / 2);
    for (LevelMark mark : marks) {
      boolean axis = mark.level() == Level.PIP;
      level(
          LevelNames.of(mark.level()),
          mark.station(),
          axis ? Pen.AXIS : Pen.FINE,
          blank.width() / 2);
      ticks(mark);
    }
    sides();
    dimensions();
  }

  /** Half-width of the blank at a station (mm). */
  private double tongueAt(double station) {
    double half = 0;
    var ring = blank.outline().getExteriorRing().getCoordinates();
    for (int i = 1; i < ring.length; i++) {
      if (ring[i - 1].y < station != ring[i].y < station) {
        half = Math.max(half, Math.abs(ring[i].x));
      }
    }
    return half;
  }

  /** Where the two edges meet when the sheet lies round the finger. */
  private void pinchLines() {
    for (int side = -1; side <= 1; side += 2) {
      List<PointMark> line = new ArrayList<>();
      for (double s = 3; s <= digit.tip(); s += 1) {
        double half = SheetArc.round(digit.circumference(s), middleOff) / 2;
        line.add(new PointMark(x(side * half), y(s)));
      }
      sketch.stroke(Pen.FOLD, line, false);
    }
    double half = SheetArc.round(digit.circumference(6), middleOff) / 2;
    double middle = (half + blank.width() / 2) / 2;
    sketch.text("pinch", x(middle), y(5), TYPE, Anchor.MIDDLE, 0);
    sketch.text("pinch", x(-middle), y(5), TYPE, Anchor.MIDDLE, 0);
  }

  private void level(String name, double station, Pen pen, double half) {
    sketch.line(pen, x(-half), y(station), x(half), y(station));
    sketch.line(Pen.FINE, MARGIN - 4, y(station), Math.max(MARGIN - 1, x(-half)), y(station));
    sketch.text(name, MARGIN - 5, y(station) - TYPE * 0.35, TYPE, Anchor.END, 0);
  }

  private void ticks(LevelMark mark) {
    for (int side = -1; side <= 1; side += 2) {
      double trim = side * mark.trim().flat();
      sketch.line(Pen.MARK, x(trim), y(mark.station()) - 2.5, x(trim), y(mark.station()) + 2.5);
      double lateral = side * mark.midlateral().flat();
      if (Math.abs(lateral - trim) > 0.3) {
        sketch.line(
            Pen.FINE, x(lateral), y(mark.station()) - 2.5, x(lateral), y(mark.station()) + 2.5);
      }
    }
    String distance = lengths.text(mark.trim().flat());
    sketch.text(distance, x(mark.trim().flat()) + 1, y(mark.station()) + 0.9, TYPE);
  }

  private void sides() {
    boolean right = measurements.hand() == Hand.RIGHT;
    double y = y((measurements.stationOf(Level.MIDDLE_PHALANX) + measurements.dipAxis()) / 2);
    double at = blank.width() / 2 - 4;
    sketch.text(right ? "radial" : "ulnar", x(at), y, TYPE, Anchor.MIDDLE, 90);
    sketch.text(right ? "ulnar" : "radial", x(-at), y, TYPE, Anchor.MIDDLE, 90);
  }

  private void dimensions() {
    double half = blank.width() / 2;
    double low = y(-measurements.palmarCreaseToWeb());
    sketch.text("palmar crease", MARGIN - 5, low - TYPE * 0.35, TYPE, Anchor.END, 0);
    String which = PalmarCrease.which(measurements.digit());
    sketch.text(which, MARGIN - 5, low - TYPE * 1.6, TYPE, Anchor.END, 0);
    sketch.line(Pen.FINE, MARGIN - 4, low, x(-blank.tongueWidth() / 2 + 3), low);
    double y = 3.8;
    sketch.line(Pen.FINE, x(-half), y, x(half), y);
    for (double end : new double[] {-half, half}) {
      sketch.line(Pen.FINE, x(end), y - 1.2, x(end), y + 1.2);
    }
    sketch.text(
        lengths.with(blank.width()) + " wide, " + lengths.with(blank.length()) + " long",
        x(0),
        y - TYPE - 0.4,
        TYPE,
        Anchor.MIDDLE,
        0);
  }
}
