package org.midlateral.mesh.query;

/**
 * The triangles of each group of a tree taken as one body: the points it has and the ball round
 * them.
 */
final class LeafClusters {
  private final BoxTree tree;
  private final Facets facets;
  private final int firstGroup;

  /** Points of all groups, one group after the other, n by 3, row-major. */
  private final double[] points;

  /** Where the points of each group begin in that array; one more at the end. */
  private final int[] from;

  /** Middle and radius of the ball round each group, g by 4, row-major. */
  private final double[] balls;

  /** A unit normal of each group, and its lowest and highest height along it, g by 5, row-major. */
  private final double[] slabs;

  LeafClusters(BoxTree tree) {
    this.tree = tree;
    this.facets = new Facets(tree.xyz, tree.corners);
    this.firstGroup = tree.firstGroup();
    int groups = firstGroup + 1;
    this.points = new double[9 * tree.triangleCount()];
    this.from = new int[groups + 1];
    this.balls = new double[4 * groups];
    this.slabs = new double[5 * groups];
    int[] seen = new int[tree.xyz.length / 3];
    for (int g = 0; g < groups; g++) {
      from[g + 1] = gather(g, from[g], seen);
      ball(g);
      slab(g);
    }
  }

  /** Planes and balls of the single triangles. */
  Facets facets() {
    return facets;
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

  private void slab(int g) {
    int at = 5 * g;
    int end = tree.leavesEnd(firstGroup + g);
    for (int leaf = tree.leavesBegin(firstGroup + g); leaf < end; leaf++) {
      int k = Facets.SIZE * tree.triangleAt(leaf);
      for (int axis = 0; axis < 3; axis++) {
        slabs[at + axis] += facets.at[k + axis];
      }
    }
    double x = slabs[at];
    double y = slabs[at + 1];
    double z = slabs[at + 2];
    double size = Math.sqrt(x * x + y * y + z * z);
    double scale = size > 0 ? 1 / size : 0;
    slabs[at] = x * scale;
    slabs[at + 1] = y * scale;
    slabs[at + 2] = z * scale;
    slabs[at + 3] = Double.POSITIVE_INFINITY;
    slabs[at + 4] = Double.NEGATIVE_INFINITY;
    for (int i = from[g]; i < from[g + 1]; i += 3) {
      double h =
          slabs[at] * points[i] + slabs[at + 1] * points[i + 1] + slabs[at + 2] * points[i + 2];
      slabs[at + 3] = h < slabs[at + 3] ? h : slabs[at + 3];
      slabs[at + 4] = h > slabs[at + 4] ? h : slabs[at + 4];
    }
  }

  /**
   * Whether two groups, given as nodes, may come nearer than a distance (mm), by their balls and by
   * the slab that holds either.
   */
  boolean mayReach(int m, LeafClusters other, int n, double distance) {
    int i = 4 * (m - firstGroup);
    int j = 4 * (n - other.firstGroup);
    double radii = balls[i + 3] + other.balls[j + 3];
    double dx = balls[i] - other.balls[j];
    double dy = balls[i + 1] - other.balls[j + 1];
    double dz = balls[i + 2] - other.balls[j + 2];
    double square = dx * dx + dy * dy + dz * dz;
    if (square >= (distance + radii) * (distance + radii)) {
      return false;
    }
    return mayLeaveSlab(m - firstGroup, other, n - other.firstGroup, square, distance)
        && other.mayLeaveSlab(n - other.firstGroup, this, m - firstGroup, square, distance);
  }

  /** Whether another group comes within a distance of this one, by this one's slab. */
  private boolean mayLeaveSlab(int g, LeafClusters other, int h, double square, double distance) {
    int at = 5 * g;
    double nx = slabs[at];
    double ny = slabs[at + 1];
    double nz = slabs[at + 2];
    double own = nx * balls[4 * g] + ny * balls[4 * g + 1] + nz * balls[4 * g + 2];
    double far =
        nx * other.balls[4 * h] + ny * other.balls[4 * h + 1] + nz * other.balls[4 * h + 2];
    double up = far - own;
    double radii = balls[4 * g + 3] + other.balls[4 * h + 3];
    double clear = clear(distance, square - up * up, radii);
    double sign = up < 0 ? -1 : 1;
    double bound = clear + (up < 0 ? -slabs[at + 3] : slabs[at + 4]);
    return !other.above(h, sign * nx, sign * ny, sign * nz, bound);
  }

  /**
   * The height that two bodies must be apart to be a distance apart, where they have room beside
   * each other as well; not positive where that room alone is enough.
   *
   * @param across squared distance of their middles, across the height (mm²)
   * @param radii of the balls round them, summed (mm)
   */
  private static double clear(double distance, double across, double radii) {
    if (across <= radii * radii) {
      return distance;
    }
    double beside = Math.sqrt(across) - radii;
    return beside < distance
        ? Math.sqrt(distance * distance - beside * beside)
        : Double.NEGATIVE_INFINITY;
  }

  /** Whether all points of a group stand at a height or higher. */
  private boolean above(int g, double nx, double ny, double nz, double height) {
    for (int i = from[g]; i < from[g + 1]; i += 3) {
      if (nx * points[i] + ny * points[i + 1] + nz * points[i + 2] < height) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a group, given as a node, may come nearer to a triangle than a distance (mm): not if
   * their balls are farther apart, nor if the group stays clear of the triangle's plane, with the
   * room beside the triangle, by that much.
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
    double middle = f[k] * dx + f[k + 1] * dy + f[k + 2] * dz;
    double clear = clear(distance, square - middle * middle, radii);
    double sign = middle < 0 ? -1 : 1;
    double bound = clear + sign * f[k + 3];
    return !above(g, sign * f[k], sign * f[k + 1], sign * f[k + 2], bound);
  }
}
