package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.LabelRoom;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.measurement.Hand;

/** Draws the dorsal blank at true size, with the trough's rims beneath and its proximal end. */
final class DorsalBlankFigure {
  /** Room for the axis' name, right of the blank (mm). */
  private static final double MARGIN = 18;

  private static final double ABOVE = 7;
  private static final double AFTER_TITLE = 30;
  private static final double TYPE = 2.5;
  private static final double WORD = 3.2;

  /** The sides' names stand so far from the midline (mm). */
  private static final double BESIDE = 2;

  private DorsalBlankFigure() {}

  static Drawing of(DorsalBlank blank, Hand hand, Lengths lengths) {
    Envelope box = blank.outline().getEnvelopeInternal();
    double middle = -box.getMinX();
    double low = blank.finished().getEnvelopeInternal().getMinY() - box.getMinY();
    double axis = blank.axis() - box.getMinY();
    Sketch sketch = new Sketch();
    loop(sketch, Pen.CUT, blank.outline().getExteriorRing().getCoordinates(), box);
    loop(sketch, Pen.EDGE, blank.finished().getExteriorRing().getCoordinates(), box);
    for (List<Coordinate> rim : blank.rims()) {
      sketch.stroke(Pen.FOLD, moved(rim.stream(), box), false);
    }
    sketch.bold("DORSAL BLANK", 0, box.getHeight() + 2.2, WORD);
    String of = "sheet of " + lengths.thin(blank.thickness());
    sketch.text(of, AFTER_TITLE, box.getHeight() + 2.2, TYPE);
    sketch.line(Pen.AXIS, middle, low + 3 * WORD, middle, box.getHeight());
    sketch.line(Pen.AXIS, 0, axis, box.getWidth(), axis);
    sketch.text("PIP axis", box.getWidth() + 1.5, axis - TYPE * 0.35, TYPE);
    sketch.label(
        new TextLabel("PROXIMAL", new PointMark(middle, low + WORD), WORD, true, Anchor.MIDDLE, 0));
    String left = hand == Hand.RIGHT ? "radial" : "ulnar";
    String right = hand == Hand.RIGHT ? "ulnar" : "radial";
    double above = axis + 1.4;
    LabelRoom room = new LabelRoom(sketch);
    room.put(beside(left, middle, above, -1));
    room.put(beside(right, middle, above, 1));
    double title = AFTER_TITLE + Typeface.REGULAR.width(of, TYPE);
    double width = Math.max(box.getWidth() + MARGIN, title);
    return sketch.drawing(width, box.getHeight() + ABOVE);
  }

  /** Places for a side's name, between the midline and the rim beneath, or past the rim. */
  private static List<TextLabel> beside(String name, double middle, double above, int side) {
    List<TextLabel> places = new ArrayList<>();
    for (double off = BESIDE; off < 20; off += 1) {
      for (double up = 0; up < 6; up += 1) {
        PointMark at = new PointMark(middle + side * off, above + up);
        places.add(new TextLabel(name, at, TYPE, false, side < 0 ? Anchor.END : Anchor.START, 0));
      }
    }
    return places;
  }

  private static void loop(Sketch sketch, Pen pen, Coordinate[] ring, Envelope box) {
    sketch.stroke(pen, moved(Stream.of(ring).skip(1), box), true);
  }

  private static List<PointMark> moved(Stream<Coordinate> points, Envelope box) {
    return points.map(c -> new PointMark(c.x - box.getMinX(), c.y - box.getMinY())).toList();
  }
}
