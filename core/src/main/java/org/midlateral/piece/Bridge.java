package org.midlateral.piece;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.midlateral.digit.DigitSurface;

/**
 * The rise of a piece's inner surface off the skin where the finger has a waist too deep for its
 * wall: there the piece bridges the waist, as a sheet laid over it does.
 *
 * <p>Along the finger the inner surface is closed by a disc of the wall's thickness and a little
 * more ({@link Closing}), so that the outside keeps a bend radius of {@value #OUTSIDE} mm at least.
 * The rise is what the closing asks for at places along the finger and round it, joined by cubics
 * along it and by splines round it; where the skin's bend changes at once so does the rise's slope,
 * and the piece has no crease.
 */
public final class Bridge implements GapField {
  /** The outside of a piece bends in along the finger with this radius at least (mm). */
  public static final double OUTSIDE = 1;

  /** The disc is larger by this, for what the splines take off (mm). */
  private static final double SPARE = 0.8;

  /** Places along the finger (mm). */
  private static final double STEP = 0.2;

  /** Where the inner surface bends too sharply is looked for in such steps (mm). */
  private static final double LOOK = 0.4;

  /** At first in such steps (mm): a finger is left alone that bends by less than a share of it. */
  private static final double GLANCE = 0.8;

  private static final double MILD = 0.6;

  /** The other piece is looked for at so many places on either side. */
  private static final int NEAR = 12;

  /** The other piece may be nearer by this much (mm). */
  private static final double SHORT = 0.02;

  /** And so close on either side of a crease of the skin (mm). */
  private static final double CLOSE = 0.06;

  /** Places nearer to each other are the same but for rounding (mm). */
  private static final double APART = 1e-3;

  /** The places go on so far beyond where it does, over the disc's radius (1). */
  private static final double BEYOND = 3;

  /** At their ends, where the disc has nothing to rest on, so much is left out (mm). */
  private static final double END = 1;

  /** Places round the finger, as shares of the half girth. */
  private static final double COLUMN = 1.0 / 40;

  /** Every so many of these one is looked at first. */
  private static final int COARSE = 5;

  /** The places go on beyond the piece's sides by this share of the half girth. */
  private static final double BESIDE = 0.45;

  /** A smaller rise than this is the splines' own (mm). */
  private static final double NOISE = 0.0005;

  /** A larger one counts in full (mm). */
  private static final double FULL = 0.003;

  private final DigitSurface digit;
  private final Midline midline;
  private final double[] station;
  private final int half;

  /** At each place the rise, its slope before and its slope after: rows by columns by 3. */
  private final double[] rise;

  private final boolean[] raised;

  private Bridge(Piece piece, double[] station, int half, double[] rise) {
    this.digit = piece.digit();
    this.midline = piece.midline();
    this.station = station;
    this.half = half;
    this.rise = rise;
    this.raised = new boolean[station.length];
    for (int i = 0; i < rise.length; i += 3) {
      raised[i / 3 / columns()] |= rise[i] > 0;
    }
  }

  /**
   * What a piece lies on beside the skin.
   *
   * @param gap of the inner surface of a piece under it
   * @param distance to be kept from that surface (mm)
   * @param share of the half girth, from the volar midline, up to which the other piece goes
   */
  public record Under(GapField gap, double distance, double share) {}

  /** The piece, laid over the waists of its finger. */
  public static Piece laid(Piece piece) {
    return over(piece, Optional.empty()).map(piece::bridged).orElse(piece);
  }

  /** The piece, laid over the waists of its finger and over another piece. */
  public static Piece laid(Piece piece, Under under) {
    return over(piece, Optional.of(under)).map(piece::bridged).orElse(piece);
  }

  private static Optional<Bridge> over(Piece piece, Optional<Under> under) {
    double radius = piece.wall() + OUTSIDE + SPARE;
    int half = (int) Math.ceil(Math.min(1, piece.outline().wrap() + BESIDE) / COLUMN);
    double first = piece.outline().proximal() - radius;
    double last = Math.min(piece.outline().distal() + radius, piece.digit().tip());
    if (under.isEmpty()
        && sharp(piece, under, withCreases(piece, first, last, GLANCE), half, MILD / radius).length
            == 0) {
      return Optional.empty();
    }
    double[] sharp = sharp(piece, under, withCreases(piece, first, last, LOOK), half, 1 / radius);
    if (sharp.length == 0) {
      return Optional.empty();
    }
    double from = Math.max(first, sharp[0] - BEYOND * radius);
    double to = Math.min(last, sharp[1] + BEYOND * radius);
    double[] station = stations(piece, from, to, STEP);
    Meridians meridians = new Meridians(piece.digit(), station);
    boolean[] crease = creases(piece.digit(), station);
    double[] rise = new double[3 * station.length * (2 * half + 1)];
    // No column asks another, and nothing else takes so long before a piece is meshed.
    IntStream.rangeClosed(-half, half)
        .parallel()
        .forEach(
            j -> {
              Pair pair = Pair.at(meridians, piece, under, j * COLUMN);
              if (IntStream.range(1, station.length - 1).anyMatch(i -> pair.asks(i, 1 / radius))) {
                enter(crease, station, column(pair, station, radius), rise, j + half, 2 * half + 1);
              }
            });
    return Optional.of(new Bridge(piece, station, half, rise));
  }

  /** The rises at all places along one curve, coming up from nothing at its ends. */
  private static double[] column(Pair pair, double[] station, double radius) {
    Closing closing = pair.closing(radius);
    double first = station[0];
    double last = station[station.length - 1];
    double[] column = new double[station.length];
    for (int i = 0; i < column.length; i++) {
      double inside = Math.min(station[i] - first, last - station[i]) - END;
      if (inside > 0) {
        double full = smooth(inside / END);
        column[i] = full * counted(closing.off(pair.curve(), i) - pair.curve().off()[i]);
      }
    }
    return column;
  }

  /**
   * From where to where some curve along the finger bends in too sharply, or comes too near to what
   * it lies on; empty where none does.
   */
  private static double[] sharp(
      Piece piece, Optional<Under> under, double[] station, int half, double bend) {
    Meridians meridians = new Meridians(piece.digit(), station);
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int j = -half; j <= half; j += COARSE) {
      Pair pair = Pair.at(meridians, piece, under, j * COLUMN);
      for (int i = 1; i + 1 < station.length; i++) {
        if (pair.asks(i, bend)) {
          from = Math.min(from, station[i]);
          to = Math.max(to, station[i]);
        }
      }
    }
    return from > to ? new double[0] : new double[] {from, to};
  }

  /**
   * The inner surface along the finger, and what it lies on there.
   *
   * @param under empty beside the other piece
   * @param distance to be kept from that (mm)
   */
  private record Pair(
      Meridians.Meridian curve, Optional<Meridians.Meridian> under, double distance) {

    static Pair at(Meridians meridians, Piece piece, Optional<Under> under, double own) {
      double share = share(piece.midline(), own);
      Optional<Under> there = under.filter(u -> Math.abs(share) <= u.share());
      Meridians.SkinCurve skin = meridians.skin(share);
      return new Pair(
          skin.offset(piece.gap()),
          there.map(u -> skin.offset(u.gap())),
          there.map(Under::distance).orElse(0.0));
    }

    /** Whether a place bends in too sharply, or lies too near to what is under it. */
    boolean asks(int i, double bend) {
      return curve.bend(i) > bend
          || under.isPresent() && curve.distance(i, under.get(), NEAR) < distance - SHORT;
    }

    Closing closing(double radius) {
      return under
          .map(below -> Closing.over(curve, below, distance, radius))
          .orElseGet(() -> Closing.of(curve, radius));
    }
  }

  /** Places to look at: evenly along the finger, and close round each crease of the skin. */
  private static double[] withCreases(Piece piece, double first, double last, double step) {
    DoubleStream creases =
        piece.digit().creases().stream()
            .filter(s -> s > first + CLOSE && s < last - CLOSE)
            .flatMapToDouble(s -> DoubleStream.of(s - CLOSE, s + CLOSE));
    return apart(DoubleStream.concat(Arrays.stream(stations(piece, first, last, step)), creases));
  }

  /** Places evenly along the finger, each moved to a crease of the skin that is near. */
  private static double[] stations(Piece piece, double from, double to, double step) {
    List<Double> creases = piece.digit().creases();
    int steps = (int) Math.ceil((to - from) / step);
    return apart(
        IntStream.rangeClosed(0, steps)
            .mapToDouble(i -> from + (to - from) * i / steps)
            .map(s -> atCrease(creases, s, (to - from) / steps / 2)));
  }

  /** Places in their order, without those that are the same but for rounding. */
  private static double[] apart(DoubleStream places) {
    double[] sorted = places.sorted().toArray();
    return IntStream.range(0, sorted.length)
        .filter(i -> i == 0 || sorted[i] - sorted[i - 1] > APART)
        .mapToDouble(i -> sorted[i])
        .toArray();
  }

  /** Which of some places are creases of the skin. */
  private static boolean[] creases(DigitSurface digit, double[] station) {
    List<Double> creases = digit.creases();
    boolean[] at = new boolean[station.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = creases.contains(station[i]);
    }
    return at;
  }

  private static double atCrease(List<Double> creases, double station, double reach) {
    for (double crease : creases) {
      if (Math.abs(station - crease) < reach) {
        return crease;
      }
    }
    return station;
  }

  /** The rise without the splines' own, coming up smoothly. */
  private static double counted(double rise) {
    return rise * smooth((rise - NOISE) / (FULL - NOISE));
  }

  private static double smooth(double u) {
    double v = Math.max(0, Math.min(1, u));
    return v * v * (3 - 2 * v);
  }

  /** Writes a column's rises and slopes: three-point slopes, one-sided at a crease of the skin. */
  private static void enter(
      boolean[] crease, double[] s, double[] rise, double[] out, int column, int columns) {
    int n = s.length;
    for (int i = 0; i < n; i++) {
      int at = 3 * (i * columns + column);
      out[at] = rise[i];
      out[at + 1] = slope(s, rise, i, crease[i] || i == n - 1 ? i - 2 : i - 1);
      out[at + 2] = slope(s, rise, i, crease[i] || i == 0 ? i : i - 1);
    }
  }

  /** Slope at a place of the parabola through three places. */
  private static double slope(double[] s, double[] f, int at, int first) {
    int i = Math.max(0, Math.min(s.length - 3, first));
    double h0 = s[i + 1] - s[i];
    double h1 = s[i + 2] - s[i + 1];
    double d0 = (f[i + 1] - f[i]) / h0;
    double d1 = (f[i + 2] - f[i + 1]) / h1;
    double bend = (d1 - d0) / (h0 + h1);
    return d0 + bend * (2 * s[at] - s[i] - s[i + 1]);
  }

  /** Share of the half girth from the volar midline, of one from the piece's own, or back. */
  private static double share(Midline midline, double own) {
    return midline.skinGirth(own, 2);
  }

  private int columns() {
    return 2 * half + 1;
  }

  /** The last place not beyond a station, so that another follows it; -1 outside. */
  private int row(double at) {
    if (at < station[0] || at > station[station.length - 1]) {
      return -1;
    }
    int k = Arrays.binarySearch(station, at);
    return Math.min(station.length - 2, k >= 0 ? k : -k - 2);
  }

  @Override
  public boolean uniformAt(double at) {
    int row = row(at);
    return row < 0 || !raised[row] && !raised[row + 1];
  }

  @Override
  public void jet(double girth, double at, double[] jet) {
    jet[0] = 0;
    jet[1] = 0;
    jet[2] = 0;
    int row = row(at);
    if (row < 0 || !raised[row] && !raised[row + 1]) {
      return;
    }
    double whole = digit.circumference(at);
    double v = share(midline, 2 * girth / whole) / COLUMN + half;
    int column = (int) Math.floor(v);
    double h = station[row + 1] - station[row];
    double u = (at - station[row]) / h;
    double byStation = 0;
    double byColumn = 0;
    for (int j = -1; j <= 2; j++) {
      int c = Math.max(0, Math.min(columns() - 1, column + j));
      int p = 3 * (row * columns() + c);
      int q = p + 3 * columns();
      // Hermite's cubic between two places.
      double d = rise[q] - rise[p];
      double m0 = h * rise[p + 2];
      double m1 = h * rise[q + 1];
      double c2 = 3 * d - 2 * m0 - m1;
      double c3 = m0 + m1 - 2 * d;
      double value = rise[p] + u * (m0 + u * (c2 + u * c3));
      double weight = BasisSpline.value(v - column - j);
      jet[0] += weight * value;
      byStation += weight * (m0 + u * (2 * c2 + 3 * u * c3)) / h;
      byColumn += BasisSpline.slope(v - column - j) * value;
    }
    double byShare = byColumn / COLUMN;
    jet[1] = byShare * 2 / whole;
    // At one girth the share falls where the finger widens.
    jet[2] = byStation - jet[1] * girth * digit.circumferenceByStation(at) / whole;
  }
}
