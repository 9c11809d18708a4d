package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Room;

/** Shows where on a finger each level is measured; the finger is invented. */
final class LevelDrawing {
  private static final double TYPE = 2.8;
  private static final double CREASE = -22;
  private static final double PIP_CREASE = 26;
  private static final double DIP_CREASE = 50;
  private static final double END = 75;

  private LevelDrawing() {}

  private static Measurements finger(double deficit) {
    return new Measurements(
        "form",
        Hand.RIGHT,
        Digit.MIDDLE,
        LengthUnit.MM,
        Map.of(
            Level.PROXIMAL_PHALANX, 63.0,
            Level.PIP, 64.0,
            Level.MIDDLE_PHALANX, 57.0,
            Level.DIP, 54.0,
            Level.TIP, 49.0),
        Map.of(),
        -CREASE,
        PIP_CREASE,
        DIP_CREASE - PIP_CREASE,
        END - DIP_CREASE,
        Math.toRadians(deficit),
        0,
        2.5,
        7.5,
        Map.of(),
        Room.NONE);
  }

  /** The palmar side, tip upward: levels on the left, lengths on the right. */
  static Drawing palmar(double width) {
    Measurements finger = finger(0);
    DigitSurface digit = TapedDigit.of(finger);
    double middle = width / 2;
    double foot = 8 - CREASE;
    Sketch sketch = new Sketch();
    outline(sketch, digit, middle, foot);
    for (double crease : new double[] {PIP_CREASE, DIP_CREASE}) {
      double half = digit.slice(crease).halfWidth();
      sketch.line(Pen.MARK, middle - half + 1.5, foot + crease, middle + half - 1.5, foot + crease);
    }
    List<PointMark> palm = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double u = i / 10.0 - 1;
      palm.add(new PointMark(middle + 24 * u, foot + CREASE + 1.5 * (1 - u * u)));
    }
    sketch.stroke(Pen.MARK, palm, false);
    sketch.text("palmar crease", middle - 24, foot + CREASE - 4, TYPE);
    levels(sketch, finger, digit, middle, foot);
    lengths(sketch, digit, middle, foot);
    return sketch.drawing(width, foot + END + 4);
  }

  private static void outline(Sketch sketch, DigitSurface digit, double middle, double foot) {
    List<PointMark> right = new ArrayList<>();
    for (double s = 0; s < END; s += 0.5) {
      right.add(new PointMark(digit.slice(s).halfWidth(), s));
    }
    List<PointMark> ring = new ArrayList<>();
    right.forEach(p -> ring.add(new PointMark(middle + p.x(), foot + p.y())));
    ring.add(new PointMark(middle, foot + END));
    List<PointMark> left = new ArrayList<>(right);
    Collections.reverse(left);
    left.forEach(p -> ring.add(new PointMark(middle - p.x(), foot + p.y())));
    sketch.stroke(Pen.EDGE, ring, false);
    double half = digit.slice(0).halfWidth();
    for (int side = -1; side <= 1; side += 2) {
      List<PointMark> web = new ArrayList<>();
      for (int i = 0; i <= 16; i++) {
        double turn = Math.PI * i / 16;
        double x = half + 2 - 2 * Math.cos(turn);
        web.add(new PointMark(middle + side * x, foot - 2 * Math.sin(turn)));
      }
      web.add(new PointMark(middle + side * (half + 4.4), foot + 14));
      sketch.stroke(Pen.EDGE, web, false);
    }
  }

  private static void levels(
      Sketch sketch, Measurements finger, DigitSurface digit, double middle, double foot) {
    double far = middle - 32;
    sketch.line(Pen.AXIS, far, foot - 2, middle + 32, foot - 2);
    sketch.text("0  web", far - 1, foot - 3, TYPE, Anchor.END, 0);
    int number = 1;
    for (Level level : finger.circumference().keySet()) {
      double station = finger.stationOf(level);
      double half = digit.slice(station).halfWidth();
      List<PointMark> band = new ArrayList<>();
      for (int i = 0; i <= 20; i++) {
        double turn = Math.PI * i / 20;
        band.add(
            new PointMark(
                middle - (half + 0.6) * Math.cos(turn), foot + station - 1.8 * Math.sin(turn)));
      }
      sketch.stroke(Pen.CUT, band, false);
      sketch.line(Pen.FINE, far, foot + station, middle - half - 0.6, foot + station);
      sketch.text(number++ + "", far - 1.5, foot + station - 1, TYPE + 0.6, Anchor.END, 0);
    }
  }

  private static void lengths(Sketch sketch, DigitSurface digit, double middle, double foot) {
    double x = middle + 30;
    double[] ends = {CREASE, -2, PIP_CREASE, DIP_CREASE, END};
    String[] names = {"A", "B", "C", "D"};
    for (int i = 0; i < ends.length; i++) {
      double from = ends[i] == END || ends[i] == CREASE ? 1 : digit.slice(ends[i]).halfWidth();
      double start = ends[i] == CREASE ? middle + 24 : middle + from + 1;
      sketch.line(Pen.FINE, start, foot + ends[i], x + 2, foot + ends[i]);
      if (i > 0) {
        sketch.line(Pen.FINE, x, foot + ends[i - 1], x, foot + ends[i]);
        sketch.text(names[i - 1], x + 2.5, foot + (ends[i - 1] + ends[i]) / 2 - 1.2, TYPE + 0.6);
      }
    }
  }

  /** From the side, bent at the PIP joint, with the angle that is read. */
  static Drawing side(double width) {
    double deficit = 25;
    DigitSurface digit = TapedDigit.of(finger(deficit));
    Views views = Views.fromTheSide(digit);
    List<PointMark> skin = views.skin(-6);
    double low = skin.stream().mapToDouble(PointMark::y).min().orElseThrow();
    double factor = 0.85;
    Sketch sketch = new Sketch();
    double left = (width - factor * END) / 2 + factor * 6;
    double foot = 2 - factor * low;
    List<PointMark> scaled =
        skin.stream()
            .map(p -> new PointMark(left + factor * p.x(), foot + factor * p.y()))
            .toList();
    sketch.stroke(Pen.EDGE, scaled, false);
    var pip = digit.centre(digit.pipAxis());
    double px = left + factor * pip.getX();
    double py = foot + factor * pip.getZ();
    sketch.line(Pen.AXIS, left - 4, py, px + 40, py);
    double turn = Math.toRadians(deficit);
    sketch.line(Pen.AXIS, px, py, px + 40 * Math.cos(turn), py - 40 * Math.sin(turn));
    List<PointMark> arc = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      double at = -turn * i / 12;
      arc.add(new PointMark(px + 32 * Math.cos(at), py + 32 * Math.sin(at)));
    }
    sketch.stroke(Pen.FINE, arc, false);
    sketch.text("E", px + 33.5, py - 8, TYPE + 0.6);
    double top = -scaled.stream().mapToDouble(p -> -p.y()).min().orElseThrow();
    sketch.text("dorsal", left, top + 1.5, TYPE);
    return sketch.drawing(width, top + 5);
  }
}
