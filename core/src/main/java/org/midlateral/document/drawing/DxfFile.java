package org.midlateral.document.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;

/**
 * Writes a drawing as ASCII DXF, release 12, in mm: one layer a pen, and one for the texts. Grey
 * areas are left out.
 */
public final class DxfFile {
  private static final String TEXT_LAYER = "TEXT";

  /** Height of a capital letter over the size of the type, in the usual stroke fonts. */
  private static final double CAPITAL = 0.72;

  private final StringBuilder out = new StringBuilder();

  private DxfFile() {}

  /** The file, ASCII. */
  public static byte[] bytes(Drawing drawing) {
    DxfFile file = new DxfFile();
    file.header(drawing);
    file.tables();
    file.entities(drawing);
    file.group(0, "EOF");
    return file.out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private void header(Drawing drawing) {
    group(999, "millimetres");
    section("HEADER");
    group(9, "$ACADVER");
    group(1, "AC1009");
    group(9, "$INSUNITS");
    group(70, "4");
    group(9, "$EXTMIN");
    point(10, new PointMark(0, 0));
    group(9, "$EXTMAX");
    point(10, new PointMark(drawing.width(), drawing.height()));
    group(0, "ENDSEC");
  }

  private void tables() {
    section("TABLES");
    List<Pen> dashed = Stream.of(Pen.values()).filter(pen -> !pen.dashes().isEmpty()).toList();
    table("LTYPE", dashed.size() + 1);
    lineType("CONTINUOUS", List.of());
    dashed.forEach(pen -> lineType(lineTypeOf(pen), pen.dashes()));
    group(0, "ENDTAB");
    table("LAYER", Pen.values().length + 1);
    for (Pen pen : Pen.values()) {
      layer(pen.name(), lineTypeOf(pen));
    }
    layer(TEXT_LAYER, "CONTINUOUS");
    group(0, "ENDTAB");
    table("STYLE", 1);
    style();
    group(0, "ENDTAB");
    group(0, "ENDSEC");
  }

  private static String lineTypeOf(Pen pen) {
    return pen.dashes().isEmpty() ? "CONTINUOUS" : pen.name() + "_DASHES";
  }

  private void lineType(String name, List<Double> dashes) {
    group(0, "LTYPE");
    group(2, name);
    group(70, "0");
    group(3, "");
    group(72, "65");
    group(73, Integer.toString(dashes.size()));
    group(40, Numbers.text(dashes.stream().mapToDouble(d -> d).sum()));
    for (int i = 0; i < dashes.size(); i++) {
      group(49, Numbers.text(i % 2 == 0 ? dashes.get(i) : -dashes.get(i)));
    }
  }

  private void layer(String name, String lineType) {
    group(0, "LAYER");
    group(2, name);
    group(70, "0");
    group(62, "7");
    group(6, lineType);
  }

  private void style() {
    group(0, "STYLE");
    group(2, "STANDARD");
    group(70, "0");
    group(40, "0");
    group(41, "1");
    group(50, "0");
    group(71, "0");
    group(42, "2.5");
    group(3, "txt");
    group(4, "");
  }

  private void entities(Drawing drawing) {
    section("ENTITIES");
    for (Mark mark : drawing.marks()) {
      if (mark instanceof LineStroke stroke) {
        stroke(stroke);
      } else if (mark instanceof TextLabel label) {
        label(label);
      }
    }
    group(0, "ENDSEC");
  }

  private void stroke(LineStroke stroke) {
    String layer = stroke.pen().name();
    if (stroke.points().size() == 2) {
      group(0, "LINE");
      group(8, layer);
      point(10, stroke.points().get(0));
      point(11, stroke.points().get(1));
      return;
    }
    group(0, "POLYLINE");
    group(8, layer);
    group(66, "1");
    point(10, new PointMark(0, 0));
    group(70, stroke.closed() ? "1" : "0");
    for (PointMark vertex : stroke.points()) {
      group(0, "VERTEX");
      group(8, layer);
      point(10, vertex);
    }
    group(0, "SEQEND");
    group(8, layer);
  }

  private void label(TextLabel label) {
    group(0, "TEXT");
    group(8, TEXT_LAYER);
    point(10, label.at());
    group(40, Numbers.text(CAPITAL * label.size()));
    group(1, ascii(label.text()));
    group(50, Numbers.text(label.turn()));
    if (label.anchor() != Anchor.START) {
      group(72, label.anchor() == Anchor.MIDDLE ? "1" : "2");
      point(11, label.at());
    }
  }

  /** The format's own escapes for the signs it has, its code-point escape for the others. */
  private static String ascii(String text) {
    List<String> parts = new ArrayList<>();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '°' -> parts.add("%%d");
                case '±' -> parts.add("%%p");
                case '–' -> parts.add("-");
                case '×' -> parts.add("x");
                default ->
                    parts.add(
                        c < 127
                            ? Character.toString(c)
                            : String.format(Locale.ROOT, "\\U+%04X", c));
              }
            });
    return String.join("", parts);
  }

  private void section(String name) {
    group(0, "SECTION");
    group(2, name);
  }

  private void table(String name, int entries) {
    group(0, "TABLE");
    group(2, name);
    group(70, Integer.toString(entries));
  }

  private void point(int code, PointMark point) {
    group(code, Numbers.text(point.x()));
    group(code + 10, Numbers.text(point.y()));
    group(code + 20, "0");
  }

  private void group(int code, String value) {
    out.append(code).append('\n').append(value).append('\n');
  }
}
