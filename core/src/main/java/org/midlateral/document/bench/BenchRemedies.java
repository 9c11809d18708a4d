package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.Order;

/**
 * What the sheet says of a piece that does not fit, of the sheet it is moulded from and of the room
 * beside it. Common practice, no source, where no figure of the order stands in it.
 */
final class BenchRemedies {
  /** What is noted of a sheet before it is warmed. */
  static final List<String> SHEET =
      List.of(
          "Name, lot: ____________________   Thickness: __________",
          "Coated: yes / no. Uncoated, it bonds where it is pinched or touches itself; coated, it"
              + " opens again, and the pinch must be pressed harder.",
          "Softens at: ______ °C   Can be worked for: ______   Cold after: ______");

  private final Order order;
  private final Lengths lengths;

  BenchRemedies(Order order, Lengths lengths) {
    this.order = order;
    this.lengths = lengths;
  }

  /**
   * What is done about a fault of the fit.
   *
   * @param seen on the finger
   * @param done at the bench
   */
  record FitRemedy(String seen, String done) {}

  /** What to warm, flare, pad, trim or make anew. */
  List<FitRemedy> remedies() {
    boolean hand = order.byHand();
    String little = lengths.with(1);
    String anew = hand ? "mould it again" : "have it made again";
    return List.of(
        new FitRemedy(
            "A rim digs in, or leaves a line",
            hand
                ? "Warm the rim alone and flare it; if it stays, trim "
                    + little
                    + " and smooth it again."
                : "Round and smooth the rim there, by "
                    + little
                    + " at most; if it stays, "
                    + anew
                    + "."),
        new FitRemedy(
            "Sore at a side of the PIP joint",
            (hand
                    ? "Warm that spot and push it out from within with a round end."
                    : "Have it made again with more relief there.")
                + " Do not pad under it: a pad presses more."),
        new FitRemedy(
            "Tight all round, or the tip white or blue",
            "Take it off at once. "
                + (hand ? "Warm it and ease the sides apart; swollen" : "Swollen")
                + " or too small all over: measure and "
                + anew
                + "."),
        new FitRemedy(
            "Loose, or it turns on the finger",
            "Less swollen than it was: measure and "
                + anew
                + ". A thin liner fills "
                + little
                + " at most."),
        new FitRemedy(
            "It slides toward the tip",
            "Look at the web and the tongue first: an edge that touches pushes it off. Then closure or"
                + " liner."),
        new FitRemedy(
            "The web space or the palm is sore",
            (hand ? "Trim and flare" : "Trim and smooth")
                + " there, "
                + little
                + " at a time, until the fist and the neighbours are free."),
        new FitRemedy(
            "The joint bends, and lifts off the trough's bottom",
            "Never push it down with the closure: "
                + anew
                + " at the angle that it has without force."),
        new FitRemedy(
            "Damp, white or itching skin",
            "Dry skin and piece, change the liner, fewer hours; if it stays, stop and ask."));
  }

  /** What swelling and neighbouring fingers ask for. */
  List<String> room(NeighbourRoom room) {
    List<String> texts = new ArrayList<>();
    double swelling = room.measured().swelling();
    texts.add(
        swelling > 0
            ? "Swelling: every girth is made "
                + lengths.with(swelling)
                + " larger than it was measured. Where the finger does not swell so far, the piece is"
                + " loose by as much."
            : "Swelling: a finger is thickest in the evening. Measure then, or let it be tried on in the"
                + " evening before it is worn a whole night.");
    texts.add(
        "Neighbours: beside the PIP joint the walls add "
            + lengths.with(room.radial())
            + " on the radial side, "
            + lengths.with(room.ulnar())
            + " on the ulnar side. Room measured there, fingers lightly closed: radial "
            + measured(room.measured().radial())
            + ", ulnar "
            + measured(room.measured().ulnar())
            + ".");
    room.findings().forEach(finding -> texts.add(finding.text()));
    return texts;
  }

  private String measured(OptionalDouble room) {
    return room.isPresent() ? lengths.with(room.getAsDouble()) : "______";
  }
}
