package org.midlateral.measurement;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Design.ClosureKind;

/**
 * Every refusal there is: its code, the key it is about, and its sentence, which says what is the
 * matter. What to change is added by whoever has tried it. Nobody else makes one, so that wording
 * and codes are kept here and nowhere else. Lengths are in mm, shares from 0 to 1.
 *
 * <p>A piece is named as in files: {@code trough} or {@code dorsal-shell}.
 */
public final class Refusals {
  /** Codes of those that a finer mesh may mend. */
  public static final Set<String> OF_THE_MESH =
      Set.of("clearance", "chord-error", "sliver", "relief");

  private Refusals() {}

  /** The tongue would turn too sharply beside the web. */
  public static Finding tongueShort(double length, double width, double radius, double least) {
    return refusal(
        "tongue-short",
        "trough.proximal-margin",
        radius,
        least,
        text(
            "The tongue is %.1f mm long and %.1f mm wide: beside the web its edge would curve"
                + " with a radius of %.1f mm, which is sharp; at least %.1f mm is needed.",
            length, width, radius, least));
  }

  /** The distal end has no room for its corners. */
  public static Finding distalEndNarrow(double margin, double leastRadius) {
    return refusal(
        "distal-end-narrow",
        "trough.distal-margin",
        margin,
        Double.NaN,
        text(
            "The trough is too narrow, %.1f mm short of the end of the pulp, for corners with a"
                + " radius of %.1f mm.",
            margin, leastRadius));
  }

  /**
   * The volar wall would fold in the bend.
   *
   * @param left share of its length that the outside keeps
   */
  public static Finding bendFolds(double station, double left, double least) {
    return refusal(
        "bend-folds",
        "angle.pip-extension-deficit",
        left,
        least,
        text(
            "At this angle the outside of the trough would fold, %.0f mm from the web: it keeps"
                + " %.0f %% of its length there, and at least %.0f %% is needed.",
            station, 100 * left, 100 * least));
  }

  /**
   * A relief lies beyond the fingertip.
   *
   * @param key of the relief's station
   */
  public static Finding reliefStation(String key, double station, double end) {
    return refusal(
        "relief-station",
        key,
        station,
        end,
        text("%s is %.1f mm, but the finger ends %.1f mm from the web.", key, station, end));
  }

  /**
   * A relief lies beyond the dorsal midline, or reaches round the finger.
   *
   * @param key of its girth or width
   * @param half girth from the volar to the dorsal midline
   */
  public static Finding reliefGirth(String key, double length, double half) {
    return refusal(
        "relief-girth",
        key,
        length,
        half,
        text(
            "%s is %.1f mm, but there it is only %.1f mm along the skin from the volar to the"
                + " dorsal midline.",
            key, length, half));
  }

  /** The dorsal shell's flanks would meet on the volar side. */
  public static Finding dorsalShellOverlap(double overlap, double room) {
    return refusal(
        "dorsal-shell-overlap",
        "dorsal-shell.overlap",
        overlap,
        room,
        text(
            "An overlap of %.1f mm would bring the sides of the dorsal shell together on the"
                + " volar side; there is room for %.1f mm.",
            overlap, room));
  }

  /** The dorsal shell is longer than its room, or too short to close a tube. */
  public static Finding dorsalShellLength(double length, double room, double least) {
    return refusal(
        "dorsal-shell-length",
        "dorsal-shell.length",
        length,
        room,
        text(
            "The dorsal shell would be %.1f mm long. Centred on the PIP axis it has room for %.1f"
                + " mm, between the web clearance and the trough's distal corners, and it"
                + " needs at least %.0f mm.",
            length, room, least));
  }

  /** The dorsal shell is farther off over the dorsum than over the trough's rims. */
  public static Finding dorsalShellClearance(double clearance, double overRims) {
    return refusal(
        "dorsal-shell-step",
        "dorsal-shell.clearance",
        clearance,
        overRims,
        text(
            "With a dorsal-shell.clearance of %.2f mm the shell would stand farther off the skin"
                + " on the back of the finger than over the trough's rims, where it is %.2f"
                + " mm.",
            clearance, overRims));
  }

  /** The steps over the trough's rims leave too little of the dorsum. */
  public static Finding dorsalShellStep(double step, double dorsum, double least) {
    return refusal(
        "dorsal-shell-step",
        "dorsal-shell.clearance",
        dorsum,
        least,
        text(
            "The shell's steps over the trough's rims, and the back of the finger between them,"
                + " need %.2f mm of the girth; there are only %.2f mm.",
            2 * step + least, 2 * step + dorsum));
  }

  /** A piece's edge has no place for its rim. */
  public static Finding edgeFolds(String piece, double station) {
    return refusal(
        "edge-folds",
        piece + ".wall",
        station,
        Double.NaN,
        text(
            "The edge of the %s would fold %s: the gap to the skin changes too steeply there for"
                + " this wall.",
            inWords(piece), Finding.fromWeb(station)));
  }

  /**
   * The trough is too short on one side of the joint to be pressed on.
   *
   * @param end {@code proximal} or {@code distal}
   * @param length left past the closure
   */
  public static Finding leverArmShort(String end, double length, double least) {
    return refusal(
        "lever-arm-short",
        "trough." + end + "-margin",
        length,
        least,
        text(
            "The trough is too short: past the closure over the PIP joint trough.%s-margin leaves"
                + " only %.1f mm of its %s end to press on, and at least %.0f mm are needed.",
            end, Math.max(0, length), end, least));
  }

  /** G1: the skin's model is not as long round as the tape. */
  public static Finding circumference(Level level, double perimeter, double tape) {
    return refusal(
        "circumference",
        "circumference." + level.key(),
        perimeter,
        tape,
        text(
            "The model of the finger measures %.2f mm around at the %s, but the tape read %.2f"
                + " mm.",
            perimeter, level.words(), tape));
  }

  /** G6 and G7: a piece's surface is not closed, or meets itself. */
  public static Finding surface(String piece, int meetings) {
    return refusal(
        "surface",
        piece + ".wall",
        meetings,
        0,
        text(
            "The surface of the %s cuts through itself (in %d places): its wall is too thick, or"
                + " its gap rises too steeply, for the bends of this finger.",
            inWords(piece), meetings));
  }

  /** G3: a wall thins. */
  public static Finding wall(String piece, double wall, double least) {
    return refusal(
        "wall",
        piece + ".wall",
        wall,
        least,
        text(
            "The wall of the %s is only %.3f mm thick at its thinnest; at least %.3f mm is"
                + " needed.",
            inWords(piece), wall, least));
  }

  /** G4: a piece's inside comes too near to the skin. */
  public static Finding clearance(String piece, double nearer, double most) {
    return refusal(
        "clearance",
        piece + ".clearance",
        nearer,
        most,
        text(
            "The inside of the %s comes %.3f mm nearer to the skin than its clearance says; at"
                + " most %.2f mm is allowed.",
            inWords(piece), nearer, most));
  }

  /** G4: a relief misses its height. */
  public static Finding relief(String piece, double miss, double most) {
    return refusal(
        "relief",
        "relief.height",
        miss,
        most,
        text(
            "At the centre of a relief the gap under the %s is wrong by %.3f mm; at most %.2f mm"
                + " is allowed.",
            inWords(piece), miss, most));
  }

  /** G2: a finished edge misses the trim line. */
  public static Finding trim(String piece, double miss, double most) {
    return refusal(
        "trim",
        piece + ".wall",
        miss,
        most,
        text(
            "The finished edge of the %s lies %.3f mm off the trim line; at most %.2f mm is"
                + " allowed.",
            inWords(piece), miss, most));
  }

  /** G9: flat triangles stand off the true surface. */
  public static Finding chordError(String piece, double error, double most) {
    return refusal(
        "chord-error",
        piece + ".wall",
        error,
        most,
        text(
            "Flat triangles of the %s stand %.4f mm off its true surface; at most %.2f mm is"
                + " allowed.",
            inWords(piece), error, most));
  }

  /** G8: too many triangles are sharp; the finding's figures are in per cent. */
  public static Finding sharpTriangles(String piece, double share, double most) {
    return refusal(
        "sliver",
        piece + ".wall",
        100 * share,
        100 * most,
        text(
            "Of the mesh of the %s, %.1f %% of the triangles have an angle under 20 degrees; at"
                + " most %.0f %% may have one.",
            inWords(piece), 100 * share, 100 * most));
  }

  /** G8: a triangle is a sliver (degrees). */
  public static Finding sliver(String piece, double angle, double least) {
    return refusal(
        "sliver",
        piece + ".wall",
        angle,
        least,
        text(
            "The mesh of the %s has an angle of %.1f degrees; at least %.0f is needed.",
            inWords(piece), angle, least));
  }

  /** G5: the two pieces meet or come too near to each other. */
  public static Finding fitGap(double gap, Vector3D at, double least) {
    return refusal(
        "fit-gap",
        "dorsal-shell.fit-gap",
        gap,
        least,
        text(
            "Trough and dorsal shell come as near to each other as %.3f mm (at x %.1f, y %.1f, z"
                + " %.1f); dorsal-shell.fit-gap asks for at least %.2f mm.",
            gap, at.getX(), at.getY(), at.getZ(), least));
  }

  /**
   * Making the design met a defect of the program; it is about no key.
   *
   * @param what was thrown
   * @param request what the user is asked to do
   */
  public static Finding defect(String what, String request) {
    return refusal(
        "defect",
        null,
        Double.NaN,
        Double.NaN,
        text("A defect of the program stopped this design (%s); %s.", what, request));
  }

  /**
   * A trough made without the dorsal shell that was asked for.
   *
   * @param why the shell is refused
   * @param closure that was chosen
   */
  public static Finding shellMissing(Finding why, ClosureKind closure) {
    String instead =
        switch (closure) {
          case WRAP -> "the elastic wrap closes it";
          case SLEEVE -> "the sleeve closes it";
          case STRAP -> "the straps close it, or an elastic wrap where the joint is sore";
          case TAPE -> "an elastic wrap or a sleeve closes it, not tape";
        };
    return refusal(
        why.code(),
        why.key(),
        why.value(),
        why.limit(),
        text(
            "The dorsal shell is missing. The trough is made without it, and %s. %s",
            instead, why.text()));
  }

  /**
   * A refusal with what was tried on its order.
   *
   * @param remedies that pass, nearest first
   * @param tried keys that were changed one by one
   */
  public static Finding advised(Finding refusal, List<Remedy> remedies, Collection<String> tried) {
    if (tried.isEmpty() && remedies.isEmpty()) {
      return refusal;
    }
    String told =
        remedies.isEmpty()
            ? "Other values of these keys were tried, and none works: "
                + String.join(", ", tried)
                + "."
            : remedies.stream()
                .map(Remedy::told)
                .collect(Collectors.joining("; or ", "Tried, and works: ", "."));
    return refusal.with(refusal.text() + " " + told, remedies);
  }

  private static Finding refusal(String code, String key, double value, double limit, String text) {
    return Finding.refusal(code, key, text, value, limit);
  }

  /** A piece's name as it stands in a sentence. */
  private static String inWords(String piece) {
    return piece.replace('-', ' ');
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
