package org.midlateral.mechanics;

import java.util.List;
import java.util.Locale;
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

  /**
   * Pressure (MPa) that over two hours and more killed muscle of rats, of all soft tissue the one
   * that bears least: 9 kPa, 67 mmHg; Linder-Ganz et al., J. Biomech. 39 (2006) 2725-2732, abstract
   * read. No threshold of safety either: skin over bone, and skin that is badly supplied, may bear
   * less.
   */
  public static final double PRESSURE_OF_A_NIGHT = 0.009;

  /** A further figure to compare with (MPa): 50 g/cm², from memory. */
  public static final double PRESSURE_OF_SPLINTING = 0.004903;

  /** Extension lost that shows (degrees). Common practice, no source. */
  public static final double EXTENSION_LOST = 2;

  /** A trough with less of the mid-lateral one's EI at the PIP axis is shallow. A choice. */
  public static final double SHALLOW = 0.5;

  private Concerns() {}

  /**
   * The concern that the piece bends.
   *
   * @param moment of the finger about the PIP axis (N·mm)
   * @param extensionLost bend of the trough alone (degrees)
   */
  public static List<Finding> bend(double moment, double extensionLost) {
    if (extensionLost <= EXTENSION_LOST) {
      return List.of();
    }
    return List.of(
        Finding.caution(
            "extension-lost",
            "trough.wall",
            String.format(
                Locale.ROOT,
                "Under %.0f N·mm the trough alone bends by %.1f degrees, more than %.0f. What"
                    + " helps: a thicker trough.wall, sides nearer to half of the girth"
                    + " (trough.wrap), or the dorsal shell.",
                moment,
                extensionLost,
                EXTENSION_LOST),
            extensionLost,
            EXTENSION_LOST));
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
                "Over %.2f of the girth (trough.wrap) the trough has a bending rigidity EI at the"
                    + " PIP axis of %.0f N·mm², %.0f %% of the %.0f N·mm² that it has up to"
                    + " the mid-lateral lines (0.5).",
                wrap,
                bending,
                100 * share,
                half),
            share,
            SHALLOW));
  }
}
