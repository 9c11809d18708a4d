package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/** Draws the unrolled trough at true size, with its levels in the right margin. */
final class TemplateFigure {
  /** Room for the names of the levels, right of the template (mm). */
  static final double MARGIN = 25;

  private static final double ABOVE = 7;
  private static final double TYPE = 2.5;

  private final TraceTemplate template;
  private final DigitSurface digit;
  private final Measurements measurements;
  private final List<LevelMark> marks;
  private final Envelope box;
  private final Sketch sketch = new Sketch();

  private TemplateFigure(
      TraceTemplate template,
      DigitSurface digit,
      Measurements measurements,
      List<LevelMark> marks) {
    this.template = template;
    this.digit = digit;
    this.measurements = measurements;
    this.marks = marks;
    this.box = template.outline().getEnvelopeInternal();
  }

  static Drawing of(
      TraceTemplate template,
      DigitSurface digit,
      Measurements measurements,
      List<LevelMark> marks) {
    TemplateFigure figure = new TemplateFigure(template, digit, measurements, marks);
    figure.draw();
    return figure.sketch.drawing(figure.box.getWidth() + MARGIN, figure.box.getHeight() + ABOVE);
  }

  private PointMark place(double x, double y) {
    return new PointMark(x - box.getMinX(), y - box.getMinY());
  }

  private void draw() {
    loop(template.outline().getExteriorRing());
    for (int i = 0; i < template.outline().getNumInteriorRing(); i++) {
      loop(template.outline().getInteriorRingN(i));
    }
    sketch.bold("TEMPLATE", 0, box.getHeight() + 2.2, 3.2);
    sketch.text("trimmed trough, to trace", 21, box.getHeight() + 2.2, TYPE);
    sketch.stroke(Pen.AXIS, moved(template.unrolled().along(0)), false);
    level("web", 0, Pen.AXIS);
    for (LevelMark mark : marks) {
      level(
          LevelNames.of(mark.level()),
          mark.station(),
          mark.level() == Level.PIP ? Pen.AXIS : Pen.FINE);
    }
    most();
    sides();
  }

  private void loop(LineString ring) {
    List<PointMark> points = new ArrayList<>();
    for (var c : ring.getCoordinates()) {
      points.add(place(c.x, c.y));
    }
    sketch.stroke(Pen.CUT, points.subList(0, points.size() - 1), true);
  }

  private List<PointMark> moved(List<PointMark> line) {
    return line.stream().map(p -> place(p.x(), p.y())).toList();
  }

  private void level(String name, double station, Pen pen) {
    List<PointMark> line = moved(template.unrolled().level(station));
    if (line.size() < 2) {
      return;
    }
    sketch.stroke(pen, line, false);
    PointMark end = line.get(line.size() - 1);
    double x = box.getWidth() + 1.5;
    sketch.line(Pen.FINE, end.x() + 1.2, end.y(), x + 2, end.y());
    sketch.text(name, x + 3, end.y() - TYPE * 0.35, TYPE);
  }

  /** A ring where the sheet stretches most, a cross where it gathers most. */
  private void most() {
    PointMark stretched = template.unrolled().mostStretched().flat();
    PointMark gathered = template.unrolled().mostGathered().flat();
    PointMark ring = place(stretched.x(), stretched.y());
    List<PointMark> circle = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double turn = 2 * Math.PI * i / 24;
      circle.add(new PointMark(ring.x() + 1.5 * Math.cos(turn), ring.y() + 1.5 * Math.sin(turn)));
    }
    sketch.stroke(Pen.EDGE, circle, true);
    PointMark cross = place(gathered.x(), gathered.y());
    sketch.line(Pen.EDGE, cross.x() - 1.2, cross.y() - 1.2, cross.x() + 1.2, cross.y() + 1.2);
    sketch.line(Pen.EDGE, cross.x() - 1.2, cross.y() + 1.2, cross.x() + 1.2, cross.y() - 1.2);
  }

  private void sides() {
    boolean right = measurements.hand() == Hand.RIGHT;
    List<PointMark> line = moved(template.unrolled().level(sidesAt()));
    double y = line.get(0).y();
    double end = line.get(line.size() - 1).x();
    double start = line.get(0).x();
    sketch.text(right ? "radial" : "ulnar", end - 2, y, TYPE, Anchor.MIDDLE, 90);
    sketch.text(right ? "ulnar" : "radial", start + 4, y, TYPE, Anchor.MIDDLE, 90);
  }

  /** Between two levels, clear of their lines (mm). */
  private double sidesAt() {
    return (measurements.stationOf(Level.PROXIMAL_PHALANX) + digit.pipAxis()) / 2;
  }
}
