package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Page;
import org.midlateral.document.drawing.Page.Block;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.document.pattern.LevelMark;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.document.pattern.PalmarCrease;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.relief.Relief;
import org.midlateral.solid.Solid;

/** Writes the bench sheet: page one what it is, pages two and three what to do. */
final class BenchSheet {
  private static final double GUTTER = 8;
  private static final double HALF = (PaperSize.USED_WIDTH - GUTTER) / 2;

  /** Room for the views from the side and from above (mm). */
  private static final double VIEWS = 102;

  private final Order order;
  private final Measurements measured;
  private final Material material;
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
    this.measured = order.measurements();
    this.material = Material.of(order.design().material());
    this.digit = digit;
    this.relief = relief;
    this.solids = List.copyOf(solids);
    this.pattern = pattern;
    this.closure = closure;
    this.lengths = new Lengths(measured.unit());
  }

  /** The three pages. */
  List<Page> pages(SheetFigures figures, PageFrame frame) {
    return frame.around(List.of(first(figures, frame), second(frame), third(figures, frame)));
  }

  private List<Block> first(SheetFigures figures, PageFrame frame) {
    Column wide = new Column(0, frame.top(), PaperSize.USED_WIDTH);
    wide.heading("Measurements and marks, in " + lengths.plural());
    wide.table(List.of(0.19, 0.12, 0.12, 0.12, 0.15, 0.15, 0.15), levels());
    wide.paragraph(segments());
    List<Block> blocks = new ArrayList<>(wide.blocks());

    ViewFigures views = new ViewFigures(order, digit, solids);
    double top = wide.top() - 1.5;
    ViewFigures.Scale scale = views.scaleFor(VIEWS);
    Column left = new Column(0, top, VIEWS);
    left.figure("The orthosis from the side, with its lengths.", views.side(scale));
    left.figure("The orthosis from above, with its lengths.", views.above(scale));
    Column right = new Column(VIEWS + GUTTER, top, PaperSize.USED_WIDTH - VIEWS - GUTTER);
    right.figure(
        "The section at the PIP axis, with its width and depth.",
        views.section(PaperSize.USED_WIDTH - VIEWS - GUTTER));
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
    if (!figures.pressed().isEmpty()) {
      right.gap(1).heading("Pressed most");
      double room = PaperSize.USED_WIDTH - VIEWS - GUTTER;
      double from = solids.get(0).piece().outline().proximal();
      right.figure(
          "The places on the finger that are pressed most, with the pressure.",
          PressureFigure.of(digit, from, figures.pressed(), room));
    }
    blocks.addAll(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }

  private List<ColumnRow> levels() {
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(
        ColumnRow.of(
            "level", "from web", "round", "width", "mark on skin", "in the flat", "over sheet"));
    for (LevelMark mark : pattern.marks()) {
      Double width = measured.width().get(mark.level());
      rows.add(
          ColumnRow.of(
              LevelNames.of(mark.level()),
              lengths.text(mark.station()),
              lengths.text(mark.round().skin()),
              width == null ? "–" : lengths.text(width),
              lengths.text(mark.midlateral().skin()),
              lengths.text(mark.midlateral().flat()),
              lengths.text(mark.midlateral().over())));
    }
    return rows;
  }

  private String segments() {
    return "Marks: from the volar midline to the mid-lateral line, each side. Lengths: "
        + PalmarCrease.under(measured.digit())
        + " to web "
        + lengths.text(measured.palmarCreaseToWeb())
        + ", web to PIP crease "
        + lengths.text(measured.webToPip())
        + ", PIP to DIP crease "
        + lengths.text(measured.pipToDip())
        + ", DIP crease to tip "
        + lengths.text(measured.dipToTip())
        + ". PIP extension deficit "
        + degrees(measured.pipExtensionDeficit())
        + "; DIP rests at "
        + degrees(measured.dipFlexion())
        + "."
        + trimLine();
  }

  /** The trim line's own distances, where it is not the mid-lateral line. */
  private String trimLine() {
    double wrap = order.design().trough().wrap();
    if (Math.abs(wrap - 0.5) < 0.005) {
      return "";
    }
    return String.format(
            Locale.ROOT, " Trim line at %.0f %% of the girth, over the sheet: ", 100 * wrap)
        + pattern.marks().stream()
            .map(mark -> LevelNames.of(mark.level()) + " " + lengths.text(mark.trim().over()))
            .collect(Collectors.joining(", "))
        + ".";
  }

  private static String degrees(double radians) {
    return String.format(Locale.ROOT, "%.0f°", Math.toDegrees(radians));
  }

  private List<Block> second(PageFrame frame) {
    BenchSteps steps = new BenchSteps(order, lengths);
    Column left = new Column(0, frame.top(), HALF);
    left.heading("Steps, to mould it by hand");
    int number = 1;
    for (String step : steps.steps(relief, closure)) {
      left.item(number++ + ".", step);
    }
    Column right = new Column(HALF + GUTTER, frame.top(), HALF);
    right.heading("Checks on the patient");
    steps.checks().forEach(right::tick);
    right.gap(2).heading("Wear and cautions");
    right.paragraph("Worn at night: ______ hours. Day wear: ______. Review on: ____________");
    cautions(right);
    right.gap(2).heading("Measure next time");
    right.figure(
        "A grid for six visits: date, round each level, extension, flexion, hours, skin.",
        VisitGrid.of(measured, pattern.marks(), lengths, HALF));
    right.paragraph("The same levels, at the same time of day.");
    List<Block> blocks = new ArrayList<>(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }

  private List<Block> third(SheetFigures figures, PageFrame frame) {
    BenchRemedies words = new BenchRemedies(order, solids, lengths);
    Column left = new Column(0, frame.top(), HALF);
    if (solids.size() > 1) {
      left.heading("Steps, for the dorsal piece by hand");
      int number = 1;
      for (String step : words.dorsal()) {
        left.item(number++ + ".", step);
      }
      left.gap(2);
    }
    left.heading("How the joint is held");
    figures.answer().ifPresent(left::paragraph);
    forces(left, figures);
    Column right = new Column(HALF + GUTTER, frame.top(), HALF);
    right.heading("When it is tight, loose or sore");
    for (BenchRemedies.FitRemedy remedy : BenchRemedies.REMEDIES) {
      right.strong(remedy.seen());
      right.item("", remedy.done());
    }
    right.gap(2).heading("The sheet, as its maker says");
    BenchRemedies.SHEET.forEach(right::paragraph);
    right.gap(2).heading("Swelling and neighbours");
    words.room().forEach(right::paragraph);
    List<Block> blocks = new ArrayList<>(left.blocks());
    blocks.addAll(right.blocks());
    return blocks;
  }

  private void forces(Column column, SheetFigures figures) {
    if (figures.figures().isEmpty()) {
      column.paragraph("Not computed for this order.");
      return;
    }
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(ColumnRow.of("figure", "value", "band"));
    for (SheetFigure figure : figures.figures()) {
      rows.add(ColumnRow.of(figure.what(), figure.shown(), figure.band()));
    }
    column.table(List.of(0.52, 0.22, 0.26), rows);
    column.paragraph(ofWhat());
    figures.draws().ifPresent(draws -> column.paragraph(draws.said()));
  }

  /** Which material the figures are for. */
  private String ofWhat() {
    return String.format(
            Locale.ROOT, "Figures of %s (%.0f MPa)", material.title(), material.modulus())
        + (material.moulded()
            ? ". A sheet creeps and is softer when warm than they say."
            : ", not of a moulded sheet, which creeps and is softer when warm; for a sheet's set"
                + " material.name to "
                + sheet().name()
                + ".");
  }

  /** What the steps are for, where the order names another material. */
  private static Material sheet() {
    return Material.all().stream().filter(Material::moulded).findFirst().orElseThrow();
  }

  /** Those of the material ordered, and of a sheet, as the steps are for one. */
  private void cautions(Column column) {
    for (Caution caution : Caution.forMaterial(material.name())) {
      column.item("•", caution.text());
    }
    if (!material.moulded()) {
      String texts =
          Caution.limitedTo(sheet().name()).stream()
              .map(Caution::text)
              .collect(Collectors.joining(" "));
      column.item("•", "Where it is moulded from a sheet: " + texts);
    }
  }
}
