package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.LabelRoom;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.MarginLabels;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/** Draws the unrolled trough at true size, with its levels in the right margin. */
final class TemplateFigure {
  /** Between the template and its margin (mm). */
  private static final double BESIDE = 1.5;

  private static final double ABOVE = 13.8;
  private static final double LINE = 3.3;
  private static final double TYPE = 2.5;
  private static final double TITLE = 3.2;

  private final TraceTemplate template;
  private final Measurements measurements;
  private final List<LevelMark> marks;
  private final Lengths lengths;
  private final Envelope box;
  private final Sketch sketch = new Sketch();
  private final MarginLabels names;

  private TemplateFigure(
      TraceTemplate template, Measurements measurements, List<LevelMark> marks, Lengths lengths) {
    this.template = template;
    this.measurements = measurements;
    this.marks = marks;
    this.lengths = lengths;
    this.box = template.outline().getEnvelopeInternal();
    this.names = new MarginLabels(box.getWidth() + BESIDE, true, TYPE);
  }

  static Drawing of(
      TraceTemplate template, Measurements measurements, List<LevelMark> marks, Lengths lengths) {
    TemplateFigure figure = new TemplateFigure(template, measurements, marks, lengths);
    String title = "TEMPLATE, " + measurements.digit().key() + " finger";
    figure.draw();
    double height = figure.box.getHeight();
    figure.sketch.bold(title, 0, height + 5.7 + LINE, TITLE);
    double width =
        Math.max(
            figure.box.getWidth() + BESIDE + figure.names.width(),
            Typeface.BOLD.width(title, TITLE));
    List<String> use = figure.use();
    for (int i = 0; i < use.size(); i++) {
      figure.sketch.text(use.get(i), 0, height + 2 + (use.size() - 1 - i) * LINE, TYPE);
      width = Math.max(width, Typeface.REGULAR.width(use.get(i), TYPE));
    }
    return figure.sketch.drawing(width, height + ABOVE);
  }

  /** Only a sheet that need not be stretched is cut to the line. */
  private List<String> use() {
    return template.unrolled().bends()
        ? List.of("Cut the sheet along this line,", "and mould it as it is.")
        : List.of("Do not cut the sheet to this line:", "lay the finished trough on it.");
  }

  private PointMark place(double x, double y) {
    return new PointMark(x - box.getMinX(), y - box.getMinY());
  }

  private void draw() {
    loop(template.outline().getExteriorRing());
    for (int i = 0; i < template.outline().getNumInteriorRing(); i++) {
      loop(template.outline().getInteriorRingN(i));
    }
    sketch.stroke(Pen.AXIS, moved(template.unrolled().along(0)), false);
    level("web", 0, Pen.AXIS);
    for (LevelMark mark : marks) {
      Pen pen = mark.level() == Level.PIP ? Pen.AXIS : Pen.FINE;
      level(LevelNames.of(mark.level()), mark.station(), pen);
    }
    spare();
    names.draw(sketch);
    sides();
  }

  private void loop(LineString ring) {
    List<PointMark> points = new ArrayList<>();
    for (var c : ring.getCoordinates()) {
      points.add(place(c.x, c.y));
    }
    Pen pen = template.unrolled().bends() ? Pen.CUT : Pen.EDGE;
    sketch.stroke(pen, points.subList(0, points.size() - 1), true);
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
    names.add(end.x() + 1.2, end.y(), name);
  }

  /** A circle where the sheet is drawn most, a cross where it gathers most, where it does. */
  private void spare() {
    if (template.unrolled().bends()) {
      return;
    }
    PointMark circle = moved(List.of(template.unrolled().mostStretched().flat())).get(0);
    List<PointMark> round = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double turn = 2 * Math.PI * i / 24;
      round.add(
          new PointMark(circle.x() + 1.5 * Math.cos(turn), circle.y() + 1.5 * Math.sin(turn)));
    }
    sketch.stroke(Pen.EDGE, round, true);
    PointMark cross = moved(List.of(template.unrolled().mostGathered().flat())).get(0);
    sketch.line(Pen.EDGE, cross.x() - 1.2, cross.y() - 1.2, cross.x() + 1.2, cross.y() + 1.2);
    sketch.line(Pen.EDGE, cross.x() - 1.2, cross.y() + 1.2, cross.x() + 1.2, cross.y() - 1.2);
    names.add(box.getWidth() + BESIDE, cross.y(), "leave " + lengths.span(2, 3), "here (cross)");
  }

  private void sides() {
    boolean right = measurements.hand() == Hand.RIGHT;
    LabelRoom room = new LabelRoom(sketch);
    List<List<PointMark>> lines = new ArrayList<>();
    for (double station = 4; station < measurements.dipAxis(); station += 1) {
      List<PointMark> line = moved(template.unrolled().level(station));
      if (line.size() >= 2) {
        lines.add(line);
      }
    }
    for (int side = -1; side <= 1; side += 2) {
      List<TextLabel> places = new ArrayList<>();
      String name = right == side > 0 ? "radial" : "ulnar";
      for (List<PointMark> line : lines) {
        PointMark end = line.get(side > 0 ? line.size() - 1 : 0);
        double x = side > 0 ? end.x() - 2 : end.x() + 4;
        PointMark at = new PointMark(x, end.y());
        places.add(new TextLabel(name, at, TYPE, false, Anchor.MIDDLE, 90));
      }
      room.put(places);
    }
  }
}
