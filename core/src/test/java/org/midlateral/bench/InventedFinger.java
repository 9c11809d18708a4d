package org.midlateral.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.midlateral.measurement.Digit;

/**
 * Invented adult fingers, drawn from published means and spreads.
 *
 * <p>Girths: index and middle PIP of women 57.0 ± 3.1 and 59.2 ± 3.6 mm (A. Nag, P. K. Nag and H.
 * Desai, Indian J Med Res 117 (2003) 260-269, as retyped); men 1.12 times that (index breadth at
 * the PIP 16 to 21 mm of women, 19 to 23 of men, survey of technical staff); ring and little finger
 * 0.95 and 0.84 of the middle one, and the other levels by their usual shares, from memory.
 *
 * <p>Lengths: phalanges of 66 adults (A. Buryanov and V. Kotiuk, Int J Morphol 28 (2010) 755-758),
 * creases 2.5 mm proximal of the PIP and 7.5 mm proximal of the DIP joint (G. Bugbee and M. Botte,
 * Clin Orthop 296 (1993) 122-126), the web near the middle of the proximal phalanx.
 *
 * @param entries of a measurement file, as KEY=VALUE
 */
record InventedFinger(List<String> entries) {
  /** Mean and spread of proximal and middle phalanx, distal phalanx with its pulp (mm). */
  private static final double[][] BONES = {
    {39.8, 4.9, 22.4, 2.5, 19.6, 2.3},
    {44.6, 3.8, 26.3, 3.0, 21.4, 1.9},
    {41.4, 3.9, 25.7, 3.3, 21.3, 2.2},
    {32.7, 2.8, 18.1, 2.5, 19.7, 2.5}
  };

  private static final double[][] PIP = {
    {57.0, 3.1}, {59.2, 3.6}, {0.95 * 59.2, 3.5}, {0.84 * 59.2, 3.3}
  };

  private static final double MEN = 1.12;

  /** Mean distance of the PIP joint's axis from its crease (mm). */
  private static final double CREASE_TO_AXIS = 2.5;

  /** A finger narrows from the PIP joint to the middle phalanx over this length (mm); invented. */
  private static final double FULL_TAPER = 9;

  /** A joint's swelling falls to a share of 1/e over this length (mm); invented. */
  private static final double SWELLING = 8;

  /** The shortest usual distance of the two creases (mm). */
  private static final double SHORTEST = 12;

  InventedFinger {
    entries = List.copyOf(entries);
  }

  /** Any finger. */
  static InventedFinger any(Random random) {
    return of(random, Digit.values()[random.nextInt(4)], 0);
  }

  /** A little finger whose PIP joint is swollen by 5 to 10 mm, its neighbours by a part of that. */
  static InventedFinger swollenLittle(Random random) {
    return of(random, Digit.LITTLE, 5 + 5 * random.nextDouble());
  }

  private static InventedFinger of(Random random, Digit digit, double swelling) {
    int d = digit.ordinal();
    double sex = random.nextBoolean() ? MEN : 1;
    double pip = sex * draw(random, PIP[d][0], PIP[d][1]);
    double[] bone = BONES[d];
    double size = sex == MEN ? 1.04 : 0.96;
    double proximal = size * draw(random, bone[0], bone[1]);
    double middle = size * draw(random, bone[2], bone[3]);
    double distal = size * draw(random, bone[4], bone[5]);
    double webToPip = proximal / 2 + draw(random, 3, 1);
    double pipToDip = Math.max(SHORTEST, middle - 5 + draw(random, 2.5, 1));
    // From the PIP axis to where the tape goes round either phalanx.
    double back = webToPip / 2 + CREASE_TO_AXIS;
    double on = pipToDip / 2 - CREASE_TO_AXIS;
    double taper = 0.125 * Math.min(1, on / FULL_TAPER);
    List<String> entries = new ArrayList<>();
    entries.add("reference=invented");
    entries.add("hand=" + (random.nextBoolean() ? "right" : "left"));
    entries.add("digit=" + digit.name().toLowerCase(Locale.ROOT));
    length(
        entries,
        "circumference.proximal-phalanx",
        pip * draw(random, 0.98, 0.03) + swelling * left(back));
    length(entries, "circumference.pip", pip + swelling);
    length(
        entries,
        "circumference.middle-phalanx",
        pip * (1 - taper + draw(random, 0, 0.025)) + swelling * left(on));
    length(entries, "circumference.tip", pip * draw(random, 0.77, 0.025));
    length(entries, "length.palmar-crease-to-web", size * draw(random, d == 3 ? 18 : 21, 2.5));
    length(entries, "length.web-to-pip", webToPip);
    length(entries, "length.pip-to-dip", pipToDip);
    length(entries, "length.dip-to-tip", distal + 7.5 - draw(random, 2.5, 1));
    return new InventedFinger(entries);
  }

  /** Share of a joint's swelling that is left at a distance from its axis. */
  private static double left(double distance) {
    return Math.exp(-distance * distance / (SWELLING * SWELLING));
  }

  private static double draw(Random random, double mean, double spread) {
    return mean + spread * Math.max(-2.5, Math.min(2.5, random.nextGaussian()));
  }

  private static void length(List<String> entries, String key, double value) {
    entries.add(String.format(Locale.ROOT, "%s=%.1f", key, value));
  }

  /** The same finger with more entries. */
  InventedFinger with(List<String> more) {
    List<String> all = new ArrayList<>(entries);
    all.addAll(more);
    return new InventedFinger(all);
  }
}
