package org.midlateral.document.drawing;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.Page.Role;

/** Sets text, tables and figures one below the other in a column of a page. */
public final class Column {
  /** Size of the type of running text (mm), about 8 points. */
  public static final double BODY = 2.9;

  private static final double LEADING = 1.28;
  private static final double HEADING = 3.7;
  private static final double INDENT = 5;

  private final double x;
  private final double width;
  private double top;
  private final List<Block> blocks = new ArrayList<>();

  /**
   * An empty column.
   *
   * @param x its left edge on the area used (mm)
   * @param top its upper edge (mm)
   * @param width (mm)
   */
  public Column(double x, double top, double width) {
    this.x = x;
    this.top = top;
    this.width = width;
  }

  /** A row of a table: a text for each column. */
  public record ColumnRow(List<String> cells) {
    public ColumnRow {
      cells = List.copyOf(cells);
    }

    public static ColumnRow of(String... cells) {
      return new ColumnRow(List.of(cells));
    }
  }

  /** What was set. */
  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** Where the next block's upper edge will be (mm). */
  public double top() {
    return top;
  }

  /** Leaves some room. */
  public Column gap(double height) {
    top -= height;
    return this;
  }

  /** A heading with a rule under it. */
  public Column heading(String text) {
    Sketch sketch = new Sketch();
    sketch.bold(text, 0, 1.6, HEADING).line(Pen.FINE, 0, 0, width, 0);
    put(Role.HEADING, sketch, HEADING * 1.1 + 1.6);
    top -= 1.4;
    return this;
  }

  /** A paragraph. */
  public Column paragraph(String text) {
    return lines(text, 0, "", Typeface.REGULAR);
  }

  /** A bold paragraph. */
  public Column strong(String text) {
    return lines(text, 0, "", Typeface.BOLD);
  }

  /** A paragraph that hangs from a sign or a number. */
  public Column item(String sign, String text) {
    return lines(text, INDENT, sign, Typeface.REGULAR);
  }

  /** A paragraph with a box to tick before it. */
  public Column tick(String text) {
    double before = top;
    lines(text, INDENT, "", Typeface.REGULAR);
    Sketch box = new Sketch().box(Pen.FINE, 0, 0, 2.5, 2.5);
    blocks.add(Block.text(Role.PARAGRAPH, box.drawing(2.5, 2.5), x, before - BODY * 1.03));
    return this;
  }

  /** A question with boxes to tick in one row. */
  public Column choices(String question, List<String> answers) {
    Sketch sketch = new Sketch().text(question, 0, 0.6, BODY);
    double at = Typeface.REGULAR.width(question, BODY) + 4;
    for (String answer : answers) {
      sketch.box(Pen.FINE, at, 0.2, 2.8, 2.8).text(answer, at + 4, 0.6, BODY);
      at += Typeface.REGULAR.width(answer, BODY) + 10;
    }
    put(Role.PARAGRAPH, sketch, BODY * LEADING);
    top -= 0.9;
    return this;
  }

  private Column lines(String text, double indent, String sign, Typeface face) {
    List<String> lines = face.wrapped(text, BODY, width - indent);
    double line = BODY * LEADING;
    double height = lines.size() * line;
    Sketch sketch = new Sketch().text(sign, 0, height - BODY, BODY);
    for (int i = 0; i < lines.size(); i++) {
      double y = height - BODY - i * line;
      if (face == Typeface.BOLD) {
        sketch.bold(lines.get(i), indent, y, BODY);
      } else {
        sketch.text(lines.get(i), indent, y, BODY);
      }
    }
    put(Role.PARAGRAPH, sketch, height);
    top -= 0.9;
    return this;
  }

  /**
   * A table: its first row is the head, its first column is set to the left, the others to the
   * right.
   *
   * @param shares widths of the columns as shares of the whole
   * @param rows head and rows; a cell that is too long for its column is a defect
   */
  public Column table(List<Double> shares, List<ColumnRow> rows) {
    return table(shares, rows, BODY * 1.5);
  }

  /** A table with room to write in its cells. */
  public Column form(List<Double> shares, List<ColumnRow> rows) {
    return table(shares, rows, 7.5);
  }

  private Column table(List<Double> shares, List<ColumnRow> rows, double line) {
    for (int r = 0; r < rows.size(); r++) {
      Sketch sketch = new Sketch();
      double right = 0;
      for (int c = 0; c < shares.size(); c++) {
        double left = right;
        right += shares.get(c) * width;
        String cell = rows.get(r).cells().get(c);
        double at = c == 0 ? left : right;
        sketch.label(
            new Mark.TextLabel(
                cell,
                new Mark.PointMark(at, 1.2),
                BODY,
                r == 0,
                c == 0 ? Anchor.START : Anchor.END,
                0));
      }
      sketch.line(r == 0 ? Pen.EDGE : Pen.FINE, 0, 0, width, 0);
      put(Role.PARAGRAPH, sketch, r == 0 ? BODY * 1.5 : line);
    }
    top -= 1.8;
    return this;
  }

  /** A figure at the left edge. */
  public Column figure(String description, Drawing drawing) {
    top -= drawing.height();
    blocks.add(Block.figure(description, drawing, x, top));
    top -= 1.5;
    return this;
  }

  private void put(Role role, Sketch sketch, double height) {
    top -= height;
    blocks.add(Block.text(role, sketch.drawing(width, height), x, top));
  }
}
