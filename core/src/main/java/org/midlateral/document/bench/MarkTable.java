package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.document.drawing.Column;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.pattern.LevelMark;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.document.pattern.PalmarCrease;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;

/** The finger as it was measured, and the marks of every level. */
final class MarkTable {
  /** Share of the width that the levels' names take. */
  private static final double NAMES = 0.19;

  private final Order order;
  private final Measurements measured;
  private final List<LevelMark> marks;
  private final Lengths lengths;

  MarkTable(Order order, List<LevelMark> marks, Lengths lengths) {
    this.order = order;
    this.measured = order.measurements();
    this.marks = List.copyOf(marks);
    this.lengths = lengths;
  }

  /** Sets it in a column. */
  void set(Column column) {
    List<ColumnRow> rows = new ArrayList<>(List.of(head()));
    marks.forEach(mark -> rows.add(row(mark)));
    int columns = rows.get(0).cells().size();
    List<Double> shares = new ArrayList<>(List.of(NAMES));
    for (int c = 1; c < columns; c++) {
      shares.add((1 - NAMES) / (columns - 1));
    }
    column.table(shares, rows);
    column.paragraph(words());
  }

  private ColumnRow head() {
    List<String> head = new ArrayList<>(List.of("level", "from web", "girth", "width"));
    if (allowance() > 0) {
      head.add("made for");
    }
    head.add("mark on skin");
    if (order.byHand()) {
      head.addAll(List.of("in the flat", "over sheet"));
    }
    return new ColumnRow(head);
  }

  private ColumnRow row(LevelMark mark) {
    Double width = measured.width().get(mark.level());
    List<String> row = new ArrayList<>();
    row.add(LevelNames.of(mark.level()));
    row.add(lengths.text(mark.station()));
    row.add(lengths.text(measured.circumference().get(mark.level())));
    row.add(width == null ? "–" : lengths.text(width));
    if (allowance() > 0) {
      row.add(lengths.text(mark.round().skin()));
    }
    row.add(lengths.text(mark.midlateral().skin()));
    if (order.byHand()) {
      row.add(lengths.text(mark.midlateral().flat()));
      row.add(lengths.text(mark.midlateral().over()));
    }
    return new ColumnRow(row);
  }

  private double allowance() {
    return measured.room().swelling();
  }

  private String words() {
    String swelling =
        allowance() > 0
            ? " They allow for swelling, "
                + lengths.with(allowance())
                + " of every girth: on the finger as it was measured they lie a quarter of that nearer"
                + " the dorsum."
            : "";
    return "Marks: from the volar midline to the mid-lateral line, each side."
        + swelling
        + " Lengths: "
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
            Locale.ROOT,
            " Trim line at %.0f %% of the girth, %s: ",
            100 * wrap,
            order.byHand() ? "over the sheet" : "on the skin")
        + marks.stream().map(this::trim).collect(Collectors.joining(", "))
        + ".";
  }

  private String trim(LevelMark mark) {
    double at = order.byHand() ? mark.trim().over() : mark.trim().skin();
    return LevelNames.of(mark.level()) + " " + lengths.text(at);
  }

  private static String degrees(double radians) {
    return String.format(Locale.ROOT, "%.0f°", Math.toDegrees(radians));
  }
}
