package org.midlateral.document.drawing;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.FilledArea;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;

/** Draws marks on one page of a PDF. */
final class PdfPen {
  /** Points of 1/72 inch in a millimetre. */
  private static final double POINTS = 72 / 25.4;

  private final PDPageContentStream content;
  private final Map<Typeface, PDFont> fonts;

  PdfPen(PDPageContentStream content, Map<Typeface, PDFont> fonts) {
    this.content = content;
    this.fonts = fonts;
  }

  void draw(Drawing drawing) throws IOException {
    for (Mark mark : drawing.marks()) {
      if (mark instanceof LineStroke stroke) {
        stroke(stroke);
      } else if (mark instanceof FilledArea area) {
        content.setNonStrokingColor((float) area.grey());
        path(area.points());
        content.fill();
        content.setNonStrokingColor(0f);
      } else if (mark instanceof TextLabel label) {
        label(label);
      }
    }
  }

  private void stroke(LineStroke stroke) throws IOException {
    content.setLineWidth(points(stroke.pen().weight()));
    content.setLineJoinStyle(1);
    List<Double> dashes = stroke.pen().dashes();
    float[] pattern = new float[dashes.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = points(dashes.get(i));
    }
    content.setLineDashPattern(pattern, 0);
    path(stroke.points());
    if (stroke.closed()) {
      content.closePath();
    }
    content.stroke();
  }

  private void path(List<PointMark> points) throws IOException {
    content.moveTo(points(points.get(0).x()), points(points.get(0).y()));
    for (PointMark point : points.subList(1, points.size())) {
      content.lineTo(points(point.x()), points(point.y()));
    }
  }

  private void label(TextLabel label) throws IOException {
    Typeface face = Typeface.of(label.bold());
    double width = face.width(label.text(), label.size());
    double back =
        label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.END ? width : width / 2;
    double turn = Math.toRadians(label.turn());
    content.beginText();
    content.setFont(fonts.get(face), points(label.size()));
    content.setTextMatrix(
        Matrix.getRotateInstance(
            turn,
            points(label.at().x() - back * Math.cos(turn)),
            points(label.at().y() - back * Math.sin(turn))));
    content.showText(label.text());
    content.endText();
  }

  /** A length in points of 1/72 inch. */
  static float points(double millimetres) {
    return (float) (millimetres * POINTS);
  }
}
