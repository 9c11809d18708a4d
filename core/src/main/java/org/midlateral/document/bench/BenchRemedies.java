package org.midlateral.document.bench;

import java.util.List;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Order;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;

/**
 * What the sheet says of the dorsal piece by hand, of a piece that does not fit, of the sheet and
 * of the room beside it. Common practice, no source, where no figure of the order stands in it.
 */
final class BenchRemedies {
  /** What is noted of a sheet before it is warmed. */
  static final List<String> SHEET =
      List.of(
          "Name, lot: ____________________   Thickness: __________",
          "Coated: yes / no. Uncoated, it bonds where it is pinched or laid on itself; coated, it"
              + " parts again, and the pinch must be pressed harder.",
          "Softens at: ______ °C   Can be worked for: ______   Cold after: ______");

  static final List<FitRemedy> REMEDIES =
      List.of(
          new FitRemedy(
              "A rim digs in, or leaves a line",
              "Warm the rim alone and flare it; where it stays, trim 1 mm and smooth it anew."),
          new FitRemedy(
              "Sore at a side of the PIP joint",
              "Warm that spot and push it out from within with a round end. Do not pad under it: a"
                  + " pad presses more."),
          new FitRemedy(
              "Tight all round, or the tip white or blue",
              "Off at once. Ease the flanks apart, warm; swollen or too small all over: measure and"
                  + " mould anew."),
          new FitRemedy(
              "Loose, or it turns on the finger",
              "Less swollen than it was: mould anew. A thin liner takes up 1 mm at most."),
          new FitRemedy(
              "It slides toward the tip",
              "Look at the web and the tongue first: an edge that touches pushes it off. Then closure"
                  + " or liner."),
          new FitRemedy(
              "The web space or the palm is sore",
              "Trim and flare there, 1 mm at a time, until the fist and the neighbours are free."),
          new FitRemedy(
              "The joint lies bent, off the floor",
              "Never push it down with the closure: mould anew at the angle that it has without"
                  + " force."),
          new FitRemedy(
              "Damp, white or itching skin",
              "Dry skin and piece, change the liner, fewer hours; where it stays, stop and ask."));

  private final Order order;
  private final List<Solid> solids;
  private final Lengths lengths;

  BenchRemedies(Order order, List<Solid> solids, Lengths lengths) {
    this.order = order;
    this.solids = List.copyOf(solids);
    this.lengths = lengths;
  }

  /**
   * What is done about a fault of the fit.
   *
   * @param seen on the finger
   * @param done at the bench
   */
  record FitRemedy(String seen, String done) {}

  /** The steps for a second sheet over the trough. */
  List<String> dorsal() {
    double overlap = order.design().dorsalShell().overlap();
    return List.of(
        "Cut the dorsal blank of the pattern from a cold sheet; carry its midline, its PIP axis and"
            + " the word PROXIMAL over.",
        "Seat the finished trough on the finger. Where the sheet bonds to itself, lay a separating"
            + " layer over the trough's rims: thin film, damp paper or a little hand cream.",
        "Warm the sheet, dab it dry, and lay it over the dorsum, centred on the PIP joint. Lead it down"
            + " over both rims by "
            + lengths.with(overlap)
            + " and a little more; stroke, do not press on the joint.",
        "Let it cool in place, finger and trough held steady.",
        "Pen its edges: both rims' overlap, its proximal and its distal end. Then take it off.",
        "Trim it to an overlap of "
            + lengths.with(overlap)
            + " on each side; round the corners, smooth the edges.",
        "Mark its proximal end so that it can be seen and felt. A printed shell has a raised hook"
            + " there: its bar lies proximal, its leg points distally from the radial end.",
        "Close both with tape round the shell, at each end where it has room, over the plastic, not on the skin; any other"
            + " closure of the sheet serves too.");
  }

  /** What swelling and neighbouring fingers ask for. */
  List<String> room() {
    Piece trough = solids.get(0).piece();
    double side =
        order.design().trough().clearance() + order.design().trough().liner() + trough.wall();
    double shell =
        solids.size() > 1
            ? order.design().dorsalShell().fitGap() + solids.get(1).piece().wall()
            : 0;
    return List.of(
        "Swelling: a finger is thickest in the evening. Measure then, or let it be tried on in the"
            + " evening before it is worn a whole night.",
        "Neighbours: on each side the walls add "
            + lengths.thin(side + shell)
            + (shell > 0 ? " where the shell overlaps, " + lengths.thin(side) + " beyond it" : "")
            + ". Room measured between the fingers, lightly closed: ______ and ______.");
  }
}
