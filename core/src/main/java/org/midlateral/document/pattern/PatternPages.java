package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark.Anchor;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.Page.PageWindow;
import org.midlateral.document.drawing.Page.Role;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.ScaleBars;

/**
 * Lays the figures of a pattern on pages: side by side where there is room, and a figure that is
 * larger than a page on several, with marks where they join.
 */
public final class PatternPages {
  private static final double GAP = 6;

  /** Strip that is printed on both of two pages that join (mm). */
  private static final double OVERLAP = 10;

  private final PageFrame frame;
  private final Drawing key;
  private final String bars;
  private final double floor;
  private final double room;
  private final List<List<Block>> pages = new ArrayList<>();
  private List<Block> page = new ArrayList<>();
  private double x;
  private double shelf;
  private double used;

  private PatternPages(PatternDrawing drawing, PageFrame frame) {
    this.frame = frame;
    this.key = drawing.key();
    this.bars = "Bars of " + ScaleBars.name(drawing.unit()) + " to check the print.";
    this.floor = frame.bottom() + key.height() + GAP;
    this.room = frame.top() - floor;
    this.shelf = frame.top();
  }

  /** The pages. */
  public static List<Page> of(PatternDrawing drawing, PageFrame frame) {
    PatternPages pages = new PatternPages(drawing, frame);
    List<PatternDrawing.Figure> figures = drawing.figures();
    figures.forEach(pages::put);
    pages.turn();
    List<List<Block>> contents = new ArrayList<>();
    for (List<Block> page : pages.pages) {
      contents.add(pages.withKey(page, figures));
    }
    return frame.around(contents);
  }

  private void put(PatternDrawing.Figure figure) {
    Drawing drawing = figure.drawing();
    if (drawing.width() > PaperSize.USED_WIDTH || drawing.height() > room) {
      turn();
      tile(figure);
      return;
    }
    if (x + drawing.width() > PaperSize.USED_WIDTH) {
      shelf -= used + GAP;
      x = 0;
      used = 0;
    }
    if (shelf - drawing.height() < floor) {
      turn();
    }
    page.add(Block.figure(figure.description(), drawing, x, shelf - drawing.height()));
    x += drawing.width() + GAP;
    used = Math.max(used, drawing.height());
  }

  /** Goes on to the next page, unless this one is empty. */
  private void turn() {
    if (!page.isEmpty()) {
      pages.add(page);
      page = new ArrayList<>();
    }
    x = 0;
    shelf = frame.top();
    used = 0;
  }

  private void tile(PatternDrawing.Figure figure) {
    Drawing drawing = figure.drawing();
    int columns = parts(drawing.width(), PaperSize.USED_WIDTH);
    int rows = parts(drawing.height(), room);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double left = column * (PaperSize.USED_WIDTH - OVERLAP);
        double low = row * (room - OVERLAP);
        double width = Math.min(PaperSize.USED_WIDTH, drawing.width() - left);
        double height = Math.min(room, drawing.height() - low);
        String name = "part " + (row * columns + column + 1) + " of " + rows * columns + ": ";
        page.add(
            new Block(
                Role.FIGURE,
                name + figure.description(),
                drawing.withoutTextsOutside(left, low, width, height),
                -left,
                floor - low,
                Optional.of(new PageWindow(0, floor, width, height))));
        page.add(joins(column > 0, column < columns - 1, row > 0, row < rows - 1, name));
        turn();
      }
    }
  }

  private static int parts(double length, double room) {
    return (int) Math.max(1, Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9));
  }

  /** Lines and crosses that come to lie on one another where two parts join. */
  private Block joins(boolean left, boolean right, boolean below, boolean above, String name) {
    Sketch sketch = new Sketch();
    double half = OVERLAP / 2;
    double width = PaperSize.USED_WIDTH;
    if (left || right) {
      for (double at :
          left && right
              ? new double[] {half, width - half}
              : new double[] {left ? half : width - half}) {
        sketch.line(Pen.FOLD, at, 0, at, room);
        cross(sketch, at, room / 4);
        cross(sketch, at, 3 * room / 4);
      }
    }
    if (below || above) {
      for (double at :
          below && above
              ? new double[] {half, room - half}
              : new double[] {below ? half : room - half}) {
        sketch.line(Pen.FOLD, 0, at, width, at);
        cross(sketch, width / 4, at);
        cross(sketch, 3 * width / 4, at);
      }
    }
    sketch.text(name + "lay the crosses on one another", width - 1 - half, -4, 2.5, Anchor.END, 0);
    return Block.text(Role.PARAGRAPH, sketch.drawing(width, room), 0, floor);
  }

  private static void cross(Sketch sketch, double x, double y) {
    sketch.line(Pen.MARK, x - 4, y, x + 4, y).line(Pen.MARK, x, y - 4, x, y + 4);
  }

  private List<Block> withKey(List<Block> page, List<PatternDrawing.Figure> figures) {
    List<Block> blocks = new ArrayList<>(page);
    blocks.add(Block.figure(bars, key, 0, frame.bottom() + 1));
    double left = key.width() + GAP;
    Column column = new Column(left, frame.bottom() + key.height(), PaperSize.USED_WIDTH - left);
    column.strong("Print at 100 % (actual size) and measure both bars before you cut.");
    for (PatternDrawing.Figure figure : figures) {
      if (page.stream().anyMatch(block -> block.description().endsWith(figure.description()))) {
        figure.notes().forEach(column::paragraph);
      }
    }
    blocks.addAll(column.blocks());
    return blocks;
  }
}
