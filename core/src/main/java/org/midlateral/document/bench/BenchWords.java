package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.pattern.PalmarCrease;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Order;
import org.midlateral.relief.Relief;
import org.midlateral.relief.ReliefBubble;
import org.midlateral.solid.Solid;

/** What the sheet says of trims, material and relief. */
final class BenchWords {
  /** More than these would leave the page. */
  private static final int MOST_BUBBLES = 6;

  private final Order order;
  private final DigitSurface digit;
  private final Relief relief;
  private final Lengths lengths;

  BenchWords(Order order, DigitSurface digit, Relief relief, Lengths lengths) {
    this.order = order;
    this.digit = digit;
    this.relief = relief;
    this.lengths = lengths;
  }

  List<String> trims(Solid trough) {
    TroughDesign design = order.design().trough();
    Outline outline = trough.piece().outline();
    List<String> trims = new ArrayList<>();
    trims.add(
        String.format(
            Locale.ROOT,
            "Sides: up to %s, from %s distal of the web.",
            Math.abs(design.wrap() - 0.5) < 0.005
                ? "the mid-lateral lines"
                : String.format(Locale.ROOT, "%.0f %% of the girth", 100 * design.wrap()),
            lengths.with(design.webClearance())));
    trims.add(
        "Tongue: ends "
            + lengths.with(design.proximalMargin())
            + " distal of the "
            + PalmarCrease.under(order.measurements().digit())
            + ", "
            + lengths.with(-outline.proximal())
            + " proximal of the web.");
    trims.add(
        design.distal() == DistalEnd.OPEN
            ? "Distal end: open, "
                + lengths.with(design.distalMargin())
                + " short of the pulp's end."
            : "Distal end: covers the end of the pulp.");
    trims.add(
        "Corners: cut at 45° over "
            + lengths.with(design.corner())
            + ", then rounded. Proximal edge flared by "
            + lengths.thin(design.flare())
            + " over "
            + lengths.with(design.flareWidth())
            + ".");
    return trims;
  }

  List<String> material(Solid trough) {
    Design design = order.design();
    String wall = lengths.thin(trough.piece().wall());
    String title = Material.of(design.material()).title();
    String lined =
        design.trough().liner() > 0
            ? ", on a liner of " + lengths.thin(design.trough().liner())
            : ", without a liner";
    if (!order.byHand()) {
      return List.of(title + ", wall of " + wall + lined + ".");
    }
    return List.of(
        title + ", " + wall + " thick" + lined + ".",
        "Thin, because a finger is small and its joint must not be forced apart by bulk; draping,"
            + " so that it follows the joint under its own weight and is not pressed; with"
            + " memory, so that it goes flat again when warmed and can be moulded again as"
            + " extension is gained.");
  }

  /** The bubbles in a table; and the pair, where it is not made and may be wanted. */
  void relief(Column column) {
    if (relief.bubbles().isEmpty()) {
      column.paragraph("None. Feel over both sides of the PIP joint for soreness first.");
    } else {
      bubbles(column);
    }
    if (Relief.suggested(order.measurements(), order.design().relief(), digit)) {
      column.paragraph(suggestion());
    }
  }

  private void bubbles(Column column) {
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(ColumnRow.of("from PIP axis", "from midline", "long", "wide", "high"));
    for (ReliefBubble bubble : relief.bubbles().stream().limit(MOST_BUBBLES).toList()) {
      double along = bubble.station() - digit.pipAxis();
      rows.add(
          ColumnRow.of(
              directed(along, " distal", " proximal"),
              directed(bubble.girth(), " radial", " ulnar"),
              lengths.text(2 * bubble.length()),
              lengths.text(2 * bubble.width()),
              lengths.thin(bubble.height())));
    }
    column.table(List.of(0.23, 0.23, 0.12, 0.12, 0.30), rows);
    int left = relief.bubbles().size() - MOST_BUBBLES;
    if (left > 0) {
      column.paragraph("And " + left + " more, as in the measurement file.");
    }
  }

  /** Of a joint that stands out, though not so far that the pair is made without asking. */
  private String suggestion() {
    return "The PIP joint is "
        + lengths.with(Relief.prominence(order.measurements(), digit))
        + " rounder than the finger on either side of it: where its sides are sore, have "
        + (order.byHand() ? "putty laid over both." : "it made with relief over both.");
  }

  private String directed(double length, String positive, String negative) {
    if (Math.abs(length) < 0.5) {
      return "on it";
    }
    return lengths.text(Math.abs(length)) + (length > 0 ? positive : negative);
  }
}
