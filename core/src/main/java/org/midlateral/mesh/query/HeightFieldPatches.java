package org.midlateral.mesh.query;

import java.util.Arrays;
import org.midlateral.mesh.ExactOrientation;
import org.midlateral.mesh.HalfEdges;

/**
 * Parts of a closed oriented surface that are known not to meet themselves, each seen along a
 * coordinate axis as a flat sheet.
 *
 * <p>A part is grown over triangles whose vertices face one axis most. It is a sheet if, seen along
 * that axis, (1) all its triangles turn the same way, (2) those round a vertex inside go round it
 * once, (3) those at a vertex of its border leave a ray free, and (4) no two sides of its border
 * touch but in the vertex they share. By (1) to (3) the view is one to one near every point; with
 * (4) it is one to one throughout. For over each region that the borders cut the plane into, a view
 * that is one to one nearby is a number of whole copies, since going round a border once leads back
 * to the same copy; crossing a border adds or ends one copy and leads every other one on; so the
 * copies of a connected part hang together like a tree over the tree of regions, and no two lie
 * over one region. All is decided exactly, since dropping a coordinate rounds nothing.
 *
 * <p>Where a part does not pass, the triangles at the vertices that speak against it are left out,
 * and what remains is tried again. Those left out are not at fault; they are to be tried pair by
 * pair.
 */
public final class HeightFieldPatches {
  /** Smaller parts are not worth it. */
  private static final int LEAST = 64;

  /** So often a part is tried with fewer triangles. */
  private static final int ROUNDS = 4;

  private static final int UNKNOWN = -2;
  private static final int LATER = -3;
  private static final int NONE = -1;

  private final double[] xyz;
  private final int[] corners;
  private final int[] twin;
  private final byte[] axes;
  private final byte[] facing;

  /** By triangle. */
  private final int[] sheet;

  /** Triangles of the part that is being grown. */
  private final int[] part;

  /**
   * By vertex: the last part it was seen in, how often its triangles there cross each of four rays,
   * a byte each, and how many sides of the border begin at it.
   */
  private final int[] seen;

  private final int[] rays;
  private final int[] begins;

  /** Vertices that speak against the part. */
  private final boolean[] bad;

  private HeightFieldPatches(double[] xyz, int[] corners, int[] twin, byte[] axes) {
    this.xyz = xyz;
    this.corners = corners;
    this.twin = twin;
    this.axes = axes;
    this.facing = new byte[corners.length / 3];
    this.sheet = new int[corners.length / 3];
    this.part = new int[corners.length / 3];
    this.seen = new int[xyz.length / 3];
    this.rays = new int[xyz.length / 3];
    this.begins = new int[xyz.length / 3];
    this.bad = new boolean[xyz.length / 3];
  }

  /**
   * Finds the sheets of a mesh.
   *
   * @param xyz coordinates, n by 3, row-major
   * @param corners of a closed, oriented surface: the proof needs it
   * @param twin of each side, as in {@link HalfEdges}
   * @param axes that the vertices face most, as in {@link VertexStars}
   * @return by triangle, the number of its sheet, or -1
   */
  public static int[] of(double[] xyz, int[] corners, int[] twin, byte[] axes) {
    HeightFieldPatches sheets = new HeightFieldPatches(xyz, corners, twin, axes);
    for (int t = 0; t < sheets.facing.length; t++) {
      sheets.facing[t] = sheets.face(3 * t);
      sheets.sheet[t] = sheets.facing[t] == 0 ? NONE : UNKNOWN;
    }
    int number = 0;
    for (int round = 0; round < ROUNDS; round++) {
      for (int t = 0; t < sheets.sheet.length; t++) {
        if (sheets.sheet[t] == UNKNOWN) {
          sheets.tryPart(t, number++);
        }
      }
      sheets.again(round + 1 < ROUNDS ? UNKNOWN : NONE);
    }
    return sheets.sheet;
  }

  /** What becomes of the triangles of parts that did not pass. */
  private void again(int mark) {
    for (int t = 0; t < sheet.length; t++) {
      sheet[t] = sheet[t] == LATER ? mark : sheet[t];
    }
  }

  /** The axis that a triangle's three vertices face alike and it does too, or 0. */
  private byte face(int t) {
    int a = corners[t];
    int b = corners[t + 1];
    int c = corners[t + 2];
    byte axis = axes[a];
    if (axis != axes[b] || axis != axes[c]) {
      return 0;
    }
    int x = Math.abs(axis) % 3;
    return ExactOrientation.plane(xyz, a, b, c, x, (x + 1) % 3) == (axis > 0 ? 1 : -1) ? axis : 0;
  }

  private void tryPart(int first, int number) {
    int count = grow(first, number);
    if (count < LEAST) {
      for (int i = 0; i < count; i++) {
        sheet[part[i]] = NONE;
      }
    } else if (!isSheet(count, number)) {
      for (int i = 0; i < count; i++) {
        int t = 3 * part[i];
        boolean against = bad[corners[t]] || bad[corners[t + 1]] || bad[corners[t + 2]];
        sheet[part[i]] = against ? NONE : LATER;
      }
      Arrays.fill(bad, false);
    }
  }

  private int grow(int first, int number) {
    int count = 0;
    part[count++] = first;
    sheet[first] = number;
    for (int next = 0; next < count; next++) {
      for (int side = 3 * part[next]; side < 3 * part[next] + 3; side++) {
        int t = twin[side] / 3;
        if (sheet[t] == UNKNOWN && facing[t] == facing[first]) {
          sheet[t] = number;
          part[count++] = t;
        }
      }
    }
    return count;
  }

  private boolean isSheet(int count, int number) {
    int axis = facing[part[0]];
    int x = Math.abs(axis) % 3;
    int y = (x + 1) % 3;
    int[] border = new int[64];
    int sides = 0;
    for (int i = 0; i < count; i++) {
      for (int side = 3 * part[i]; side < 3 * part[i] + 3; side++) {
        see(side, axis > 0, x, y, number + 1);
        if (sheet[twin[side] / 3] != number) {
          if (sides == border.length) {
            border = Arrays.copyOf(border, 2 * sides);
          }
          border[sides++] = side;
        }
      }
    }
    return goesRound(border, sides, count)
        && !new PatchBoundary(xyz, corners, x, y, bad).touchesItself(Arrays.copyOf(border, sides));
  }

  /** Counts the rays from a side's first corner, along x and y, that its triangle holds. */
  private void see(int side, boolean front, int x, int y, int mark) {
    int v = corners[side];
    if (seen[v] != mark) {
      seen[v] = mark;
      rays[v] = 0;
      begins[v] = 0;
    }
    int after = corners[HalfEdges.after(side)];
    int before = corners[HalfEdges.before(side)];
    int a = 3 * (front ? after : before);
    int b = 3 * (front ? before : after);
    double vx = xyz[3 * v + x];
    double vy = xyz[3 * v + y];
    double ax = xyz[a + x];
    double ay = xyz[a + y];
    double bx = xyz[b + x];
    double by = xyz[b + y];
    if (ay < vy && by >= vy) {
      rays[v]++;
    }
    if (ay > vy && by <= vy) {
      rays[v] += 1 << 8;
    }
    if (ax > vx && bx <= vx) {
      rays[v] += 1 << 16;
    }
    if (ax < vx && bx >= vx) {
      rays[v] += 1 << 24;
    }
  }

  /** Whether triangles inside go round their vertices once, and those at the border not quite. */
  private boolean goesRound(int[] border, int sides, int count) {
    boolean round = true;
    for (int i = 0; i < sides; i++) {
      int v = corners[border[i]];
      begins[v]++;
      boolean free = false;
      for (int shift = 0; shift < 32; shift += 8) {
        free |= (rays[v] >>> shift & 0xff) == 0;
      }
      bad[v] = !free || begins[v] > 1;
      round &= !bad[v];
    }
    for (int i = 0; i < count; i++) {
      for (int side = 3 * part[i]; side < 3 * part[i] + 3; side++) {
        int v = corners[side];
        if (begins[v] == 0 && (rays[v] & 0xff) != 1) {
          bad[v] = true;
          round = false;
        }
      }
    }
    return round;
  }

  /** Sides of triangles seen along an axis. */
  private record PatchBoundary(double[] xyz, int[] corners, int x, int y, boolean[] bad) {

    /** Whether any two touch but in a vertex they share, and marks these; a sweep along x. */
    boolean touchesItself(int[] sides) {
      boolean touches = false;
      long[] keys = new long[sides.length];
      for (int i = 0; i < sides.length; i++) {
        // Rounding to floats keeps an order, so that no pair is passed over.
        int bits = Float.floatToIntBits((float) low(sides[i], x));
        keys[i] = (long) (bits ^ bits >> 31 & Integer.MAX_VALUE) << 32 | i;
      }
      Arrays.sort(keys);
      for (int i = 0; i < keys.length; i++) {
        int side = sides[(int) keys[i]];
        float end = (float) high(side, x);
        for (int j = i + 1; j < keys.length; j++) {
          int other = sides[(int) keys[j]];
          if ((float) low(other, x) > end) {
            break;
          }
          if (low(side, y) <= high(other, y)
              && low(other, y) <= high(side, y)
              && touch(side, other)) {
            touches = true;
            bad[corners[side]] = true;
            bad[corners[other]] = true;
          }
        }
      }
      return touches;
    }

    private double low(int side, int axis) {
      double from = xyz[3 * corners[side] + axis];
      double to = xyz[3 * corners[HalfEdges.after(side)] + axis];
      return from < to ? from : to;
    }

    private double high(int side, int axis) {
      double from = xyz[3 * corners[side] + axis];
      double to = xyz[3 * corners[HalfEdges.after(side)] + axis];
      return from > to ? from : to;
    }

    /** Two on one line count as touching where their boxes do. */
    private boolean touch(int side, int other) {
      int a = corners[side];
      int b = corners[HalfEdges.after(side)];
      int c = corners[other];
      int d = corners[HalfEdges.after(other)];
      if (a == c || a == d || b == c || b == d) {
        // Two sides at one vertex have the part's triangles between them, which leave a ray free.
        return a == c && b == d || a == d && b == c;
      }
      return ExactOrientation.plane(xyz, a, b, c, x, y) * ExactOrientation.plane(xyz, a, b, d, x, y)
              <= 0
          && ExactOrientation.plane(xyz, c, d, a, x, y) * ExactOrientation.plane(xyz, c, d, b, x, y)
              <= 0;
    }
  }
}
