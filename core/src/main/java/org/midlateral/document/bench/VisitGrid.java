package org.midlateral.document.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.pattern.LevelMark;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.measurement.Measurements;

/**
 * A grid to write six visits into by hand, each under its date, beside what the piece was made by.
 */
final class VisitGrid {
  private static final int VISITS = 6;

  /** Widths of the names and of what the piece was made by (mm). */
  private static final double NAMES = 26;

  private static final double MADE = 12;
  private static final double ROW = 4.7;

  private VisitGrid() {}

  /** The grid, as wide as asked for (mm). */
  static Drawing of(Measurements measured, List<LevelMark> marks, Lengths lengths, double width) {
    Map<String, String> rows = new LinkedHashMap<>();
    rows.put("day, month", "made by");
    for (LevelMark mark : marks) {
      double read = measured.circumference().getOrDefault(mark.level(), mark.round().skin());
      rows.put(LevelNames.of(mark.level()), lengths.text(read));
    }
    double deficit = Math.toDegrees(measured.pipExtensionDeficit());
    rows.put("short of extension", String.format(Locale.ROOT, "%.0f°", deficit));
    rows.put("PIP flexion", "");
    rows.put("hours a night", "");
    rows.put("skin, soreness", "");
    double height = ROW * rows.size();
    Sketch sketch = new Sketch();
    double top = height;
    for (Map.Entry<String, String> row : rows.entrySet()) {
      top -= ROW;
      sketch.text(row.getKey(), 0, top + 1.2, Column.BODY);
      sketch.text(row.getValue(), NAMES + MADE - 1, top + 1.2, Column.BODY, Anchor.END, 0);
      sketch.line(Pen.FINE, 0, top, width, top);
    }
    sketch.line(Pen.FINE, 0, height, width, height);
    double each = (width - NAMES - MADE) / VISITS;
    for (int visit = 0; visit <= VISITS; visit++) {
      double x = NAMES + MADE + visit * each;
      sketch.line(Pen.FINE, x, 0, x, height);
    }
    return sketch.drawing(width, height);
  }
}
