package org.midlateral.mesh.plane;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Sets of plane points to be triangulated. */
final class PointSets {
  private PointSets() {}

  /** Random points: scattered, drawn out, in clusters, or in rows that are not quite even. */
  static List<double[]> random(long seed) {
    Random random = new Random(seed);
    int n = 8 + random.nextInt(140);
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double x = random.nextDouble();
      double y = random.nextDouble();
      points.add(
          switch ((int) Math.floorMod(seed, 4L)) {
            case 0 -> new double[] {x, y};
            case 1 -> new double[] {1000 * x, 0.01 * y};
            case 2 ->
                new double[] {
                  i % 7 + 0.01 * random.nextGaussian(), i % 5 + 0.01 * random.nextGaussian()
                };
            default -> new double[] {i % 7 + 0.3 * x, Math.floorDiv(i, 7)};
          });
    }
    return points;
  }

  /** Twenty sets full of ties, lines and double points, by name. */
  static Map<String, List<double[]>> degenerate() {
    Map<String, List<double[]>> sets = new LinkedHashMap<>();
    sets.put("square", grid(2, 2, 1, 0));
    sets.put("grid", grid(12, 9, 1, 0));
    sets.put("two rows", grid(40, 2, 1, 0));
    sets.put("two columns", grid(2, 40, 1, 0));
    sets.put("rows half a step on", grid(12, 10, 2, 1));
    sets.put("grid with rounded steps", moved(grid(11, 11, 0.1, 0), 1e6 / 3));
    sets.put("turned grid", turned(grid(10, 10, 1, 0)));
    sets.put("circle", IntegerCircle.points());
    sets.put("circle and its middle", with(IntegerCircle.points(), 0, 0));
    sets.put("two circles", join(IntegerCircle.points(), scaled(IntegerCircle.points(), 0.5)));
    sets.put("rounded circle", rounded(circle(180), 1e-6));
    sets.put("rounded circle and its middle", with(rounded(circle(100), 1e-6), 0, 0));
    sets.put("line and a point off it", with(curve(50, x -> x), 10, 30));
    sets.put("rounded line and a point off it", with(rounded(curve(50, x -> x / 3), 1e-6), 10, 30));
    sets.put("nearly a line", curve(60, x -> 0.125 * x + 1e-6 * x * x));
    sets.put("nearly a line, to and fro", curve(60, x -> 0.75 * x + (x % 2) * 0x1p-10));
    sets.put("cross", join(grid(21, 1, 1, 0), moved(grid(1, 21, 1, 0), 10)));
    sets.put("rows twice", join(grid(9, 7, 1, 0), grid(9, 7, 1, 0)));
    sets.put("every point three times", thrice(random(3)));
    sets.put("rows on a tiny scale", scaled(grid(8, 8, 2, 1), 0x1p-60));
    return sets;
  }

  /** Sets that rounded determinants cannot tell from points on one line or circle, by name. */
  static Map<String, List<double[]>> beyondDoubles() {
    Map<String, List<double[]>> sets = new LinkedHashMap<>();
    sets.put("circle", circle(180));
    sets.put("circle and its middle", with(circle(100), 0, 0));
    sets.put("line and a point off it", with(curve(50, x -> x / 3 + 0.1), 10, 30));
    sets.put("nearly a line", curve(60, x -> 0.1 * x + 1e-15 * x * x));
    sets.put("nearly a line, to and fro", curve(60, x -> 0.7 * x + (x % 2) * 1e-15));
    return sets;
  }

  /** Points of rows, each this much further on than the last by turns. */
  static List<double[]> grid(int columns, int rows, double step, double shift) {
    List<double[]> points = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        points.add(new double[] {c * step + r % 2 * shift, r * step});
      }
    }
    return points;
  }

  private static List<double[]> curve(int n, DoubleUnaryOperator height) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new double[] {i, height.applyAsDouble(i)});
    }
    return points;
  }

  private static List<double[]> circle(int n) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n;
      points.add(new double[] {Math.cos(angle), Math.sin(angle)});
    }
    return points;
  }

  private static List<double[]> rounded(List<double[]> points, double step) {
    return points.stream()
        .map(p -> new double[] {Math.rint(p[0] / step) * step, Math.rint(p[1] / step) * step})
        .toList();
  }

  private static List<double[]> moved(List<double[]> points, double by) {
    return points.stream().map(p -> new double[] {p[0] + by, p[1]}).toList();
  }

  private static List<double[]> scaled(List<double[]> points, double by) {
    return points.stream().map(p -> new double[] {p[0] * by, p[1] * by}).toList();
  }

  private static List<double[]> turned(List<double[]> points) {
    return points.stream()
        .map(p -> new double[] {3 * p[0] - 4 * p[1], 4 * p[0] + 3 * p[1]})
        .toList();
  }

  private static List<double[]> with(List<double[]> points, double x, double y) {
    return join(points, List.of(new double[] {x, y}));
  }

  private static List<double[]> thrice(List<double[]> points) {
    return join(points, join(points, points));
  }

  private static List<double[]> join(List<double[]> some, List<double[]> others) {
    List<double[]> all = new ArrayList<>(some);
    all.addAll(others);
    return all;
  }
}
