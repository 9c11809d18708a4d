package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.Concerns;
import org.midlateral.mechanics.JointBlock.OtherClosure;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;

/**
 * What the joint as it is held gives reason to look at. None of it makes a design safe or unsafe.
 */
public final class JointConcerns {
  private static final double KPA = 1000;

  private JointConcerns() {}

  /** The findings. */
  public static List<Finding> of(JointHeld held) {
    List<Finding> findings = new ArrayList<>();
    pressure(held, findings);
    force(held, findings);
    angle(held, findings);
    night(held, findings);
    puttingOn(held, findings);
    strain(held, findings);
    return findings;
  }

  private static void pressure(JointHeld held, List<Finding> findings) {
    PressurePeak peak = held.answer().squareCentimetre();
    if (peak.pressure() <= Concerns.PRESSURE_OF_A_NIGHT) {
      return;
    }
    JointWords words = new JointWords(held);
    findings.add(
        Finding.caution(
            "pressure-high",
            keyAgainstPressure(peak),
            String.format(
                Locale.ROOT,
                "%.1f kPa press on 1 cm² of skin %s. In a published study 9 kPa (67 mmHg) for"
                    + " more than two hours harmed muscle of rats; no pressure is safe for"
                    + " every finger. What helps: %s",
                KPA * peak.pressure(),
                words.place(peak),
                words.less(peak)),
            peak.pressure(),
            Concerns.PRESSURE_OF_A_NIGHT));
  }

  private static String keyAgainstPressure(PressurePeak peak) {
    return switch (peak.by()) {
      case TROUGH -> "trough.liner";
      case DORSAL_SHELL -> "dorsal-shell.clearance";
      case CLOSURE -> "closure.tension";
    };
  }

  private static void force(JointHeld held, List<Finding> findings) {
    double force = held.answer().resultants().distal().force();
    if (force <= Concerns.FORCE) {
      return;
    }
    findings.add(
        Finding.caution(
            "force-high",
            "joint.moment",
            String.format(
                Locale.ROOT,
                "The distal end presses with %.2f N; over 1.96 N (200 gf) a published study saw"
                    + " skin more likely to be hurt. What helps: a longer distal end, or a"
                    + " joint that is held less straight.",
                force),
            force,
            Concerns.FORCE));
  }

  private static void angle(JointHeld held, List<Finding> findings) {
    if (held.holds()) {
      return;
    }
    String instead =
        held.instead().stream()
            .filter(other -> other.angleHeld() <= held.within())
            .findFirst()
            .map(JointConcerns::would)
            .orElse(
                "What helps: longer ends, sides nearer to half of the girth (trough.wrap), a"
                    + " thicker wall or the dorsal shell.");
    String pull =
        held.leastTension().isPresent()
            ? String.format(
                Locale.ROOT,
                "With a pull of %.2f N it would be.",
                JointWords.enough(held.leastTension().getAsDouble()))
            : "No pull of it holds the joint. " + instead;
    findings.add(
        Finding.caution(
            "joint-not-held",
            held.leastTension().isPresent() ? "closure.tension" : "closure.kind",
            String.format(
                Locale.ROOT,
                "The joint is not held within %.0f degrees: under the %s as it is put on, it"
                    + " bends by %s degrees. %s",
                held.within(),
                JointWords.kind(held),
                held.answer().held()
                    ? String.format(Locale.ROOT, "%.1f", held.answer().angle())
                    : "more than 30",
                pull),
            held.answer().angle(),
            held.within()));
  }

  private static String would(OtherClosure other) {
    return String.format(
        Locale.ROOT,
        "%s would hold it at %.0f degrees.",
        JointWords.named(other.kind()),
        other.angleHeld());
  }

  private static void puttingOn(JointHeld held, List<Finding> findings) {
    double force = held.puttingOn().map(PuttingOn::force).orElse(0.0);
    if (force > PuttingOn.MUCH) {
      findings.add(
          Finding.caution(
              "putting-on",
              "dorsal-shell.overlap",
              String.format(
                  Locale.ROOT,
                  "To push the shell on takes about %.0f N along the finger, more than the %.0f N"
                      + " that a sore joint should take. What helps: less"
                      + " dorsal-shell.overlap, a thinner dorsal-shell.wall, or to spread the"
                      + " shell by hand and lay it on from the back of the finger.",
                  force,
                  PuttingOn.MUCH),
              force,
              PuttingOn.MUCH));
    }
  }

  private static void strain(JointHeld held, List<Finding> findings) {
    held.puttingOn()
        .filter(on -> on.strain() > on.bears() && !on.toldAlready())
        .map(JointConcerns::strained)
        .ifPresent(findings::add);
  }

  private static Finding strained(PuttingOn on) {
    return Finding.caution(
        "going-on",
        "dorsal-shell.overlap",
        String.format(
            Locale.ROOT,
            "To go on, the shell must open by %.2f mm. That strains it by %.2f %%, and the"
                + " material bears only %.2f %%. What helps: less dorsal-shell.overlap,"
                + " another closure or a softer material.",
            on.spread(),
            100 * on.strain(),
            100 * on.bears()),
        on.strain(),
        on.bears());
  }

  private static void night(JointHeld held, List<Finding> findings) {
    if (!held.holds() || held.overnight().isEmpty()) {
      return;
    }
    double morning = held.overnight().get().angleHeld();
    if (morning > held.within()) {
      findings.add(
          Finding.caution(
              "not-held-overnight",
              "material.name",
              String.format(
                  Locale.ROOT,
                  "In the morning, after 8 hours at 34 °C, the joint is at %.0f degrees, more"
                      + " than %.0f: the plastic gives way slowly. What helps: a thicker wall,"
                      + " or a material that keeps its stiffness.",
                  morning,
                  held.within()),
              morning,
              held.within()));
    }
  }
}
