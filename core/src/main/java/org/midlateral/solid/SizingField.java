package org.midlateral.solid;

import java.util.Arrays;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.piece.Piece;

/**
 * How close the points of a piece must stand: as asked for, closer where the surfaces bend so
 * sharply that flat triangles would leave them by too much (G9). What bends at one station is met
 * by closer rows there; what bends at one angle all along the piece, as the step of a dorsal shell
 * does, by narrower steps round the finger at that angle.
 */
final class SizingField {
  /** Over the pulp the chart, which knows mean radii only, makes true lengths vary. */
  private static final double UNEVEN_PULP = 1.3;

  /** The spacing changes by no more than this along the finger (1). */
  private static final double GRADE = 0.12;

  /** Normals are not sampled nearer to the pole of the pulp (mm). */
  private static final double SHORT = 0.05;

  /** Triangles are drawn out along the finger by no more than this in places. */
  private static final double NARROWEST = 1.6;

  /** And by this at large: the finger is straighter along than round. */
  private static final double DRAWN_OUT = 1.3;

  private static final double STEP = 1;
  private static final double TURN = Math.toRadians(5);

  private final Chart chart;
  private final double from;
  private final double[] spacing;

  /** Stretched angle at multiples of TURN from the midline outward, alike on both sides. */
  private final double[] stretched;

  private SizingField(Chart chart, double from, double[] spacing, double[] stretched) {
    this.chart = chart;
    this.from = from;
    this.spacing = spacing;
    this.stretched = stretched;
  }

  /**
   * The density of a piece.
   *
   * @param edgeLength the largest spacing asked for (mm)
   * @param fineness 1 as usual; less makes all spacings so much smaller
   */
  static SizingField of(Piece piece, Chart chart, double edgeLength, double fineness) {
    double asked = edgeLength * fineness;
    double sagitta = ErrorBudget.CHORD_OF_EVEN_TRIANGLES * fineness * fineness;
    double from = chart.v(piece.outline().proximal());
    double to = chart.v(Math.min(piece.outline().distal(), piece.digit().pulpEnd() - SHORT));
    int rows = (int) Math.ceil((to - from) / STEP) + 1;
    BendSampling bends = new BendSampling(piece, chart, TURN);
    int columns = bends.columns();
    double[][] round = new double[rows][columns];
    double[][] along = new double[rows][columns];
    for (int i = 0; i < rows; i++) {
      double station = chart.station(Math.min(to, from + i * STEP));
      double uneven = station > piece.digit().tip() ? UNEVEN_PULP : 1;
      bends.at(station, uneven / (8 * sagitta), round[i], along[i]);
    }
    double most = Math.min(asked, DRAWN_OUT * usual(round, along));
    double[] narrow = narrow(round, most);
    double[] spacing = new double[rows];
    for (int i = 0; i < rows; i++) {
      double closest = 1 / (most * most);
      for (int j = 0; j < columns; j++) {
        double here = Math.max(along[i][j], round[i][j] / (narrow[j] * narrow[j]));
        closest = Math.max(closest, here);
      }
      spacing[i] = 1 / Math.sqrt(closest);
    }
    grade(spacing);
    double[] stretched = new double[columns];
    for (int j = 1; j < columns; j++) {
      stretched[j] = stretched[j - 1] + TURN * (narrow[j - 1] + narrow[j]) / 2;
    }
    return new SizingField(chart, from, spacing, stretched);
  }

  /** The spacing that half of all places would do with (mm). */
  private static double usual(double[][] round, double[][] along) {
    int columns = round[0].length;
    double[] all = new double[round.length * columns];
    for (int k = 0; k < all.length; k++) {
      all[k] = Math.max(round[k / columns][k % columns], along[k / columns][k % columns]);
    }
    Arrays.sort(all);
    return 1 / Math.sqrt(all[all.length / 2]);
  }

  /** How much narrower the steps must be at each angle: by what half of all stations ask for. */
  private static double[] narrow(double[][] round, double asked) {
    int columns = round[0].length;
    double[] narrow = new double[columns];
    double[] column = new double[round.length];
    for (int j = 0; j < columns; j++) {
      for (int i = 0; i < column.length; i++) {
        column[i] = round[i][j];
      }
      Arrays.sort(column);
      double wanted = asked * Math.sqrt(column[column.length / 2]);
      narrow[j] = Math.max(1, Math.min(NARROWEST, wanted));
    }
    double[] widened = new double[columns];
    for (int j = 0; j < columns; j++) {
      double before = narrow[Math.max(0, j - 1)];
      widened[j] = Math.max(narrow[j], Math.max(before, narrow[Math.min(columns - 1, j + 1)]));
    }
    return widened;
  }

  private static void grade(double[] spacing) {
    for (int i = 1; i < spacing.length; i++) {
      spacing[i] = Math.min(spacing[i], spacing[i - 1] + GRADE * STEP);
    }
    for (int i = spacing.length - 2; i >= 0; i--) {
      spacing[i] = Math.min(spacing[i], spacing[i + 1] + GRADE * STEP);
    }
  }

  /** The spacing at a station (mm), of stretched angles. */
  double spacing(double station) {
    double at = (chart.v(station) - from) / STEP;
    int k = (int) Math.max(0, Math.min(spacing.length - 2, at));
    double share = Math.max(0, Math.min(1, at - k));
    return spacing[k] + share * (spacing[k + 1] - spacing[k]);
  }

  /** The angle off the midline, stretched where the steps must be narrower (rad). */
  double stretched(double angle) {
    double at = Math.abs(angle) / TURN;
    int k = Math.min(stretched.length - 2, (int) at);
    return Math.copySign(stretched[k] + (at - k) * (stretched[k + 1] - stretched[k]), angle);
  }

  /** The angle whose stretched value is given (rad). */
  double angle(double value) {
    double size = Math.abs(value);
    int k = Arrays.binarySearch(stretched, size);
    k = Math.max(0, Math.min(stretched.length - 2, k >= 0 ? k : -k - 2));
    double share = (size - stretched[k]) / (stretched[k + 1] - stretched[k]);
    return Math.copySign((k + share) * TURN, value);
  }
}
