package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.relief.Relief;
import org.midlateral.relief.ReliefBubble;

/** The steps to mould it, the checks on the patient, and what is measured next time. */
final class BenchSteps {
  private static final String WARM = "65 to 71 °C, 150 to 160 °F";

  private final Order order;
  private final Measurements measured;
  private final Lengths lengths;

  BenchSteps(Order order, Lengths lengths) {
    this.order = order;
    this.measured = order.measurements();
    this.lengths = lengths;
  }

  /** Common practice, no source, where no figure of the order stands in them. */
  List<String> steps(Relief relief, Closure closure) {
    TroughDesign design = order.design().trough();
    List<String> steps = new ArrayList<>();
    steps.add(
        "Measure the finger again at the levels overleaf. More than "
            + lengths.with(2)
            + " off at any level: have a new sheet made.");
    steps.add("Print the pattern at 100 %, measure both bars, cut the blank from the cold sheet.");
    steps.add("Transfer the midline, the web level, the PIP axis and the marks to the sheet.");
    steps.add(putty(relief));
    double swelling = measured.room().swelling();
    if (swelling > 0) {
      steps.add(
          "To leave room for swelling, wind the finger evenly, "
              + lengths.thin(swelling / (2 * Math.PI))
              + " thick, with tubular gauze or the like, and mould over it.");
    }
    steps.add(liner(design.liner()));
    steps.add(
        "Warm the sheet as its maker says (usually "
            + WARM
            + "), dab it dry, and try it on your own skin before it touches the patient's.");
    steps.add(
        "Hold the finger "
            + held()
            + ". Lay the sheet with its midline on the volar midline and its web level at the"
            + " web; lay it round the finger, pinch the edges together along the dashed"
            + " lines, dorsally. Stroke, do not press.");
    steps.add(
        "While it is still warm, cut the pinched seam close, "
            + lengths.span(2, 3)
            + " from the finger, the scissors' points away from the skin.");
    steps.add("Hold until it is cold and stiff, the joint steady throughout.");
    steps.add(
        "Still on the finger: lay the paper strips round, over the sheet; copy the marks with a"
            + " pen, join them to a line on each side, and check that it runs along the middle"
            + " of the finger's side.");
    steps.add("Split the seam dorsally, ease it apart, and take the piece off over the tip.");
    steps.add(
        "Only now cut along the lines. Trim the sides to start "
            + lengths.with(design.webClearance())
            + " distal of the web, the tongue to end "
            + lengths.with(design.proximalMargin())
            + " distal of the crease. Last cut the corners at 45° over "
            + lengths.with(design.corner())
            + ", then round them.");
    steps.add("Flare the proximal edge, smooth every edge, feel it with your own fingertip.");
    steps.add(
        "Compare with the template and the views; then fit the closure: " + kind(closure) + ".");
    return steps;
  }

  /** Putty keeps the sheet off what is sore, as the bubbles of a printed piece do. */
  private String putty(Relief relief) {
    ReliefDesign usual = order.design().relief();
    Optional<ReliefBubble> largest =
        relief.bubbles().stream().max(Comparator.comparingDouble(ReliefBubble::height));
    String size =
        size(
            largest.map(ReliefBubble::length).orElse(usual.length()),
            largest.map(ReliefBubble::width).orElse(usual.width()),
            largest.map(ReliefBubble::height).orElse(usual.height()));
    return largest.isEmpty()
        ? "Feel both sides of the PIP joint. Over a sore collateral ligament lay a dot of putty, or"
            + " tape in layers, before you mould: "
            + size
            + "."
        : "Lay a dot of putty, or tape in layers, over each sore collateral ligament before you mould,"
            + " where and as large as the table \"Relief\" says: the highest is "
            + size
            + ".";
  }

  private String size(double halfLength, double halfWidth, double height) {
    return lengths.with(2 * halfLength)
        + " long, "
        + lengths.with(2 * halfWidth)
        + " wide, "
        + lengths.thin(height)
        + " high";
  }

  private String liner(double liner) {
    return liner > 0
        ? "The pattern allows for a liner of "
            + lengths.thin(liner)
            + ": lay it on the skin now and mould over it. One that is stuck in afterwards needs a"
            + " spacer as thick now."
        : "The pattern allows for no liner. One stuck in afterwards makes it tight all round by its"
            + " thickness: where it is wanted, make a new sheet that allows for it.";
  }

  private String held() {
    double deficit = Math.toDegrees(measured.pipExtensionDeficit());
    return deficit < 0.5
        ? "in full extension at the PIP joint"
        : String.format(
            Locale.ROOT, "as straight as it goes without force, %.0f° short of extension", deficit);
  }

  /** What closes it, in a word or two. */
  static String kind(Closure closure) {
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

  /** The steps for a second sheet over the trough. */
  List<String> dorsal(Closure closure) {
    double overlap = order.design().dorsalShell().overlap();
    return List.of(
        "Cut the dorsal blank of the pattern from a cold sheet; transfer its midline, its PIP"
            + " axis and the word PROXIMAL.",
        "Put the finished trough on the finger. Where the sheet bonds to itself, lay a separating"
            + " layer over the trough's rims: thin film, damp paper or a little hand cream.",
        "Warm the sheet, dab it dry, and lay it over the dorsum, centred on the PIP joint. Bring"
            + " it down over both rims by "
            + lengths.with(overlap)
            + " and a little more; stroke, do not press on the joint.",
        "Let it cool in place, finger and trough held steady.",
        "Mark its edges with a pen: both rims' overlap, its proximal and its distal end. Then"
            + " take it off.",
        "Trim it to an overlap of "
            + lengths.with(overlap)
            + " on each side; round the corners, smooth the edges.",
        "Scrape any coating off and stick a warm crumb of the sheet on outside, at the proximal"
            + " end: the bump of the patient's page.",
        "Fit the closure over both, as page 1 says: "
            + kind(closure)
            + ". Never tight: the tip must stay pink.");
  }

  List<String> checks() {
    double deficit = Math.toDegrees(measured.pipExtensionDeficit());
    return List.of(
        "Web spaces: neighbouring fingers close without touching an edge.",
        "Palm: the MCP joint bends fully; the tongue stays clear of the crease.",
        deficit < 0.5
            ? "PIP joint lies in full extension, its palmar side on the bottom of the trough."
            : String.format(
                Locale.ROOT,
                "PIP joint lies within %.0f° of extension, its palmar side on the trough's bottom.",
                deficit),
        "Rims: at the marks on both sides; none digs in when the finger bends against it.",
        "Joint sides: a strip of paper slides between rim and collateral ligament.",
        "Tip: pressed white, it turns pink again within 2 seconds, closure on.",
        "Skin after 30 minutes: no red mark that stays, no numbness, no swelling.",
        "On and off with the other hand, twice, without help, the closure as light as you showed it.");
  }
}
