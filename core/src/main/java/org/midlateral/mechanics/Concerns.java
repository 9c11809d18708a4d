package org.midlateral.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.Design.SupportDesign;
import org.midlateral.measurement.Finding;

/** What the mechanics of a design give reason to look at. None of them makes it safe or unsafe. */
public final class Concerns {
  /**
   * Largest force at the distal end for a contracted PIP joint (N): 200 gf, over which skin is more
   * likely to be irritated or hurt; Punsola-Izard et al., J. Clin. Med. 12(8) (2023) 2855. Prosser,
   * J. Hand Ther. 9(4) (1996) 378-386, used 250 gf.
   */
  public static final double FORCE = 1.9613;

  /**
   * Pressure to compare with (MPa): 32 mmHg, the arteriolar end of the skin's capillaries (Landis,
   * Heart 15 (1930) 209-228, read as quoted). What skin bears depends on time, shear, sensation and
   * circulation; this is no threshold of safety.
   */
  public static final double PRESSURE = 0.004266;

  /** A second figure to compare with (MPa): 50 g/cm², from memory. */
  public static final double PRESSURE_OF_SPLINTING = 0.004903;

  /** Extension lost that shows (degrees). Common practice, no source. */
  public static final double EXTENSION_LOST = 2;

  /** A trough with less of the mid-lateral one's EI at the PIP axis is shallow. A choice. */
  public static final double SHALLOW = 0.5;

  private Concerns() {}

  /**
   * Concerns about the forces and about what the piece gives way.
   *
   * @param design which of its keys set the forces
   * @param extensionLost of the trough alone (degrees)
   */
  public static List<Finding> of(ThreePoint support, SupportDesign design, double extensionLost) {
    String key = design.moment().isPresent() ? "support.moment" : "support.force";
    List<Finding> findings = new ArrayList<>();
    if (support.distalForce() > FORCE * (1 + 1e-9)) {
      findings.add(
          Finding.caution(
              "force-high",
              key,
              String.format(
                  Locale.ROOT,
                  "The distal end presses with %.2f N; over 1.96 N (200 gf) a published study saw"
                      + " skin more likely to be hurt. Less moment, or a longer distal lever arm.",
                  support.distalForce()),
              support.distalForce(),
              FORCE));
    }
    pressure(support, key, findings);
    if (extensionLost > EXTENSION_LOST) {
      findings.add(
          Finding.caution(
              "extension-lost",
              "trough.wall",
              String.format(
                  Locale.ROOT,
                  "Under %.0f N·mm the trough alone gives way by %.1f degrees of extension, more than"
                      + " %.0f. A thicker trough.wall, a wrap nearer to 0.5, or the dorsal shell.",
                  support.moment(),
                  extensionLost,
                  EXTENSION_LOST),
              extensionLost,
              EXTENSION_LOST));
    }
    return findings;
  }

  private static void pressure(ThreePoint support, String key, List<Finding> findings) {
    double[] pressures = {
      support.proximalPressure(), support.distalPressure(), support.pipPressure()
    };
    String[] places = {"under the proximal end", "under the distal end", "under the closure"};
    int worst = 0;
    for (int i = 1; i < pressures.length; i++) {
      worst = pressures[i] > pressures[worst] ? i : worst;
    }
    if (pressures[worst] > PRESSURE) {
      findings.add(
          Finding.caution(
              "pressure-high",
              key,
              String.format(
                  Locale.ROOT,
                  "Mean pressure %s is %.1f kPa, against 4.3 kPa (32 mmHg, a comparison value and no"
                      + " threshold of safety) and 4.9 kPa (50 g/cm², from memory). Less moment,"
                      + " longer lever arms, or a wider contact.",
                  places[worst],
                  1000 * pressures[worst]),
              pressures[worst],
              PRESSURE));
    }
  }

  /**
   * The concern that a trough is too shallow.
   *
   * @param wrap its share of the circumference
   * @param bending its EI at the PIP axis (N·mm²)
   * @param half EI at the PIP axis of the same trough up to the mid-lateral lines (N·mm²)
   */
  public static List<Finding> shallow(double wrap, double bending, double half) {
    double share = bending / half;
    if (share >= SHALLOW) {
      return List.of();
    }
    return List.of(
        Finding.caution(
            "too-shallow",
            "trough.wrap",
            String.format(
                Locale.ROOT,
                "At a wrap of %.2f the trough's EI at the PIP axis is %.0f N·mm², %.0f %% of the"
                    + " %.0f N·mm² it has up to the mid-lateral lines (wrap 0.5).",
                wrap,
                bending,
                100 * share,
                half),
            share,
            SHALLOW));
  }
}
