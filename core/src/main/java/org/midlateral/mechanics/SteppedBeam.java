package org.midlateral.mechanics;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A straight beam of panels, each of one bending and one shear rigidity. Deflections and slopes
 * come by virtual work, integrated exactly panel by panel, since moments are piecewise quadratic at
 * most.
 */
public final class SteppedBeam {
  /** Gauss's three points, exact to the fifth degree. */
  private static final double[] POINT = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

  private static final double[] WEIGHT = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  private final double[] edges;
  private final double[] bending;
  private final double[] shear;

  /**
   * A beam.
   *
   * @param edges stations at which panels begin and end, ascending, one more than panels (mm)
   * @param bending EI of each panel (N·mm²)
   * @param shear GA of each panel, A being the shear area (N); infinite for a beam that only bends
   * @throws IllegalArgumentException where the arrays do not fit together
   */
  public SteppedBeam(double[] edges, double[] bending, double[] shear) {
    if (edges.length != bending.length + 1 || bending.length != shear.length) {
      throw new IllegalArgumentException("n panels need n + 1 edges and n of each rigidity");
    }
    this.edges = edges.clone();
    this.bending = bending.clone();
    this.shear = shear.clone();
  }

  /**
   * Work of a virtual loading on the deflections of a real one (N·mm): by a virtual load of 1 the
   * deflection (mm) or rotation (rad) at it. Both loadings must balance.
   *
   * @throws IllegalArgumentException where a moment or a shear force meets a panel of no rigidity
   */
  public double work(Loading real, Loading virtual) {
    double work = 0;
    for (int panel = 0; panel < bending.length; panel++) {
      double low = edges[panel];
      double high = edges[panel + 1];
      double[] knots =
          Stream.of(new double[] {low, high}, real.knots(), virtual.knots())
              .flatMapToDouble(DoubleStream::of)
              .filter(s -> s >= low && s <= high)
              .sorted()
              .toArray();
      for (int i = 0; i + 1 < knots.length; i++) {
        work += stretch(panel, knots[i], knots[i + 1], real, virtual);
      }
    }
    return work;
  }

  private double stretch(int panel, double from, double to, Loading real, Loading virtual) {
    double half = (to - from) / 2;
    double work = 0;
    for (int g = 0; g < POINT.length && half > 0; g++) {
      double s = from + half * (1 + POINT[g]);
      double moments = real.moment(s) * virtual.moment(s);
      double shears = real.shear(s) * virtual.shear(s);
      work += half * WEIGHT[g] * (over(moments, bending[panel]) + over(shears, shear[panel]));
    }
    return work;
  }

  private static double over(double product, double rigidity) {
    if (Math.abs(product) < 1e-12) {
      return 0;
    }
    if (!(rigidity > 0)) {
      throw new IllegalArgumentException("a beam without rigidity cannot bear a load");
    }
    return product / rigidity;
  }
}
