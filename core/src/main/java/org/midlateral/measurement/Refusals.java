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
            "The tongue is %.1f mm long and %.1f mm wide: its edge would turn within %.1f mm"
                + " beside the web, and at least %.1f mm is blunt.",
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
            "At %.1f mm before the end of the pulp the trough is too narrow for corners of %.1f mm"
                + " radius.",
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
            "Bent this far, the outside of the trough keeps %.0f %% of its length at station %.0f"
                + " mm and would fold; at least %.0f %% is needed.",
            100 * left, station, 100 * least));
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
        text("%s is %.1f mm, and the finger ends at %.1f mm.", key, station, end));
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
            "%s is %.1f mm, and there the skin is %.1f mm from the volar to the dorsal midline.",
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
            "An overlap of %.1f mm would bring the dorsal shell's flanks together on the volar"
                + " side; there is room for %.1f mm.",
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
            "The dorsal shell would be %.1f mm long; centred on the PIP axis it has room for"
                + " %.1f mm between the web clearance and the trough's distal corners, and"
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
            "A dorsal-shell.clearance of %.2f mm is more than the shell has over the trough's"
                + " rims, %.2f mm.",
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
            "The shell's steps over the trough's rims and the dorsum between them need %.2f mm of"
                + " girth, and there are %.2f mm.",
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
            "The edge of the %s folds at station %.1f mm: the gap changes too steeply there for"
                + " this wall.",
            piece, station));
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
            "Past the closure over the PIP joint trough.%s-margin leaves only %.1f mm of the"
                + " trough's %s end to press on, and at least %.0f mm are needed.",
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
            "The finger's model measures %.2f mm round at %s where the tape read %.2f mm.",
            perimeter, level.key(), tape));
  }

  /** G6 and G7: a piece's surface is not closed, or meets itself. */
  public static Finding surface(String piece, int meetings) {
    return refusal(
        "surface",
        piece + ".wall",
        meetings,
        0,
        text(
            "The surface of the %s meets itself (%d places): its wall is too thick, or its gap"
                + " rises too steeply, for the bends of this finger.",
            piece, meetings));
  }

  /** G3: a wall thins. */
  public static Finding wall(String piece, double wall, double least) {
    return refusal(
        "wall",
        piece + ".wall",
        wall,
        least,
        text(
            "The wall of the %s thins to %.3f mm where at least %.3f mm is wanted.",
            piece, wall, least));
  }

  /** G4: a piece's inside comes too near to the skin. */
  public static Finding clearance(String piece, double nearer, double most) {
    return refusal(
        "clearance",
        piece + ".clearance",
        nearer,
        most,
        text(
            "The inside of the %s comes %.3f mm nearer to the skin than asked for, and at most"
                + " %.2f mm is allowed.",
            piece, nearer, most));
  }

  /** G4: a relief misses its height. */
  public static Finding relief(String piece, double miss, double most) {
    return refusal(
        "relief",
        "relief.height",
        miss,
        most,
        text(
            "The gap at a relief's centre in the %s misses its height by %.3f mm, and at most"
                + " %.2f mm is allowed.",
            piece, miss, most));
  }

  /** G2: a finished edge misses the trim line. */
  public static Finding trim(String piece, double miss, double most) {
    return refusal(
        "trim",
        piece + ".wall",
        miss,
        most,
        text(
            "The finished edge of the %s misses the trim line by %.3f mm, and at most %.2f mm is"
                + " allowed.",
            piece, miss, most));
  }

  /** G9: flat triangles stand off the true surface. */
  public static Finding chordError(String piece, double error, double most) {
    return refusal(
        "chord-error",
        piece + ".wall",
        error,
        most,
        text(
            "Flat triangles of the %s stand %.4f mm off its true surface, and at most %.2f mm is"
                + " allowed.",
            piece, error, most));
  }

  /** G8: too many triangles are sharp; the finding's figures are in per cent. */
  public static Finding sharpTriangles(String piece, double share, double most) {
    return refusal(
        "sliver",
        piece + ".wall",
        100 * share,
        100 * most,
        text(
            "Of the mesh of the %s, %.1f %% of the triangles have an angle under 20 degrees, and"
                + " at most %.0f %% may.",
            piece, 100 * share, 100 * most));
  }

  /** G8: a triangle is a sliver (degrees). */
  public static Finding sliver(String piece, double angle, double least) {
    return refusal(
        "sliver",
        piece + ".wall",
        angle,
        least,
        text(
            "The mesh of the %s has an angle of %.1f degrees, and at least %.0f is wanted.",
            piece, angle, least));
  }

  /** G5: the two pieces meet or come too near to each other. */
  public static Finding fitGap(double gap, Vector3D at, double least) {
    return refusal(
        "fit-gap",
        "dorsal-shell.fit-gap",
        gap,
        least,
        text(
            "Trough and dorsal shell come as near as %.3f mm at x %.1f, y %.1f, z %.1f, and at"
                + " least %.2f mm is wanted by dorsal-shell.fit-gap.",
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
        text("This design met a defect of the program (%s); %s.", what, request));
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
            "The dorsal shell is missing; the trough is made without it, and %s. %s",
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
            ? "No other value that was tried of these keys passes: "
                + String.join(", ", tried)
                + "."
            : remedies.stream().map(Remedy::told).collect(Collectors.joining("; ", "", "."));
    return refusal.with(refusal.text() + " " + told, remedies);
  }

  private static Finding refusal(String code, String key, double value, double limit, String text) {
    return Finding.refusal(code, key, text, value, limit);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
