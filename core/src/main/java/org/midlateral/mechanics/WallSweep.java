package org.midlateral.mechanics;

import java.util.List;

/**
 * A section seen as a wall round the finger: its area sorted by direction from the centreline into
 * narrow wedges, each with the wall's mid radius and thickness. The wall may be in several pieces
 * and may overlap itself; in an overlap its thicknesses add up, as if bonded.
 *
 * <p>Torsion constant: open, the sum of b t³/3 over the wedges, in which the round rims count as
 * what they are; closed, Bredt's 4 A² / (sum of b/t) with A enclosed by the mid-line. W. D. Pilkey,
 * Analysis and Design of Elastic Beams (2002), finds an open 120 degree arc of t/b = 0.015 with
 * square ends 0.9 % softer than b t³/3: the ends' own effect, 0.63 t/b, is left out.
 *
 * <p>Shear area, for a force along n: from the energy of the shear flow V Q / (I t), with Q counted
 * from the dorsal midline, where it vanishes for an open trough and for a closed section that is
 * the same on both sides.
 */
final class WallSweep {
  private static final int WEDGES = 720;

  /** Pieces that lie edge to edge may leave so many wedges empty between them. */
  private static final int SEAM = 4;

  /** Wedges that a round rim takes: half a wall of 1.6 mm at a radius of 9 mm. */
  private static final int RIM = 10;

  private static final double TURN = 2 * Math.PI / WEDGES;

  /** Cosine and sine of the direction at which each wedge begins; the first is dorsal. */
  private static final double[] RAYS = rays();

  private final double[] area = new double[WEDGES];
  private final double[] momentY = new double[WEDGES];
  private final double[] momentN = new double[WEDGES];
  private final double[] length = new double[WEDGES];
  private double enclosed;
  private boolean closed = true;

  /** Sweeps a section; the pole is the centreline, y = n = 0. */
  WallSweep(List<Loop> loops) {
    sweep(loops);
    measure();
  }

  private WallSweep() {}

  /**
   * Sweeps the section of bonded pieces. An empty stretch between two places of one piece is a
   * hole, past which the shear flows as it does beside it: the wall goes on there as thick as its
   * neighbours. One between two pieces is open, unless it is no wider than {@value #SEAM} wedges,
   * which meshes of pieces that lie edge to edge may leave.
   *
   * @param pieces the loops of each
   */
  static WallSweep tube(List<List<Loop>> pieces) {
    WallSweep whole = new WallSweep();
    int[] owners = new int[WEDGES];
    for (int p = 0; p < pieces.size(); p++) {
      WallSweep own = new WallSweep();
      own.sweep(pieces.get(p));
      for (int k = 0; k < WEDGES; k++) {
        owners[k] |= own.filled(k) ? 1 << p : 0;
        whole.area[k] += own.area[k];
        whole.momentY[k] += own.momentY[k];
        whole.momentN[k] += own.momentN[k];
      }
    }
    whole.bridge(owners);
    whole.measure();
    return whole;
  }

  /** Fills the empty stretches that are holes or seams. */
  private void bridge(int[] owners) {
    for (int first = 0; first < WEDGES; first++) {
      int before = (first + WEDGES - 1) % WEDGES;
      if (owners[first] != 0 || owners[before] == 0) {
        continue;
      }
      int count = 1;
      while (owners[(first + count) % WEDGES] == 0) {
        count++;
      }
      int after = (first + count) % WEDGES;
      if ((owners[before] & owners[after]) != 0 || count <= SEAM) {
        fill(before, after, count);
      }
    }
  }

  /**
   * A wall over an empty stretch and the round rims on either side of it, its area and radius
   * leading evenly from one side to the other.
   */
  private void fill(int before, int after, int count) {
    int from = (before + WEDGES - RIM) % WEDGES;
    int to = (after + RIM) % WEDGES;
    double radius = diagonal(momentY[from], momentN[from]) / area[from];
    double radiusAfter = diagonal(momentY[to], momentN[to]) / area[to];
    int steps = count + 2 * RIM + 1;
    for (int i = 1; i < steps; i++) {
      int k = (from + i) % WEDGES;
      double share = (double) i / steps;
      double direction = Math.PI / 2 + (k + 0.5) * TURN;
      double at = radius + share * (radiusAfter - radius);
      area[k] = area[from] + share * (area[to] - area[from]);
      momentY[k] = area[k] * at * Math.cos(direction);
      momentN[k] = area[k] * at * Math.sin(direction);
    }
  }

  private void sweep(List<Loop> loops) {
    for (Loop loop : loops) {
      int from = wedge(loop.y(0), loop.n(0));
      for (int i = 0; i < loop.size(); i++) {
        int to = wedge(loop.y(i + 1), loop.n(i + 1));
        edge(loop.y(i), loop.n(i), loop.y(i + 1), loop.n(i + 1), from, to);
        from = to;
      }
    }
  }

  private void measure() {
    double[] radius = new double[WEDGES];
    for (int k = 0; k < WEDGES; k++) {
      if (filled(k)) {
        radius[k] = midRadius(k);
        enclosed += radius[k] * radius[k] * TURN / 2;
      } else {
        closed = false;
      }
    }
    for (int k = 0; k < WEDGES; k++) {
      length[k] = diagonal(radius[k], slope(radius, k)) * TURN;
    }
    for (int k = 0; k < WEDGES; k++) {
      if (filled(k)) {
        length[k] = Math.min(length[k], filledLength(k));
      }
    }
  }

  /**
   * Length of wall in a wedge that ends there: as much as its area fills at the thickness of the
   * wedge before. A wedge that an edge only grazes is short, not thin.
   */
  private double filledLength(int k) {
    int before = (k + WEDGES - 1) % WEDGES;
    int after = (k + 1) % WEDGES;
    if (filled(before) == filled(after)) {
      return length[k];
    }
    int inside = filled(before) ? before : after;
    return area[k] * length[inside] / area[inside];
  }

  private static double[] rays() {
    double[] rays = new double[2 * WEDGES];
    for (int k = 0; k < WEDGES; k++) {
      double direction = Math.PI / 2 + k * TURN;
      rays[2 * k] = Math.cos(direction);
      rays[2 * k + 1] = Math.sin(direction);
    }
    return rays;
  }

  /** A wedge's centroid lies t²/12r outside the wall's middle. */
  private double midRadius(int k) {
    double centroid = diagonal(momentY[k], momentN[k]) / area[k];
    double thickness = area[k] / (centroid * TURN);
    return centroid - thickness * thickness / (12 * centroid);
  }

  /** Of millimetres no square overflows. */
  private static double diagonal(double y, double n) {
    return Math.sqrt(y * y + n * n);
  }

  private boolean filled(int k) {
    return area[k] > 1e-9;
  }

  /** Change of the mid radius with direction; a jump where pieces begin to overlap is no slope. */
  private double slope(double[] radius, int k) {
    int before = (k + WEDGES - 1) % WEDGES;
    int after = (k + 1) % WEDGES;
    if (!filled(before) || !filled(after)) {
      return 0;
    }
    double slope = (radius[after] - radius[before]) / (2 * TURN);
    return Math.abs(slope) < radius[k] ? slope : 0;
  }

  private static int wedge(double y, double n) {
    double direction = Math.atan2(n, y) - Math.PI / 2;
    int k = (int) Math.floor((direction < 0 ? direction + 2 * Math.PI : direction) / TURN);
    return Math.min(WEDGES - 1, k);
  }

  /** Spreads the signed triangle from the pole to an edge over the wedges it spans. */
  private void edge(double y0, double n0, double y1, double n1, int first, int last) {
    double cross = y0 * n1 - y1 * n0;
    if (cross == 0) {
      return;
    }
    boolean forward = cross > 0;
    int k = first;
    double y = y0;
    double n = n0;
    for (int steps = 0; k != last && steps < WEDGES; steps++) {
      int ray = forward ? (k + 1) % WEDGES : k;
      double from = RAYS[2 * ray] * n0 - RAYS[2 * ray + 1] * y0;
      double to = RAYS[2 * ray] * n1 - RAYS[2 * ray + 1] * y1;
      double share = Math.max(0, Math.min(1, from / (from - to)));
      double cutY = y0 + share * (y1 - y0);
      double cutN = n0 + share * (n1 - n0);
      put(k, y, n, cutY, cutN);
      y = cutY;
      n = cutN;
      k = forward ? (k + 1) % WEDGES : (k + WEDGES - 1) % WEDGES;
    }
    put(k, y, n, y1, n1);
  }

  private void put(int k, double y0, double n0, double y1, double n1) {
    double triangle = (y0 * n1 - y1 * n0) / 2;
    area[k] += triangle;
    momentY[k] += triangle * (y0 + y1) / 3;
    momentN[k] += triangle * (n0 + n1) / 3;
  }

  /** Whether there is wall in every direction. */
  boolean closed() {
    return closed;
  }

  /** Torsion constant (mm⁴). */
  double torsion() {
    double cubes = 0;
    double compliance = 0;
    for (int k = 0; k < WEDGES; k++) {
      if (filled(k)) {
        double thickness = area[k] / length[k];
        cubes += length[k] * thickness * thickness * thickness / 3;
        compliance += length[k] / thickness;
      }
    }
    return closed ? 4 * enclosed * enclosed / compliance : cubes;
  }

  /**
   * Shear area for a force along n (mm²).
   *
   * @param moments those of the same section
   */
  double shearArea(AreaMoments moments) {
    double first = 0;
    double energy = 0;
    for (int k = 0; k < WEDGES; k++) {
      if (filled(k)) {
        double own = momentN[k] - area[k] * moments.n();
        double middle = first + own / 2;
        double flow = middle * length[k] / area[k];
        energy += flow * flow * area[k];
        first += own;
      }
    }
    return energy > 0 ? moments.aboutY() * moments.aboutY() / energy : 0;
  }
}
