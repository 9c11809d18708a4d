package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.midlateral.cut.Outline;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.mechanics.Concerns;
import org.midlateral.mechanics.JointBlock.Overnight;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;

/** How a joint is held, in a therapist's words; the figures are those of the report. */
public final class JointWords {
  /** What lies farther along an arm than this share of it lies at its end. */
  private static final double AT_THE_END = 0.55;

  /** What lies nearer to the axis lies over the joint (mm). */
  private static final double AT_THE_JOINT = 8;

  private static final double KPA = 1000;

  /** A shell so close is no closer by choice (mm). */
  private static final double LEAST_CLEARANCE = 0.2;

  /** A least pull is looked for from here (N). */
  private static final double HARDLY_ANY = 0.051;

  private final JointHeld held;
  private final JointAnswer answer;

  public JointWords(JointHeld held) {
    this.held = held;
    answer = held.answer();
  }

  private static String say(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }

  /** The whole answer in a line. */
  public String line() {
    PressurePeak peak = answer.squareCentimetre();
    return say(
        "%s; %.0f kPa at most, %s; %s.", angle(), KPA * peak.pressure(), place(peak), pull());
  }

  /** Where the joint is held. */
  public String angle() {
    if (!answer.held()) {
      return "Not held: the joint bends by more than 30° beyond the angle measured";
    }
    double asked = Math.toDegrees(held.worn().made().order().measurements().pipExtensionDeficit());
    String band =
        held.bands()
            .map(b -> say(" (%.0f to %.0f°)", b.angle().low(), b.angle().high()))
            .orElse("");
    if (asked < 0.5) {
      return say("Held %.0f°%s short of full extension", answer.angle(), band);
    }
    long lacks = Math.round(asked);
    return say(
        "Held at %d° of flexion%s, %d° beyond the %d° that it lacks by hand",
        lacks + Math.round(answer.angle()), bandBeyond(lacks), Math.round(answer.angle()), lacks);
  }

  private String bandBeyond(long lacks) {
    return held.bands()
        .map(
            b ->
                say(
                    " (%d to %d°)",
                    lacks + Math.round(b.angle().low()), lacks + Math.round(b.angle().high())))
        .orElse("");
  }

  /** A pull that is enough, to hundredths of a newton. */
  public static double enough(double pull) {
    return Math.ceil(100 * pull) / 100;
  }

  private String pull() {
    String kind = kind(held);
    double laid = held.worn().fastening().tension();
    if (held.leastTension().isEmpty()) {
      return held.instead().stream()
          .filter(other -> other.angleHeld() <= held.within())
          .findFirst()
          .map(
              o ->
                  say(
                      "no pull of the %s holds it, %s does",
                      kind, named(o.kind()).toLowerCase(Locale.ROOT)))
          .orElse(say("no pull of the %s holds it within %.0f°", kind, held.within()));
    }
    double least = held.leastTension().getAsDouble();
    String each = held.worn().fastening().layers() > 1 ? " in each layer" : "";
    if (least < HARDLY_ANY) {
      return say("the %s needs hardly any pull (it is put on with %.2f N)", kind, laid);
    }
    return say(
        "the %s needs a pull of %.2f N%s and is put on with %.2f N",
        kind, enough(least), each, laid);
  }

  /** The lines that follow the first. */
  public List<String> more() {
    AngleSplit split = answer.split();
    List<String> lines = new ArrayList<>();
    lines.add(
        say(
            "These %.1f° are made up of: play %.1f, skin %.1f, plastic %.1f, closure %.1f;"
                + " friction may add or take away up to %.1f",
            answer.angle(),
            positive(split.play()),
            positive(split.skin()),
            positive(split.plastic()),
            positive(split.closure()),
            answer.friction()));
    lines.add(
        "Highest pressures, means over 1 cm²: "
            + answer.worst().stream()
                .map(peak -> say("%.1f kPa %s", KPA * peak.pressure(), place(peak)))
                .collect(Collectors.joining("; ")));
    lines.add(closure());
    held.overnight().ifPresent(night -> lines.add(morning(night)));
    held.puttingOn()
        .ifPresent(
            on ->
                lines.add(
                    say(
                        "Putting the shell on: it opens by %.1f mm under %.1f N at each rim and"
                            + " takes about %.0f N along the finger; its strain is %.1f %% at"
                            + " most",
                        on.spread(), on.rimForce(), on.force(), 100 * on.strain())));
    held.bands().ifPresent(bands -> lines.add(bands(bands)));
    lines.add("What to change: " + change());
    return lines;
  }

  private static double positive(double part) {
    return Math.abs(part) < 0.05 ? 0 : part;
  }

  private String closure() {
    String force =
        held.holds() ? "strong enough" : say("does not hold the joint within %.0f°", held.within());
    String others =
        held.instead().stream()
            .map(
                o ->
                    say(
                        "; with %s: %.1f°",
                        named(o.kind()).toLowerCase(Locale.ROOT), o.angleHeld()))
            .collect(Collectors.joining());
    return say("Closure: %s; %s%s", pull(), force, others);
  }

  private String morning(Overnight night) {
    return say(
        "In the morning, after 8 h at 34 °C: %.1f° (%.1f to %.1f), with %.0f %% of the plastic's"
            + " modulus left",
        night.angleHeld(),
        Math.min(night.band().get(0), night.band().get(1)),
        Math.max(night.band().get(0), night.band().get(1)),
        100 * night.modulusLeft());
  }

  private static String bands(AngleBands bands) {
    return say(
        "Nine in ten of %d draws (seed %d), with errors of tape, goniometer, joint and skin: %.1f"
            + " to %.1f°, %.0f to %.0f kPa",
        bands.draws(),
        bands.seed(),
        bands.angle().low(),
        bands.angle().high(),
        KPA * bands.pressure().low(),
        KPA * bands.pressure().high());
  }

  /** What to change first; nothing where nothing calls for it. */
  public String change() {
    PressurePeak peak = answer.squareCentimetre();
    if (!held.holds()) {
      return held.leastTension().isPresent()
          ? say(
              "put the %s on with a pull of %.2f N, or choose a stiffer closure.",
              kind(held), enough(held.leastTension().getAsDouble()))
          : "longer ends, sides nearer to half of the girth (trough.wrap), a thicker wall, or the"
              + " dorsal shell with tape.";
    }
    if (peak.pressure() > Concerns.PRESSURE_OF_A_NIGHT) {
      return less(peak);
    }
    if (held.overnight().map(Overnight::angleHeld).orElse(0.0) > held.within()) {
      return "a thicker wall, or a material that keeps its stiffness over the night.";
    }
    return "nothing.";
  }

  /** What makes a pressure less, as the end of a sentence. */
  String less(PressurePeak peak) {
    double clearance = held.worn().made().order().design().dorsalShell().clearance();
    String closer =
        clearance > LEAST_CLEARANCE
            ? say("a closer shell (dorsal-shell.clearance, now %.1f mm), or ", clearance)
            : "";
    return switch (peak.by()) {
      case TROUGH -> "longer ends (less trough.distal-margin), a trough.liner, or " + lessPull();
      case DORSAL_SHELL -> closer + lessPull();
      case CLOSURE -> lessPull() + " A wider one (closure.width) presses less, too.";
    };
  }

  /** A weaker closure, as far as it still holds the joint. */
  private String lessPull() {
    String key =
        held.worn().closure() == ClosureKind.TAPE ? "closure.tape-tension" : "closure.tension";
    double laid = held.worn().fastening().tension();
    double least = held.leastTension().isPresent() ? held.leastTension().getAsDouble() : laid;
    String down =
        enough(least) < laid ? say(", which holds the joint down to %.2f", enough(least)) : "";
    return say("less pull of the closure (%s, now %.2f N%s).", key, laid, down);
  }

  /** Where something presses. */
  public String place(PressurePeak peak) {
    Outline trough = held.worn().made().plainTrough().outline();
    double axis = held.worn().made().digit().pipAxis();
    double off = peak.station() - axis;
    String where =
        Math.abs(off) < AT_THE_JOINT
            ? "over the PIP joint"
            : off > AT_THE_END * (trough.distal() - axis)
                ? "at the distal end"
                : off < AT_THE_END * (trough.proximal() - axis)
                    ? "at the proximal end"
                    : off > 0 ? "at the middle phalanx" : "at the proximal phalanx";
    return switch (peak.by()) {
      case TROUGH -> "under the trough " + where + side(peak);
      case DORSAL_SHELL -> "under the dorsal shell " + where + side(peak);
      case CLOSURE -> "under the " + kind(held) + " " + where;
    };
  }

  /** The side, where it is not the one that the piece is on. */
  private static String side(PressurePeak peak) {
    return switch (peak.side()) {
      case RADIAL -> ", radial side";
      case ULNAR -> ", ulnar side";
      default -> "";
    };
  }

  /** The closure as it was chosen. */
  static String kind(JointHeld held) {
    return held.worn().closure().name().toLowerCase(Locale.ROOT);
  }

  /** A closure by its name. */
  static String named(String kind) {
    return kind.equals("tape") ? "Tape" : "A " + kind;
  }
}
