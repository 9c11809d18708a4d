package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.LabelRoom;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;

/**
 * Draws a strip of paper for each level, at true size: on the skin, and over the moulded sheet.
 * Laid round with its middle on the volar midline, its ends meet dorsally and its marks are where
 * to cut.
 */
final class StripFigure {
  private static final double HEIGHT = 9;
  private static final double PITCH = 14.5;
  private static final double TYPE = 2.5;

  private StripFigure() {}

  static Drawing of(List<LevelMark> marks, Lengths lengths) {
    double widest = marks.stream().mapToDouble(m -> m.round().over()).max().orElseThrow();
    double height = 2 * marks.size() * PITCH;
    Sketch sketch = new Sketch();
    double y = height;
    for (LevelMark mark : marks) {
      String name = LevelNames.of(mark.level());
      y -= PITCH;
      strip(
          sketch,
          y,
          name + ", on the skin",
          lengths,
          new double[] {mark.round().skin(), mark.trim().skin(), mark.midlateral().skin()});
      y -= PITCH;
      strip(
          sketch,
          y,
          name + ", over the sheet",
          lengths,
          new double[] {mark.round().over(), mark.trim().over(), mark.midlateral().over()});
    }
    // A short strip's label goes on past its end.
    for (Mark drawn : sketch.drawing(0, 0).marks()) {
      if (drawn instanceof TextLabel label && label.anchor() == Anchor.START) {
        double end = label.at().x() + Typeface.REGULAR.width(label.text(), TYPE);
        widest = Math.max(widest, end);
      }
    }
    return sketch.drawing(widest, height);
  }

  /** One strip; arcs are once round, to the trim line, to the mid-lateral line. */
  private static void strip(Sketch sketch, double y, String name, Lengths lengths, double[] arcs) {
    double middle = arcs[0] / 2;
    sketch.box(Pen.CUT, 0, y, arcs[0], HEIGHT);
    sketch.line(Pen.AXIS, middle, y, middle, y + HEIGHT);
    for (int side = -1; side <= 1; side += 2) {
      double trim = middle + side * arcs[1];
      sketch.line(Pen.MARK, trim, y, trim, y + HEIGHT);
      if (Math.abs(arcs[2] - arcs[1]) > 0.3) {
        double lateral = middle + side * arcs[2];
        sketch.line(Pen.FOLD, lateral, y, lateral, y + HEIGHT);
      }
    }
    sketch.text(
        name + ": girth " + lengths.text(arcs[0]) + ", to the mark " + lengths.with(arcs[1]),
        0,
        y + HEIGHT + 1.6,
        TYPE);
    LabelRoom room = new LabelRoom(sketch);
    room.put(beside("volar", middle, y, 1));
    room.put(beside("trim", middle - arcs[1], y, -1));
    room.put(beside("trim", middle + arcs[1], y, 1));
  }

  /** Places for a word: on one side of its line, then on the other, then along it. */
  private static List<TextLabel> beside(String word, double line, double y, int side) {
    List<TextLabel> places = new ArrayList<>();
    for (int way : new int[] {side, -side}) {
      Anchor anchor = way < 0 ? Anchor.END : Anchor.START;
      PointMark at = new PointMark(line + way * 1.2, y + 3.4);
      places.add(new TextLabel(word, at, TYPE, false, anchor, 0));
    }
    for (int way : new int[] {side, -side}) {
      PointMark at = new PointMark(line + (way > 0 ? 0.9 + TYPE * 0.75 : -1.3), y + 0.9);
      places.add(new TextLabel(word, at, TYPE, false, Anchor.START, 90));
    }
    return places;
  }
}
