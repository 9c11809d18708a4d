package org.midlateral.recipe.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Machine;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.record.MakingRecord;

/** The orders of each plate with a picture of where their parts lie. */
final class PlateSheet {
  /** Room for the picture (mm). */
  private static final double PICTURE = 120;

  /** Rows of the list on one page: fewer beside the picture. */
  private static final int FIRST_ROWS = 22;

  private static final int MORE_ROWS = 46;

  private final List<Plate> plates;
  private final Machine machine;
  private final PageFrame frame;

  private PlateSheet(List<Plate> plates, Machine machine) {
    this.plates = plates;
    this.machine = machine;
    this.frame =
        new PageFrame(
            PaperSize.A4,
            "Plates",
            machine.name() + ", " + plates.size() + (plates.size() == 1 ? " plate" : " plates"),
            "Outlines are drawn as if stretched over each part; parts may lie within one"
                + " another's.");
  }

  static byte[] pdf(List<Plate> plates, Machine machine) {
    PlateSheet sheet = new PlateSheet(plates, machine);
    List<List<Block>> pages = new ArrayList<>();
    for (int i = 0; i < plates.size(); i++) {
      sheet.add(i, pages);
    }
    return PdfFile.bytes(sheet.frame.around(pages), "Plates, " + machine.name());
  }

  private void add(int number, List<List<Block>> pages) {
    Plate plate = plates.get(number);
    List<LaidPart> parts = plate.parts();
    String layers = plate.layerCount() == 1 ? "" : ", layers " + plate.layerCount();
    Column column = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    column.heading(
        String.format(
            Locale.ROOT,
            "plate-%d.3mf: parts %d%s, %.0f %% of the bed covered",
            number + 1,
            parts.size(),
            layers,
            100 * plate.fill()));
    column.figure("The bed from above, front below; numbers as in the list.", picture(parts));
    int at = 0;
    int most = FIRST_ROWS;
    while (at < parts.size()) {
      column.table(List.of(0.08, 0.42, 0.2, 0.15, 0.15), rows(parts, at, at + most));
      pages.add(column.blocks());
      at += most;
      most = MORE_ROWS;
      column = new Column(0, frame.top() - 1, PaperSize.USED_WIDTH);
    }
  }

  private static List<ColumnRow> rows(List<LaidPart> parts, int from, int to) {
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(ColumnRow.of("", "reference", "hand, digit", "part", "revision, base mm"));
    for (int i = from; i < Math.min(to, parts.size()); i++) {
      LaidPart part = parts.get(i);
      MakingRecord record = part.turned().part().record();
      rows.add(
          ColumnRow.of(
              "" + (i + 1),
              record.reference(),
              record.settings().get("hand") + ", " + record.settings().get("digit"),
              part.turned().part().solid().name(),
              String.format(Locale.ROOT, "%d, %.0f", record.revision(), part.base())));
    }
    return rows;
  }

  private Drawing picture(List<LaidPart> parts) {
    double width = machine.bed().width();
    double depth = machine.bed().depth();
    double scale = Math.min(PaperSize.USED_WIDTH / width, PICTURE / depth);
    Sketch sketch = new Sketch();
    sketch.box(Pen.EDGE, 0, 0, scale * width, scale * depth);
    for (int i = 0; i < parts.size(); i++) {
      Coordinate[] hull = hull(parts.get(i));
      List<PointMark> outline = new ArrayList<>();
      double x = 0;
      double y = 0;
      for (Coordinate c : hull) {
        outline.add(new PointMark(scale * c.x, scale * c.y));
        x += scale * c.x / hull.length;
        y += scale * c.y / hull.length;
      }
      sketch.stroke(Pen.FINE, outline, true);
      sketch.text("" + (i + 1), x, y, 2.6, Anchor.MIDDLE, 0);
    }
    return sketch.drawing(scale * width, scale * depth);
  }

  private Coordinate[] hull(LaidPart part) {
    TriangleMesh mesh = part.turned().part().solid().mesh();
    AffineTransformMatrix3D place = part.place(machine.margin());
    Coordinate[] all = new Coordinate[mesh.vertexCount()];
    for (int v = 0; v < all.length; v++) {
      Vector3D p = place.apply(mesh.vertex(v));
      all[v] = new Coordinate(p.getX(), p.getY());
    }
    return new ConvexHull(all, new GeometryFactory()).getConvexHull().getCoordinates();
  }
}
