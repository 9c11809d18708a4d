package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.LabelRoom;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.MarginLabels;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/**
 * Draws the blank at true size, with the edge of the trimmed trough within it and its levels in the
 * left margin.
 */
final class BlankFigure {
  /** Room for the names of the levels, left of the blank (mm). */
  static final double MARGIN = 25;

  /** Room above for the title and below for the width (mm). */
  private static final double ABOVE = 7;

  private static final double BELOW = 7;

  /** Half of the cutting line, right of the blank (mm). */
  private static final double EDGE = 0.5;

  private static final double TYPE = 2.5;

  /** Half of a mark's tick (mm). */
  private static final double TICK = 2.5;

  private final Blank blank;
  private final DigitSurface digit;
  private final Measurements measurements;
  private final List<LevelMark> marks;
  private final Lengths lengths;
  private final double middleOff;
  private final Sketch sketch = new Sketch();
  private final LabelRoom room = new LabelRoom(sketch);

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
    figure.lines();
    figure.words();
    return figure.sketch.drawing(MARGIN + blank.width() + EDGE, BELOW + blank.length() + ABOVE);
  }

  private double x(double girth) {
    return MARGIN + blank.width() / 2 + girth;
  }

  private double y(double station) {
    return BELOW + station + measurements.palmarCreaseToWeb();
  }

  private double crease() {
    return -measurements.palmarCreaseToWeb();
  }

  private double end() {
    return crease() + blank.length();
  }

  private void lines() {
    ring(Pen.CUT, blank.outline());
    ring(Pen.EDGE, blank.finished());
    sketch.line(Pen.AXIS, x(0), y(crease()), x(0), y(end()));
    for (int side = -1; side <= 1; side += 2) {
      List<PointMark> line = new ArrayList<>();
      for (double s = 3; s <= digit.tip(); s += 1) {
        line.add(new PointMark(x(side * half(s)), y(s)));
      }
      sketch.stroke(Pen.FOLD, line, false);
    }
    MarginLabels names = new MarginLabels(MARGIN - 0.5, false, TYPE);
    level("web", 0, Pen.AXIS, names);
    level("end of the pulp", digit.pulpEnd(), Pen.AXIS, names);
    for (LevelMark mark : marks) {
      Pen pen = mark.level() == Level.PIP ? Pen.AXIS : Pen.FINE;
      level(LevelNames.of(mark.level()), mark.station(), pen, names);
      ticks(mark);
    }
    String which = PalmarCrease.which(measurements.digit());
    names.add(x(-blank.tongueWidth() / 2 + 3), y(crease()), "palmar crease", which);
    names.draw(sketch);
    double half = blank.width() / 2;
    double low = 3.8;
    sketch.line(Pen.FINE, x(-half), low, x(half), low);
    for (double end : new double[] {-half, half}) {
      sketch.line(Pen.FINE, x(end), low - 1.2, x(end), low + 1.2);
    }
  }

  private void ring(Pen pen, Polygon polygon) {
    List<PointMark> ring = new ArrayList<>();
    for (Coordinate c : polygon.getExteriorRing().getCoordinates()) {
      ring.add(new PointMark(x(c.x), y(c.y)));
    }
    sketch.stroke(pen, ring.subList(0, ring.size() - 1), true);
  }

  /** Half of the way round, in the flat sheet: there its two edges meet (mm). */
  private double half(double station) {
    return SheetArc.round(digit.circumference(station), middleOff) / 2;
  }

  private void level(String name, double station, Pen pen, MarginLabels names) {
    double half = blank.halfWidth(station);
    sketch.line(pen, x(-half), y(station), x(half), y(station));
    names.add(x(-half), y(station), name);
  }

  private void ticks(LevelMark mark) {
    double y = y(mark.station());
    for (int side = -1; side <= 1; side += 2) {
      double trim = side * mark.trim().flat();
      sketch.line(Pen.MARK, x(trim), y - TICK, x(trim), y + TICK);
      double lateral = side * mark.midlateral().flat();
      if (Math.abs(lateral - trim) > 0.3) {
        sketch.line(Pen.FINE, x(lateral), y - TICK, x(lateral), y + TICK);
      }
    }
  }

  private void words() {
    double top = y(end()) + 2.2;
    sketch.bold("BLANK", MARGIN, top, 3.2);
    String cut = "cut along the heavy line, from a cold sheet of ";
    sketch.text(cut + lengths.thin(blank.thickness()), MARGIN + 15, top, TYPE);
    String size = lengths.with(blank.width()) + " wide, " + lengths.with(blank.length()) + " long";
    sketch.text(size, x(0), 3.8 - TYPE - 0.4, TYPE, Anchor.MIDDLE, 0);
    marks.forEach(this::figure);
    boolean right = measurements.hand() == Hand.RIGHT;
    side(right ? "radial" : "ulnar", 1);
    side(right ? "ulnar" : "radial", -1);
    for (int side = -1; side <= 1; side += 2) {
      pinch(side);
    }
    List<TextLabel> midline = new ArrayList<>();
    for (double s = crease() + 2; s < end() - 18; s += 1.5) {
      midline.add(label("volar midline", x(-1.2), y(s), Anchor.START, 90));
      midline.add(label("volar midline", x(2.8), y(s), Anchor.START, 90));
    }
    room.put(midline);
  }

  /** A mark's distance from the midline, beside its tick. */
  private void figure(LevelMark mark) {
    String distance = lengths.text(mark.trim().flat());
    List<TextLabel> places = new ArrayList<>();
    for (double beside = 1; beside < 8; beside += 1) {
      for (double above : new double[] {0.9, -TYPE}) {
        double y = y(mark.station()) + above;
        double at = mark.trim().flat();
        places.add(label(distance, x(at + beside), y, Anchor.START, 0));
        places.add(label(distance, x(at - beside), y, Anchor.END, 0));
        places.add(label(distance, x(-at - beside), y, Anchor.END, 0));
      }
    }
    room.put(places);
  }

  /** A side's name along the blank's edge. */
  private void side(String name, int side) {
    double middle = (measurements.stationOf(Level.MIDDLE_PHALANX) + measurements.dipAxis()) / 2;
    List<TextLabel> places = new ArrayList<>();
    for (double in = 4; in < 9; in += 1) {
      for (double off = 0; off < 25; off += 1) {
        double at = side * (blank.width() / 2 - in);
        places.add(label(name, x(at), y(middle + off), Anchor.MIDDLE, 90));
        places.add(label(name, x(at), y(middle - off), Anchor.MIDDLE, 90));
      }
    }
    room.put(places);
  }

  /** What the dashed line is, between it and the edge. */
  private void pinch(int side) {
    List<TextLabel> places = new ArrayList<>();
    for (double s = 5; s < digit.tip(); s += 1) {
      double middle = side * (half(s) + blank.width() / 2) / 2;
      places.add(label("pinch", x(middle), y(s), Anchor.MIDDLE, 0));
    }
    room.put(places);
  }

  private static TextLabel label(String text, double x, double y, Anchor anchor, double turn) {
    return new TextLabel(text, new PointMark(x, y), TYPE, false, anchor, turn);
  }
}
