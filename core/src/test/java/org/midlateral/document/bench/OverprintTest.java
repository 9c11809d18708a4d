package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.midlateral.Drawn;
import org.midlateral.LongRun;
import org.midlateral.RandomFile;
import org.midlateral.Seeded;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Drawing.Sketch;
import org.midlateral.document.drawing.Mark;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Mark.TextLabel;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.Pen;
import org.midlateral.document.drawing.Typeface;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.document.pattern.PatternDrawing;
import org.midlateral.document.pattern.PatternPages;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.recipe.Orthosis;

/** No text of sheet or pattern lies on another or on a line, whatever the finger. */
class OverprintTest {
  private static final GeometryFactory PLANE = new GeometryFactory();

  /** Cap height, and what hangs below the line, of the typeface: 1456 and 434 of 2048 units. */
  private static final double CAPITAL = 0.711;

  private static final double BELOW = 0.212;

  /** What the eye does not see as touching (mm). */
  private static final double SLACK = 0.05;

  @Tag(LongRun.TAG)
  @Seeded(value = 4, full = 100)
  void textsAreApartFromTextsAndLines(long seed) {
    List<String> entries = finger(seed);
    Orders.Result read = Orders.parse("reference: random", "random", entries);
    assertThat(read.errors()).isEmpty();
    Orthosis made;
    try {
      made = Orthosis.make(read.order());
    } catch (DesignRefused refused) {
      return;
    }
    String making = seed % 2 == 0 ? "hand" : "print";
    for (String unit : List.of("mm", "in")) {
      for (String paper : List.of("a4", "letter")) {
        List<String> other = new ArrayList<>(entries);
        other.addAll(List.of("making=" + making, "unit=" + unit, "paper=" + paper));
        String what = making + ", " + unit + ", " + paper + ": ";
        check(what, made, Orders.parse("reference: random", "random", other).order());
      }
    }
  }

  /** A finger in mm whatever the file's unit, and now and then another choice. */
  private static List<String> finger(long seed) {
    Drawn drawn = new Drawn(seed);
    List<String> entries = new ArrayList<>();
    for (String entry : RandomFile.entries(drawn.even(RandomFile.DRAWS), 1.6)) {
      if (entry.matches("(circumference|length|width)\\b.*")) {
        entries.add(entry + " mm");
      } else if (entry.matches("(hand|digit|angle)\\b.*")) {
        entries.add(entry);
      }
    }
    entries.add("print.edge-length=2 mm");
    entries.add("closure.kind=" + drawn.pick(List.of("wrap", "sleeve", "tape", "strap")));
    entries.add("trough.wrap=" + drawn.pick(List.of("0.5", "0.5", "0.46", "0.54")));
    entries.add("trough.liner=" + drawn.pick(List.of("0 mm", "1 mm", "2 mm")));
    entries.add("trough.distal=" + drawn.pick(List.of("open", "open", "covered")));
    entries.add("room.swelling=" + drawn.pick(List.of("0 mm", "2.5 mm")));
    entries.add("room.radial=" + drawn.pick(List.of("1 mm", "9 mm")));
    entries.add("relief.sore=" + drawn.pick(List.of("yes", "no")));
    entries.add("dorsal-shell.make=" + drawn.pick(List.of("yes", "yes", "no")));
    return entries;
  }

  private static void check(String what, Orthosis made, Order order) {
    PaperSize paper = PaperSize.of(order);
    FlatPattern pattern = FlatPattern.of(order, made.solids());
    Closure closure = Closure.of(order, made.digit(), made.relief(), made.solids());
    PatternDrawing drawing = new PatternDrawing(pattern, order, made.digit(), closure.straps());
    SheetFigures figures =
        new SheetFigures(
            Optional.of(
                "Held at 43° of flexion (41 to 46°), 13° beyond the 30° that it lacks by hand"),
            Optional.of(new SheetFigures.PressedPlace(26, 1, 11.2, "under the dorsal shell")),
            Optional.of(new SheetFigures.ThreeForces(1.31, 2.55, 1.24)));
    BenchSheet sheet =
        new BenchSheet(order, made.digit(), made.relief(), made.solids(), pattern, closure);
    List<Page> pages =
        new ArrayList<>(
            PatternPages.of(drawing, BenchDocuments.frame(order, paper, "Flat pattern")));
    pages.addAll(sheet.pages(figures, BenchDocuments.frame(order, paper, "Bench sheet")));
    for (Page page : pages) {
      assertThat(overprinted(marks(page))).as(what + page.blocks().get(1).description()).isEmpty();
    }
    assertThat(overprinted(drawing.sheet().marks())).as(what + "one sheet").isEmpty();
  }

  private static List<Mark> marks(Page page) {
    List<Mark> marks = new ArrayList<>();
    for (Block block : page.blocks()) {
      Drawing placed = block.drawing().moved(block.x(), block.y());
      marks.addAll(placed.marks());
    }
    return marks;
  }

  /** Each text with what it lies on. */
  private static List<String> overprinted(List<Mark> marks) {
    List<TextLabel> texts = new ArrayList<>();
    List<LineStroke> lines = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof TextLabel text) {
        texts.add(text);
      } else if (mark instanceof LineStroke line) {
        lines.add(line);
      }
    }
    List<Envelope> boxes = texts.stream().map(OverprintTest::box).toList();
    List<LineString> paths = lines.stream().map(OverprintTest::path).toList();
    List<String> found = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Envelope box = boxes.get(i);
      for (int j = 0; j < i; j++) {
        if (box.intersects(boxes.get(j))) {
          found.add("'" + texts.get(i).text() + "' on '" + texts.get(j).text() + "'");
        }
      }
      for (int j = 0; j < lines.size(); j++) {
        Pen pen = lines.get(j).pen();
        double reach = pen.weight() / 2 - SLACK;
        // A line is no nearer than the box round it.
        if (box.distance(paths.get(j).getEnvelopeInternal()) < reach
            && PLANE.toGeometry(box).distance(paths.get(j)) < reach) {
          found.add("'" + texts.get(i).text() + "' on a line of " + pen);
        }
      }
    }
    return found;
  }

  private static Envelope box(TextLabel text) {
    Typeface face = text.bold() ? Typeface.BOLD : Typeface.REGULAR;
    double width = face.width(text.text(), text.size());
    double start =
        switch (text.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double x = text.at().x();
    double y = text.at().y();
    double up = CAPITAL * text.size();
    // Digits and capitals do not hang below the line.
    double down = text.text().matches("[0-9 /.A-Z°]*") ? 0 : BELOW * text.size();
    Envelope box =
        text.turn() == 0
            ? new Envelope(x + start, x + start + width, y - down, y + up)
            : new Envelope(x - up, x + down, y + start, y + start + width);
    box.expandBy(-SLACK);
    return box;
  }

  private static LineString path(LineStroke line) {
    List<PointMark> points = new ArrayList<>(line.points());
    if (line.closed()) {
      points.add(points.get(0));
    }
    return PLANE.createLineString(
        points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
  }

  /** The measure itself: what touches is told, what is just beside is not. */
  @Test
  void whatLiesOnAnotherIsTold() {
    Sketch sketch = new Sketch();
    sketch.text("first", 0, 0, 2.5).text("second", 3, 0.5, 2.5).text("third", 30, 0, 2.5);
    sketch.line(Pen.FINE, 31, -2, 31, 4).line(Pen.FINE, 30, -0.7, 50, -0.7);
    assertThat(overprinted(sketch.drawing(60, 10).marks()))
        .isEqualTo(Arrays.asList("'second' on 'first'", "'third' on a line of FINE"));
  }
}
