package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.bench.SheetFigures.ThreeForces;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.relief.Relief;
import org.midlateral.solid.Solid;

/**
 * Writes the bench sheet: page one what it is, page two what to do, page three what to do when it
 * does not fit, and next time.
 */
final class BenchSheet {
  private static final double GUTTER = 8;
  private static final double HALF = (PaperSize.USED_WIDTH - GUTTER) / 2;

  /** Room for the views from the side and from above (mm). */
  private static final double VIEWS = 102;

  private final Order order;
  private final DigitSurface digit;
  private final Relief relief;
  private final List<Solid> solids;
  private final FlatPattern pattern;
  private final Closure closure;
  private final Lengths lengths;

  BenchSheet(
      Order order,
      DigitSurface digit,
      Relief relief,
      List<Solid> solids,
      FlatPattern pattern,
      Closure closure) {
    this.order = order;
    this.digit = digit;
    this.relief = relief;
    this.solids = List.copyOf(solids);
    this.pattern = pattern;
    this.closure = closure;
    this.lengths = Lengths.ofARuler(order.measurements().unit());
  }

  /** The three pages. */
  List<Page> pages(SheetFigures figures, PageFrame frame) {
    List<Supplier<List<Block>>> sides =
        List.of(() -> first(figures, frame), () -> second(frame), () -> third(frame));
    return frame.around(sides.parallelStream().map(Supplier::get).toList());
  }

  private List<Block> first(SheetFigures figures, PageFrame frame) {
    Column wide = new Column(0, frame.top(), PaperSize.USED_WIDTH);
    wide.heading("Finger and marks, in " + lengths.plural());
    new MarkTable(order, pattern.marks(), lengths).set(wide);
    List<Block> blocks = new ArrayList<>(wide.blocks());

    ViewFigures views = new ViewFigures(order, digit, solids);
    double top = wide.top() - 1.5;
    ViewFigures.Scale scale = views.scaleFor(VIEWS);
    Column left = new Column(0, top, VIEWS);
    left.figure("The orthosis from the side, with its lengths.", views.side(scale));
    left.figure("The orthosis from above, with its lengths.", views.above(scale));
    double room = PaperSize.USED_WIDTH - VIEWS - GUTTER;
    Column right = new Column(VIEWS + GUTTER, top, room);
    right.figure("The section at the PIP axis, with its width and depth.", views.section(room));
    BenchWords words = new BenchWords(order, digit, relief, lengths);
    left.gap(1).heading("Trims");
    for (String trim : words.trims(solids.get(0))) {
      left.item("•", trim);
    }
    left.gap(1).heading("Relief");
    words.relief(left);
    right.gap(2).heading("Material");
    words.material(solids.get(0)).forEach(right::paragraph);
    right.gap(1).heading("Closure");
    ClosureWords.of(closure, lengths).forEach(right::paragraph);
    right.gap(1).heading("How the joint is held");
    held(right, figures, room, frame.bottom());
    blocks.addAll(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }

  /** The angle, the forces, and the place that is pressed most, drawn where there is room. */
  private void held(Column column, SheetFigures figures, double room, double foot) {
    if (figures.forces().isEmpty()) {
      column.paragraph("Not computed for this order.");
      return;
    }
    figures.angle().ifPresent(angle -> column.paragraph(angle + "."));
    ThreeForces forces = figures.forces().get();
    column.paragraph(
        String.format(
            Locale.ROOT,
            "Forces: %.1f N at the proximal end, %.1f N over the PIP joint, %.1f N at the distal end.",
            forces.proximal(),
            forces.pip(),
            forces.distal()));
    figures
        .worst()
        .ifPresent(
            worst -> {
              column.paragraph(
                  String.format(
                      Locale.ROOT,
                      "Highest pressure: %.0f kPa %s. Look at the skin there first.",
                      worst.kilopascal(),
                      worst.where()));
              double from = solids.get(0).piece().outline().proximal();
              Drawing place = PressureFigure.of(digit, from, worst, room);
              if (column.top() - place.height() > foot) {
                column.figure("The place on the finger with the highest pressure.", place);
              }
            });
  }

  private List<Block> second(PageFrame frame) {
    BenchSteps steps = new BenchSteps(order, lengths);
    Column left = new Column(0, frame.top(), HALF);
    boolean shell = solids.size() > 1;
    if (order.byHand()) {
      numbered(left, "Steps, to mould it by hand", steps.steps(relief, closure));
      if (shell) {
        left.gap(2);
        numbered(left, "Steps, for the dorsal piece by hand", steps.dorsal(closure));
      }
    } else {
      String closing = BenchSteps.kind(closure);
      numbered(
          left,
          "Steps, from the printer to the finger",
          new PrintSteps(order, shell, lengths).steps(closing));
    }
    Column right = new Column(HALF + GUTTER, frame.top(), HALF);
    right.heading("Checks on the patient");
    steps.checks().forEach(right::tick);
    right.gap(2).heading("Wear and cautions");
    right.paragraph("Worn at night: ______ hours. Day wear: ______. Review on: ____________");
    for (Caution caution : Caution.forMaterial(order.design().material().name())) {
      if (!(order.byHand() && caution.printed())) {
        right.item("•", caution.text());
      }
    }
    List<Block> blocks = new ArrayList<>(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }

  private static void numbered(Column column, String heading, List<String> steps) {
    column.heading(heading);
    int number = 1;
    for (String step : steps) {
      column.item(number++ + ".", step);
    }
  }

  private List<Block> third(PageFrame frame) {
    BenchRemedies words = new BenchRemedies(order, lengths);
    Column left = new Column(0, frame.top(), HALF);
    left.heading("When it is tight, loose or sore");
    for (BenchRemedies.FitRemedy remedy : words.remedies()) {
      left.strong(remedy.seen());
      left.item("", remedy.done());
    }
    Column right = new Column(HALF + GUTTER, frame.top(), HALF);
    if (order.byHand()) {
      right.heading("The sheet, as its maker says");
      BenchRemedies.SHEET.forEach(right::paragraph);
      right.gap(2);
    }
    right.heading("Swelling and neighbours");
    words.room(NeighbourRoom.of(order.measurements(), digit, solids)).forEach(right::paragraph);
    right.gap(2).heading("Measure next time");
    right.figure(
        "A grid for six visits: date, girth at each level, extension, flexion, hours, skin.",
        VisitGrid.of(order.measurements(), pattern.marks(), lengths, HALF));
    right.paragraph("The same levels, at the same time of day.");
    List<Block> blocks = new ArrayList<>(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }
}
