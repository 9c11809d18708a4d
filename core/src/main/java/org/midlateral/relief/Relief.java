package org.midlateral.relief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.Make;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.Bridge;
import org.midlateral.piece.GapField;
import org.midlateral.piece.Piece;

/**
 * The relief bubbles of one design: the pair over the collateral ligaments, where it is made, and
 * any further ones.
 *
 * @param bubbles all of them
 */
public record Relief(List<ReliefBubble> bubbles) {
  /**
   * A PIP joint counts as bulbous when its circumference exceeds both neighbours' by this much
   * (mm). Common practice, no source.
   */
  public static final double BULBOUS = 6;

  /** From here on the pair is suggested where it is not made (mm). Common practice, no source. */
  public static final double PROMINENT = 3;

  /** The skin meets its tapes to rounding (mm). */
  private static final double ROUNDING = 1e-9;

  /** So little more than the highest of them is not worth telling (mm). */
  private static final double ADDS = 0.1;

  /** Places along and across a footprint that are looked at; odd, so that its centre is one. */
  private static final int PLACES = 25;

  /** A girth beyond the dorsal midline by so little is on it (mm): tapes read no better. */
  private static final double TAPE = 1;

  public Relief {
    bubbles = List.copyOf(bubbles);
  }

  /**
   * The bubbles a design asks for, on a right hand's frame: +girth is radial.
   *
   * @throws DesignRefused where one lies beyond the fingertip or the dorsal midline, or reaches
   *     round the finger
   */
  public static Relief of(Measurements measurements, ReliefDesign design, DigitSurface digit)
      throws DesignRefused {
    List<ReliefBubble> bubbles = new ArrayList<>();
    if (madePair(measurements, design, digit)) {
      double axis = digit.pipAxis();
      double girth = digit.circumference(axis) / 4 - design.volarOffset();
      requireRoom(digit, "relief.width", axis, design.width(), 0);
      for (int side = 1; side >= -1; side -= 2) {
        bubbles.add(
            new ReliefBubble(
                digit, side * girth, axis, design.height(), design.width(), design.length()));
      }
    }
    for (int i = 0; i < design.bubbles().size(); i++) {
      Bubble b = design.bubbles().get(i);
      String item = "relief.bubbles[" + i + "].";
      if (b.station() >= digit.pulpEnd()) {
        throw new DesignRefused(
            Refusals.reliefStation(item + "station", b.station(), digit.pulpEnd()));
      }
      requireRoom(digit, item + "girth", b.station(), Math.abs(b.girth()), TAPE);
      requireRoom(digit, item + "width", b.station(), b.width(), 0);
      double half = digit.circumference(b.station()) / 2;
      double girth = Math.max(-half, Math.min(half, b.girth()));
      bubbles.add(new ReliefBubble(digit, girth, b.station(), b.height(), b.width(), b.length()));
    }
    return new Relief(bubbles);
  }

  private static void requireRoom(
      DigitSurface digit, String key, double station, double length, double more)
      throws DesignRefused {
    double half = digit.circumference(station) / 2;
    if (length > half + more) {
      throw new DesignRefused(Refusals.reliefGirth(key, length, half));
    }
  }

  private static boolean madePair(
      Measurements measurements, ReliefDesign design, DigitSurface digit) {
    return design.height() > 0
        && (design.make() == Make.YES
            || design.make() == Make.AUTO && (design.sore() || bulbous(measurements, digit)));
  }

  /** Whether the PIP joint bulges over both of its neighbours, where each of them was measured. */
  public static boolean bulbous(Measurements measurements, DigitSurface digit) {
    return prominence(measurements, digit) >= BULBOUS - ROUNDING;
  }

  /** Whether the pair is left to the finger's shape, and that is near to asking for it. */
  public static boolean suggested(
      Measurements measurements, ReliefDesign design, DigitSurface digit) {
    return design.make() == Make.AUTO
        && !madePair(measurements, design, digit)
        && prominence(measurements, digit) >= PROMINENT - ROUNDING;
  }

  /** By how much the PIP joint is rounder than the rounder of its neighbours (mm). */
  public static double prominence(Measurements measurements, DigitSurface digit) {
    return round(Level.PIP, measurements, digit)
        - Math.max(
            round(Level.PROXIMAL_PHALANX, measurements, digit),
            round(Level.MIDDLE_PHALANX, measurements, digit));
  }

  private static double round(Level level, Measurements measurements, DigitSurface digit) {
    return digit.circumference(measurements.stationOf(level));
  }

  /**
   * A caution where bubbles lie on one another and raise the gap by more than the highest of them
   * is meant to; it tells the place that is raised most.
   */
  public Optional<Finding> addingUp() {
    double most = 0;
    Optional<Finding> found = Optional.empty();
    for (ReliefBubble own : bubbles) {
      for (int i = 0; i < PLACES * PLACES; i++) {
        double girth = own.girth() + own.width() * share(i % PLACES);
        double station = own.station() + own.length() * share(i / PLACES);
        double sum = 0;
        double highest = 0;
        for (ReliefBubble bubble : bubbles) {
          double rise = bubble.at(girth, station);
          sum += rise;
          highest = rise > 0 ? Math.max(highest, bubble.height()) : highest;
        }
        if (sum > highest + ADDS && sum > most) {
          most = sum;
          found = Optional.of(addingUp(girth, station, sum, highest));
        }
      }
    }
    return found;
  }

  /** Places from one end of a footprint to the other, as shares of its half. */
  private static double share(int place) {
    return 2.0 * place / (PLACES - 1) - 1;
  }

  private static Finding addingUp(double girth, double station, double sum, double highest) {
    String text =
        String.format(
            Locale.ROOT,
            "Reliefs overlap: %s and %.1f mm %s from the volar midline they add up to %.1f mm,"
                + " where the highest of them is %.1f mm. Move them apart, or make one relief"
                + " of the height that you want.",
            Finding.fromWeb(station),
            Math.abs(girth),
            girth < 0 ? "ulnar" : "radial",
            sum,
            highest);
    return Finding.caution("reliefs-add-up", "relief.bubbles", text, sum, highest);
  }

  /** The gap all bubbles add. */
  public GapField field() {
    GapField field = GapField.uniform(0);
    for (ReliefBubble bubble : bubbles) {
      field = field.plus(bubble);
    }
    return field;
  }

  /** The piece with its gap raised over the bubbles, laid over the finger's waists. */
  public Piece over(Piece piece) {
    return Bridge.laid(piece.withGap(piece.gap().plus(field())));
  }
}
