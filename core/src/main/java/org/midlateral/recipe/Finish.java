package org.midlateral.recipe;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.midlateral.cut.Outline;
import org.midlateral.cut.Vents;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.Design.ProximalSign;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Order;
import org.midlateral.piece.Piece;
import org.midlateral.piece.Raised;
import org.midlateral.relief.Relief;
import org.midlateral.relief.ReliefBubble;
import org.midlateral.shell.DorsalShell;
import org.midlateral.shell.ProximalWord;
import org.midlateral.trough.ReferenceLabel;

/**
 * What is added to a piece once its shape stands: the reference raised on its outside, and vents
 * where nothing speaks against them.
 *
 * @param order what was asked for
 * @param relief its bubbles
 */
record Finish(Order order, Relief relief) {
  /** Half-length of the zone round the PIP axis that the closure presses on (mm). */
  private static final double PRESSED = 6;

  /** Solid material left between a vent and a relief, a label or the pressed zone (mm). */
  private static final double BRIDGE = 1;

  /** Vents keep this far from where a shell begins to rise over the trough's edge (mm). */
  private static final double OFF_STEP = 6;

  /** The gap rises by no more than this from one side of a vent to the other (mm). */
  private static final double LEVEL = 0.02;

  private static final double LABEL_MARGIN = 3;

  /** Share of the width between the flanks that a label may take. */
  private static final double LABEL_WIDTH = 0.6;

  /** The trough with its label and vents. */
  Piece trough(Piece bare) {
    return vented(labelled(bare), order.design().trough().vents(), 0);
  }

  /** The dorsal shell with its label and vents. */
  Piece dorsalShell(Piece bare) {
    Piece worded = word(bare).map(word -> labelled(bare, word)).orElseGet(() -> labelled(bare));
    return vented(worded, order.design().dorsalShell().vents(), OFF_STEP);
  }

  /**
   * Where letters have room on a piece.
   *
   * @param from proximal end (mm)
   * @param to distal end (mm)
   * @param width along the girth, about the piece's midline (mm)
   */
  private record LetterField(double from, double to, double width) {
    static LetterField of(Piece piece) {
      Outline outline = piece.outline();
      double from = piece.dorsal() ? DorsalShell.free(piece) : outline.flankStart() + LABEL_MARGIN;
      double to = (piece.dorsal() ? outline.distal() : outline.flankEnd()) - LABEL_MARGIN;
      double width =
          LABEL_WIDTH
              * outline.wrap()
              * Math.min(piece.digit().circumference(from), piece.digit().circumference(to));
      return new LetterField(from, to, width);
    }
  }

  /** The label that a piece bears, before its turn for a left hand; empty where it has no room. */
  private Optional<ReferenceLabel> label(Piece piece) {
    return fields(piece)
        .flatMap(
            field ->
                ReferenceLabel.on(
                    piece, order.measurements().reference(), field.from, field.to, field.width)
                    .stream())
        .filter(label -> isClear(piece, label.raised()))
        .findFirst();
  }

  /** All the room that letters have on a piece, and what of it lies on this side of its reliefs. */
  private Stream<LetterField> fields(Piece piece) {
    LetterField whole = LetterField.of(piece);
    double first = whole.to;
    double last = whole.from;
    for (ReliefBubble bubble : relief.bubbles()) {
      first = Math.min(first, bubble.station() - bubble.length());
      last = Math.max(last, bubble.station() + bubble.length());
    }
    return Stream.of(
        whole,
        new LetterField(whole.from, first, whole.width),
        new LetterField(last, whole.to, whole.width));
  }

  /** Letters on the slope of a relief would stand askew, and crowd where it is hollow. */
  private boolean isClear(Piece piece, Raised letters) {
    return relief.bubbles().isEmpty()
        || Arrays.stream(letters.shape().getCoordinates())
            .noneMatch(
                at ->
                    relief.bubbles().stream()
                        .anyMatch(b -> b.isNear(piece.skinGirth(at.x, at.y), at.y, 0)));
  }

  /** The word on the dorsal shell where it is asked for; a reference goes before it. */
  private Optional<Raised> word(Piece shell) {
    if (!isWordAsked()) {
      return Optional.empty();
    }
    return fields(shell)
        .flatMap(field -> ProximalWord.on(shell, field.from, field.to, field.width).stream())
        .filter(word -> isClear(shell, word))
        .findFirst();
  }

  /** The reference, where it is asked for, takes the word's place. */
  private boolean isWordAsked() {
    return order.design().print().proximal() == ProximalSign.WORD
        && !order.design().print().label()
        && order.design().making().way() != Making.HAND;
  }

  /** A note where the word was asked for and the dorsal shell has no room for it. */
  Optional<Finding> wordless(Piece bareShell) {
    if (!isWordAsked() || word(bareShell).isPresent()) {
      return Optional.empty();
    }
    String text =
        "There is no room for the word PROXIMAL on the "
            + bareShell.name().replace('-', ' ')
            + "; the raised hook alone marks its proximal end.";
    return Optional.of(
        Finding.note("proximal-word", "print.proximal", text, Double.NaN, Double.NaN));
  }

  /** What is raised on a piece where the order asks for a label; empty where nothing is. */
  Optional<String> labelText(Piece bare) {
    return order.design().print().label()
        ? label(bare).map(ReferenceLabel::text)
        : Optional.empty();
  }

  /** A caution where a piece bears less than the whole reference. */
  Optional<Finding> shortened(Piece bare) {
    String reference = order.measurements().reference();
    if (!order.design().print().label()) {
      return Optional.empty();
    }
    String borne = label(bare).map(ReferenceLabel::text).orElse("");
    if (borne.equals(reference)) {
      return Optional.empty();
    }
    String text =
        String.format(
            Locale.ROOT,
            "The reference, %d letters long, does not fit on the %s, which has room for %s; a"
                + " shorter reference is raised whole.",
            reference.length(),
            bare.name().replace('-', ' '),
            borne.isEmpty()
                ? "fewer than " + ReferenceLabel.FEWEST + ": it has no label"
                : borne.length() + ": it bears the last of them, " + borne);
    return Optional.of(
        Finding.caution("label-room", "print.label", text, reference.length(), borne.length()));
  }

  private Piece labelled(Piece piece) {
    if (!order.design().print().label()) {
      return piece;
    }
    return label(piece).map(label -> labelled(piece, label.raised())).orElse(piece);
  }

  /** With letters added; a left hand's pieces are mirrored when all is done, letters are not. */
  private Piece labelled(Piece piece, Raised upright) {
    Raised letters = order.measurements().hand() == Hand.LEFT ? upright.mirrored() : upright;
    return piece.withRaised(piece.raised().map(letters::and).orElse(letters));
  }

  private Piece vented(Piece piece, Design.VentDesign vents, double offFlank) {
    if (vents.diameter() == 0) {
      return piece;
    }
    double radius = vents.diameter() / 2;
    // A vent's round takes half a wall more than the vent itself.
    double off = radius + piece.wall() / 2 + BRIDGE;
    Optional<Geometry> raised = piece.raised().map(r -> r.shape().buffer(off));
    Outline outline =
        Vents.in(
            piece.outline(),
            vents.diameter(),
            vents.spacing(),
            piece.wall(),
            (g, s) -> middle(piece, g, s),
            (g, s) -> closed(piece, raised, radius, offFlank, g, s));
    return piece.withOutline(outline);
  }

  private boolean closed(
      Piece piece, Optional<Geometry> raised, double radius, double offFlank, double g, double s) {
    double circumference = piece.digit().circumference(s);
    double skin = piece.skinGirth(g, s);
    boolean relieved = relief.bubbles().stream().anyMatch(b -> b.isNear(skin, s, radius + BRIDGE));
    boolean pressed = Math.abs(s - piece.digit().pipAxis()) < PRESSED + radius + BRIDGE;
    boolean flank =
        offFlank > 0 && Math.abs(g) > piece.outline().wrap() / 2 * circumference - offFlank;
    boolean marked =
        raised.isPresent()
            && raised.get().contains(raised.get().getFactory().createPoint(new Coordinate(g, s)));
    double rise =
        piece.gap().at(skin, s + radius + BRIDGE) - piece.gap().at(skin, s - radius - BRIDGE);
    // On a slope, as of the flare, a vent would not be round.
    return relieved || pressed || flank || marked || Math.abs(rise) > LEVEL;
  }

  /** The point of the middle of the wall; along the skin's normal, as the gap is level there. */
  private static Vector3D middle(Piece piece, double g, double s) {
    Slice slice = piece.digit().slice(s);
    double skin = piece.skinGirth(g, s);
    double t = slice.angle(skin);
    double up = piece.gap().at(skin, s) + piece.wall() / 2;
    return slice.point(t).add(slice.normal(t).multiply(up));
  }
}
