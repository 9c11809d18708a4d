package org.midlateral.solid;

import java.util.Arrays;

/**
 * How far vertices are set outside the exact surfaces, so that the flat triangles between them are
 * off by as much outside as inside: half of what the surfaces bend round each, which halves the
 * chord error. The points of the loops stay on the surfaces, where the rim's round begins.
 */
final class Balance {
  private final Lifted points;
  private final int onLoops;

  /** By surface and point: the most and the least that a surface stands outside a flat side. */
  private final double[][] most = new double[2][0];

  private final double[][] least = new double[2][0];

  /**
   * The balance of points, which is nothing before their triangles are told.
   *
   * @param onLoops the first so many are left on the surfaces
   */
  Balance(Lifted points, int onLoops) {
    this.points = points;
    this.onLoops = onLoops;
  }

  /**
   * Takes up that some points have other triangles now.
   *
   * @param corners of all triangles there are
   * @param fresh by point: which
   */
  void renew(int[] corners, boolean[] fresh) {
    for (int k = 0; k < 2; k++) {
      most[k] = Arrays.copyOf(most[k], fresh.length);
      least[k] = Arrays.copyOf(least[k], fresh.length);
      for (int i = 0; i < fresh.length; i++) {
        most[k][i] = fresh[i] ? 0 : most[k][i];
        least[k][i] = fresh[i] ? 0 : least[k][i];
      }
    }
    for (int t = 0; t < corners.length; t += 3) {
      if (Refinement.anyOf(fresh, corners, t)) {
        look(corners[t], corners[t + 1], corners[t + 2]);
      }
    }
  }

  private void look(int a, int b, int c) {
    if (points.thickness(a) != points.thickness(b) || points.thickness(b) != points.thickness(c)) {
      return;
    }
    double[] middle = new double[3];
    look(a, b, middle);
    look(b, c, middle);
    look(c, a, middle);
    for (int k = 0; k < 2; k++) {
      double stands = 4.0 / 9 * middle[k + 1];
      enter(k, a, stands);
      enter(k, b, stands);
      enter(k, c, stands);
    }
  }

  private void look(int a, int b, double[] sum) {
    double[] chord = new double[3];
    points.chord(a, b, chord);
    for (int k = 0; k < 2; k++) {
      sum[k + 1] += chord[k + 1];
      enter(k, a, chord[k + 1]);
      enter(k, b, chord[k + 1]);
    }
  }

  private void enter(int surface, int point, double stands) {
    most[surface][point] = Math.max(most[surface][point], stands);
    least[surface][point] = Math.min(least[surface][point], stands);
  }

  /** How far inner vertex i is set outside the inner surface (mm). */
  double inner(int i) {
    return of(0, i);
  }

  /** How far outer vertex i is set outside the outer surface (mm). */
  double outer(int i) {
    return of(1, i);
  }

  private double of(int surface, int i) {
    return i < onLoops ? 0 : (most[surface][i] + least[surface][i]) / 2;
  }
}
