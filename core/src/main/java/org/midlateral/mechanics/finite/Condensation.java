package org.midlateral.mechanics.finite;

import java.util.Arrays;
import org.midlateral.mechanics.algebra.DenseCholesky;
import org.midlateral.mechanics.algebra.RowSquares;
import org.midlateral.work.Interruption;

/**
 * How far the points of many small loads move under each other's unit: B^T K^-1 B, with a column of
 * B for each load.
 *
 * <p>With the factor L of the equations it is the product of L^-1 B with itself, so that the
 * backward half of the solution is never done; and a patch of the tree meets only the loads within
 * it, so that the forward half costs less than the factor itself.
 */
final class Condensation {
  private final LoadSet.ByFreedom entries;
  private final double[][] compliance;

  /** Place of a load among those of the patch at hand; scratch. */
  private final int[] place;

  /**
   * What a patch leaves for the one around it.
   *
   * @param loads those that touch the patch, in rising order
   * @param rows for each of the patch's outer freedoms a number for each of the loads
   */
  private record Rest(int[] loads, double[][] rows) {}

  private Condensation(LoadSet loads) {
    entries = loads.byFreedom();
    compliance = new double[loads.count()][loads.count()];
    place = new int[loads.count()];
    Arrays.fill(place, -1);
  }

  /** The symmetric matrix, a row for each load (mm/N). */
  static double[][] of(FactoredFront whole, LoadSet loads) {
    Condensation condensation = new Condensation(loads);
    condensation.eliminate(whole);
    double[][] c = condensation.compliance;
    for (int i = 0; i < c.length; i++) {
      for (int j = 0; j < i; j++) {
        c[j][i] = c[i][j];
      }
    }
    return c;
  }

  private Rest eliminate(FactoredFront front) {
    Interruption.ifInterrupted();
    Front part = front.part();
    Rest left = part.smallest() ? null : eliminate(front.left());
    Rest right = part.smallest() ? null : eliminate(front.right());
    int[] loads = loads(part, left, right);
    double[][] rows = new double[part.size()][loads.length];
    for (int k = 0; k < loads.length; k++) {
      place[loads[k]] = k;
    }
    if (!part.smallest()) {
      take(left, part.leftPlaces(), rows);
      take(right, part.rightPlaces(), rows);
    }
    for (int i = 0; i < part.own(); i++) {
      int freedom = part.freedoms()[i];
      for (int e = entries.from(freedom); e < entries.to(freedom); e++) {
        rows[i][place[entries.load(e)]] += entries.value(e);
      }
    }
    for (int load : loads) {
      place[load] = -1;
    }
    forward(front, rows);
    multiply(Arrays.copyOf(rows, part.own()), loads);
    return new Rest(loads, Arrays.copyOfRange(rows, part.own(), part.size()));
  }

  private int[] loads(Front part, Rest left, Rest right) {
    int[] all = new int[compliance.length];
    int count = 0;
    for (Rest half : new Rest[] {left, right}) {
      for (int load : half == null ? new int[0] : half.loads) {
        count = collect(load, all, count);
      }
    }
    for (int i = 0; i < part.own(); i++) {
      int freedom = part.freedoms()[i];
      for (int e = entries.from(freedom); e < entries.to(freedom); e++) {
        count = collect(entries.load(e), all, count);
      }
    }
    int[] loads = Arrays.copyOf(all, count);
    Arrays.sort(loads);
    for (int load : loads) {
      place[load] = -1;
    }
    return loads;
  }

  private int collect(int load, int[] all, int count) {
    if (place[load] >= 0) {
      return count;
    }
    place[load] = count;
    all[count] = load;
    return count + 1;
  }

  private void take(Rest half, int[] places, double[][] rows) {
    for (int i = 0; i < half.rows.length; i++) {
      double[] from = half.rows[i];
      double[] to = rows[places[i]];
      for (int k = 0; k < from.length; k++) {
        to[place[half.loads[k]]] += from[k];
      }
    }
  }

  /** Forward substitution of all loads at once, four columns of the factor at a time. */
  private static void forward(FactoredFront front, double[][] rows) {
    int own = front.part().own();
    int j = 0;
    for (; j + 3 < own; j += 4) {
      for (int k = j; k < j + 4; k++) {
        solve(front.column(k), rows, k, j + 4);
      }
      double[] a = front.column(j);
      double[] b = front.column(j + 1);
      double[] c = front.column(j + 2);
      double[] d = front.column(j + 3);
      int i = j + 4;
      for (; i + 1 < rows.length; i += 2) {
        subtractFromPair(rows, i, j, a, b, c, d);
      }
      if (i < rows.length) {
        subtract4(rows[i], rows, j, a[i], b[i], c[i], d[i]);
      }
    }
    for (; j < own; j++) {
      solve(front.column(j), rows, j, rows.length);
    }
  }

  /** Solves for one row, and takes it out of those after it up to an end. */
  private static void solve(double[] column, double[][] rows, int j, int end) {
    double[] row = rows[j];
    double scale = 1 / column[j];
    for (int k = 0; k < row.length; k++) {
      row[k] *= scale;
    }
    for (int i = j + 1; i < end; i++) {
      subtract(rows[i], row, column[i]);
    }
  }

  private static void subtract4(
      double[] y, double[][] rows, int j, double s, double t, double u, double v) {
    double[] a = rows[j];
    double[] b = rows[j + 1];
    double[] c = rows[j + 2];
    double[] d = rows[j + 3];
    for (int k = 0; k < y.length; k++) {
      y[k] -= s * a[k] + t * b[k] + u * c[k] + v * d[k];
    }
  }

  /** Subtracts rows j to j + 3 from rows i and i + 1, each with its own factors. */
  private static void subtractFromPair(
      double[][] rows, int i, int j, double[] s, double[] t, double[] u, double[] v) {
    DenseCholesky.subtractPair(
        rows[i],
        rows[i + 1],
        rows[j],
        rows[j + 1],
        rows[j + 2],
        rows[j + 3],
        s[i],
        t[i],
        u[i],
        v[i],
        s[i + 1],
        t[i + 1],
        u[i + 1],
        v[i + 1],
        0,
        rows[i].length);
  }

  private static void subtract(double[] y, double[] x, double factor) {
    for (int k = 0; k < y.length; k++) {
      y[k] -= factor * x[k];
    }
  }

  /** Adds the products of the patch's own rows, lower triangle only. */
  private void multiply(double[][] own, int[] loads) {
    double[][] product = new double[loads.length][loads.length];
    double[] ones = new double[own.length];
    Arrays.fill(ones, 1);
    RowSquares.add(product, own, ones, own.length);
    for (int p = 0; p < loads.length; p++) {
      double[] row = compliance[loads[p]];
      for (int q = 0; q <= p; q++) {
        row[loads[q]] += product[p][q];
      }
    }
  }
}
