package org.midlateral.solid;

/**
 * The triangles of each group of a tree taken as one body: the points it has and the ball round
 * them.
 */
final class Clusters {
  private final MeshTree tree;
  private final int firstGroup;

  /** Points of all groups, one group after the other, n by 3, row-major. */
  private final double[] points;

  /** Where the points of each group begin in that array; one more at the end. */
  private final int[] from;

  /** Middle and radius of the ball round each group, g by 4, row-major. */
  private final double[] balls;

  Clusters(MeshTree tree) {
    this.tree = tree;
    this.firstGroup = tree.firstGroup();
    int groups = firstGroup + 1;
    this.points = new double[9 * tree.triangleCount()];
    this.from = new int[groups + 1];
    this.balls = new double[4 * groups];
    int[] seen = new int[tree.xyz.length / 3];
    for (int g = 0; g < groups; g++) {
      from[g + 1] = gather(g, from[g], seen);
      ball(g);
    }
  }

  /** Copies the points of a group, each once; tells where they end. */
  private int gather(int g, int begin, int[] seen) {
    int at = begin;
    int end = tree.leavesEnd(firstGroup + g);
    for (int leaf = tree.leavesBegin(firstGroup + g); leaf < end; leaf++) {
      int t = 3 * tree.triangleAt(leaf);
      for (int i = t; i < t + 3; i++) {
        int v = tree.corners[i];
        if (seen[v] != g + 1) {
          seen[v] = g + 1;
          System.arraycopy(tree.xyz, 3 * v, points, at, 3);
          at += 3;
        }
      }
    }
    return at;
  }

  private void ball(int g) {
    int box = 6 * (firstGroup + g);
    for (int axis = 0; axis < 3; axis++) {
      balls[4 * g + axis] = (tree.boxes[box + axis] + tree.boxes[box + 3 + axis]) / 2;
    }
    double square = 0;
    for (int i = from[g]; i < from[g + 1]; i += 3) {
      double dx = points[i] - balls[4 * g];
      double dy = points[i + 1] - balls[4 * g + 1];
      double dz = points[i + 2] - balls[4 * g + 2];
      square = Math.max(square, dx * dx + dy * dy + dz * dz);
    }
    balls[4 * g + 3] = Math.sqrt(square);
  }

  /** Whether the balls round two groups, given as nodes, come nearer than a distance (mm). */
  boolean mayReach(int m, Clusters other, int n, double distance) {
    int i = 4 * (m - firstGroup);
    int j = 4 * (n - other.firstGroup);
    double far = distance + balls[i + 3] + other.balls[j + 3];
    double dx = balls[i] - other.balls[j];
    double dy = balls[i + 1] - other.balls[j + 1];
    double dz = balls[i + 2] - other.balls[j + 2];
    return dx * dx + dy * dy + dz * dz < far * far;
  }

  /**
   * Whether a group may come nearer to a triangle than a distance: not so if their balls are
   * farther apart, or if the group stays on one side of the triangle's plane and is far enough from
   * it, the room beside the triangle taken in.
   */
  boolean mayReach(int m, Facets facets, int t, double distance) {
    int g = m - firstGroup;
    double[] f = facets.at;
    int k = Facets.SIZE * t;
    double dx = balls[4 * g] - f[k + 4];
    double dy = balls[4 * g + 1] - f[k + 5];
    double dz = balls[4 * g + 2] - f[k + 6];
    double square = dx * dx + dy * dy + dz * dz;
    double radii = balls[4 * g + 3] + f[k + 7];
    if (square >= (distance + radii) * (distance + radii)) {
      return false;
    }
    double up = heightOver(g, f[k], f[k + 1], f[k + 2], f[k + 3]);
    if (!(up > 0)) {
      return true;
    }
    double middle = f[k] * dx + f[k + 1] * dy + f[k + 2] * dz;
    double across = square - middle * middle;
    double beside = across > radii * radii ? Math.sqrt(across) - radii : 0;
    return up * up + beside * beside < distance * distance;
  }

  /** How far all points of a group stay clear of a plane, on one side of it; else not positive. */
  private double heightOver(int g, double nx, double ny, double nz, double base) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from[g]; i < from[g + 1]; i += 3) {
      double h = nx * points[i] + ny * points[i + 1] + nz * points[i + 2] - base;
      low = Math.min(low, h);
      high = Math.max(high, h);
    }
    return Math.max(low, -high);
  }
}
