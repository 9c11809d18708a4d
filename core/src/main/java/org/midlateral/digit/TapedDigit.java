package org.midlateral.digit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/**
 * A finger built from tape measurements: elliptic sections whose perimeter passes exactly through
 * every measured circumference, on a centreline bent at the joints, closed over the pulp.
 */
public final class TapedDigit implements DigitSurface {
  /**
   * Depth to width ratio where no width was measured. PIP: between the ratios 0.87 and 0.89 of
   * index and middle finger in A. Nag, P. K. Nag and H. Desai, Indian J. Med. Res. 117 (2003)
   * 260-269; the other levels from memory.
   */
  private static final Map<Level, Double> USUAL_RATIO =
      new EnumMap<>(
          Map.of(
              Level.WEB, 0.90,
              Level.PROXIMAL_PHALANX, 0.90,
              Level.PIP, 0.88,
              Level.MIDDLE_PHALANX, 0.87,
              Level.DIP, 0.83,
              Level.TIP, 0.80));

  private final Measurements measurements;
  private final MonotoneCubic girth;
  private final MonotoneCubic ratio;
  private final Centreline centreline;
  private final double tip;
  private final double pulpEnd;
  private final double[] pulp;
  private final double tipRatio;

  private TapedDigit(
      Measurements measurements, MonotoneCubic girth, MonotoneCubic ratio, Centreline centreline) {
    this.measurements = measurements;
    this.girth = girth;
    this.ratio = ratio;
    this.centreline = centreline;
    this.tip = girth.last();
    this.pulpEnd = measurements.pulpEnd();
    this.pulp = pulp(girth, tip, pulpEnd - tip);
    double[] jet = new double[3];
    ratio.jet(tip, jet);
    this.tipRatio = jet[0];
  }

  /**
   * The finger that was measured.
   *
   * @throws IllegalArgumentException where there is none, see {@link #isPossible}
   */
  public static TapedDigit of(Measurements read) {
    Measurements measurements = read.swollen();
    Optional<String> fault = fault(measurements);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get());
    }
    List<Level> levels = levels(measurements);
    int n = levels.size();
    double[] station = new double[n];
    double[] circumference = new double[n];
    double[] ratio = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      Level level = levels.get(k);
      station[k] = measurements.stationOf(level);
      if (level == Level.WEB) {
        // No tape goes round at the web: the width there, with the section's shape next to it.
        ratio[k] = ratio[k + 1];
        circumference[k] = measurements.width().get(level) / 2 * Ellipses.unitPerimeter(ratio[k]);
      } else {
        circumference[k] = measurements.circumference().get(level);
        ratio[k] = ratio(measurements, level);
      }
    }
    // Steeper at the tip, and the sections would not close as an ellipse does over the pulp's end.
    double steepest = circumference[n - 1] / (2 * (measurements.pulpEnd() - station[n - 1]));
    MonotoneCubic girthLaw = MonotoneCubic.through(station, circumference, steepest);
    MonotoneCubic ratioLaw = MonotoneCubic.through(station, ratio, 0);
    return new TapedDigit(measurements, girthLaw, ratioLaw, bent(measurements, girthLaw, ratioLaw));
  }

  /**
   * Whether there is a finger of these readings: the levels follow each other and lie before the
   * end of the pulp, and where a width was measured, an ellipse has it and the circumference.
   * Measurements that were checked on reading are always possible; those that errors were drawn for
   * may not be.
   */
  public static boolean isPossible(Measurements measurements) {
    return fault(measurements.swollen()).isEmpty();
  }

  private static Optional<String> fault(Measurements measurements) {
    double before = Double.NEGATIVE_INFINITY;
    for (Level level : levels(measurements)) {
      double station = measurements.stationOf(level);
      if (!(station > before && station < measurements.pulpEnd())) {
        return Optional.of(
            level.key()
                + " at "
                + station
                + " mm from the web is out of its order"
                + " along the finger");
      }
      before = station;
      Double tape = measurements.circumference().get(level);
      if (tape != null && !(tape > 0)) {
        return Optional.of("nothing is " + tape + " mm around at " + level.key());
      }
      Double width = measurements.width().get(level);
      if (tape != null && width != null && Double.isNaN(Ellipses.depthRatio(width, tape))) {
        return Optional.of(
            "no ellipse is " + width + " mm wide and " + tape + " mm around at " + level.key());
      }
    }
    return Optional.empty();
  }

  /** The levels that sections are known at, from the web on. */
  private static List<Level> levels(Measurements measurements) {
    List<Level> levels = new ArrayList<>(measurements.circumference().keySet());
    if (measurements.width().containsKey(Level.WEB)) {
      levels.add(0, Level.WEB);
    }
    return levels;
  }

  /** Depth over width at a taped level; not a number where no ellipse has both measures. */
  private static double ratio(Measurements measurements, Level level) {
    Double width = measurements.width().get(level);
    return width == null
        ? USUAL_RATIO.get(level)
        : Ellipses.depthRatio(width, measurements.circumference().get(level));
  }

  private static Centreline bent(
      Measurements measurements, MonotoneCubic girth, MonotoneCubic ratio) {
    return Centreline.of(
        List.of(
            bend(measurements.pipAxis(), measurements.pipExtensionDeficit(), girth, ratio),
            bend(measurements.dipAxis(), measurements.dipFlexion(), girth, ratio)));
  }

  private static Bend bend(double axis, double angle, MonotoneCubic girth, MonotoneCubic ratio) {
    double[] c = new double[3];
    double[] q = new double[3];
    girth.jet(axis, c);
    ratio.jet(axis, q);
    return Bend.at(axis, angle, c[0] / Ellipses.unitPerimeter(q[0]) * q[0]);
  }

  /** Coefficients of C² as a quadratic that leaves the tip smoothly and is 0 at the pulp's end. */
  private static double[] pulp(MonotoneCubic girth, double tip, double length) {
    double[] jet = new double[3];
    girth.jet(tip, jet);
    double c0 = jet[0] * jet[0];
    double c1 = 2 * jet[0] * jet[1];
    return new double[] {c0, c1, -(c0 + c1 * length) / (length * length)};
  }

  private void girthJet(double station, double[] jet) {
    if (station <= tip) {
      girth.jet(station, jet);
      return;
    }
    double u = station - tip;
    jet[0] = Math.sqrt(pulpSquare(u));
    jet[1] = (pulp[1] + 2 * u * pulp[2]) / (2 * jet[0]);
    jet[2] = (pulp[2] - jet[1] * jet[1]) / jet[0];
  }

  /** Square of the circumference so far beyond the tip. */
  private double pulpSquare(double beyond) {
    return Math.max(0, pulp[0] + beyond * (pulp[1] + beyond * pulp[2]));
  }

  private void ratioJet(double station, double[] jet) {
    if (station <= tip) {
      ratio.jet(station, jet);
      return;
    }
    jet[0] = tipRatio;
    jet[1] = 0;
    jet[2] = 0;
  }

  @Override
  public Slice slice(double station) {
    double[] c = new double[3];
    double[] q = new double[3];
    double[] p = new double[3];
    girthJet(station, c);
    ratioJet(station, q);
    Ellipses.unitPerimeter(q[0], p);
    // a = C / p(q(s)); b = q a.
    double p1 = p[1] * q[1];
    double p2 = p[2] * q[1] * q[1] + p[1] * q[2];
    double a = c[0] / p[0];
    double a1 = (c[1] - a * p1) / p[0];
    double a2 = (c[2] - 2 * a1 * p1 - a * p2) / p[0];
    double[] point = new double[2];
    centreline.point(station, point);
    return new EllipticSlice(
        station,
        c[0],
        c[1],
        new double[] {a, a1, a2},
        new double[] {q[0] * a, q[1] * a + q[0] * a1, q[2] * a + 2 * q[1] * a1 + q[0] * a2},
        point,
        centreline.turned(station),
        centreline.curvature(station),
        centreline.curvatureRate(station));
  }

  @Override
  public double circumference(double station) {
    return station <= tip ? girth.value(station) : Math.sqrt(pulpSquare(station - tip));
  }

  @Override
  public double circumferenceByStation(double station) {
    double[] c = new double[3];
    girthJet(station, c);
    return c[1];
  }

  @Override
  public double halfDepth(double station) {
    return slice(station).halfDepth();
  }

  @Override
  public double curvature(double station) {
    return centreline.curvature(station);
  }

  @Override
  public double pipAxis() {
    return measurements.pipAxis();
  }

  @Override
  public double tip() {
    return tip;
  }

  @Override
  public double pulpEnd() {
    return pulpEnd;
  }

  @Override
  public List<Double> creases() {
    return girth.knots();
  }

  @Override
  public Vector3D centre(double station) {
    double[] point = new double[2];
    centreline.point(station, point);
    return Vector3D.of(point[0], 0, point[1]);
  }

  @Override
  public Vector3D tangent(double station) {
    double turned = centreline.turned(station);
    return Vector3D.of(Math.cos(turned), 0, -Math.sin(turned));
  }
}
