package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.document.drawing.Column.ColumnRow;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.pattern.FlatPattern;
import org.midlateral.document.pattern.LevelMark;
import org.midlateral.document.pattern.LevelNames;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;

/** The steps at the bench, the checks on the patient, and what is measured next time. */
final class BenchSteps {
  private final Order order;
  private final Measurements measured;
  private final Lengths lengths;

  BenchSteps(Order order, Lengths lengths) {
    this.order = order;
    this.measured = order.measurements();
    this.lengths = lengths;
  }

  /** Common practice, no source, where no figure of the order stands in them. */
  List<String> steps(FlatPattern pattern, Closure closure) {
    TroughDesign design = order.design().trough();
    List<String> steps = new ArrayList<>();
    steps.add(
        "Measure the finger again at the levels overleaf. More than "
            + lengths.with(2)
            + " off at any level: make a new sheet.");
    steps.add("Print the pattern at 100 %, measure both bars, cut the blank from the cold sheet.");
    steps.add("Carry the midline, the web level, the PIP axis and the marks over to the sheet.");
    steps.add(
        "Warm the sheet as its maker says (usually 65 to 71 °C), dab it dry, and try it on your own"
            + " skin before it touches the patient's.");
    steps.add(
        (design.liner() > 0 ? "Lay the liner on first. " : "")
            + "Hold the finger "
            + held()
            + ". Lay the sheet with its midline on the volar midline and its web level at the web;"
            + " wrap it round, pinch the edges together along the dashed lines, dorsally. Stroke,"
            + " do not press.");
    steps.add("Hold until it is cold and stiff, the joint steady throughout.");
    steps.add(
        "Lay the paper strips round, over the sheet; pen the marks, join them to a line on each"
            + " side, and check that it runs along the middle of the finger's side.");
    steps.add(
        "Cut along the line. Trim the flanks to start "
            + lengths.with(design.webClearance())
            + " distal of the web, the tongue to end "
            + lengths.with(design.proximalMargin())
            + " distal of the crease; round every corner.");
    steps.add("Flare the proximal edge, smooth every edge, feel it with your own fingertip.");
    steps.add(
        "Compare with the template and the views; then fit the closure: " + kind(closure) + ".");
    return steps;
  }

  private String held() {
    double deficit = Math.toDegrees(measured.pipExtensionDeficit());
    return deficit < 0.5
        ? "in full extension at the PIP joint"
        : String.format(
            Locale.ROOT, "as straight as it goes without force, %.0f° short of extension", deficit);
  }

  private static String kind(Closure closure) {
    String instead =
        closure.served() == closure.kind()
            ? ""
            : ", no " + closure.kind().name().toLowerCase(Locale.ROOT);
    return switch (closure.served()) {
      case WRAP -> "elastic wrap" + instead;
      case SLEEVE -> "sleeve";
      case TAPE -> "tape";
      case STRAP -> "two straps";
    };
  }

  List<String> checks() {
    double deficit = Math.toDegrees(measured.pipExtensionDeficit());
    return List.of(
        "Web spaces: neighbouring fingers close without touching an edge.",
        "Palm: the MCP joint bends fully; the tongue stays clear of the crease.",
        deficit < 0.5
            ? "PIP joint lies in full extension, its palmar side on the floor of the trough."
            : String.format(
                Locale.ROOT,
                "PIP joint lies within %.0f° of extension, its palmar side on the floor.",
                deficit),
        "Rims: at the marks on both sides; none digs in when the finger bends against it.",
        "Joint sides: a strip of paper slides between rim and collateral ligament.",
        "Tip: pressed white, it turns pink again within 2 seconds, closure on.",
        "Skin after 30 minutes: no red mark that stays, no numbness, no swelling.",
        "On and off with the other hand, twice, without help.");
  }

  List<ColumnRow> nextTime(List<LevelMark> marks) {
    List<ColumnRow> rows = new ArrayList<>();
    rows.add(ColumnRow.of("", "today", "next", "then"));
    for (LevelMark mark : marks) {
      rows.add(
          ColumnRow.of(
              "round " + LevelNames.of(mark.level()), lengths.text(mark.round().skin()), "", ""));
    }
    rows.add(
        ColumnRow.of(
            "PIP extension deficit",
            String.format(Locale.ROOT, "%.0f°", Math.toDegrees(measured.pipExtensionDeficit())),
            "",
            ""));
    rows.add(ColumnRow.of("hours worn a night", "", "", ""));
    rows.add(ColumnRow.of("skin, soreness", "", "", ""));
    return rows;
  }
}
