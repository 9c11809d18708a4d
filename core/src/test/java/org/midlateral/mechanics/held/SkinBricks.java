package org.midlateral.mechanics.held;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.held.ContactDeck.Bone;
import org.midlateral.mechanics.held.ContactDeck.Cell;
import org.midlateral.mechanics.held.ContactDeck.Tissue;

/**
 * The soft tissue under a trough as quadratic bricks of 20 nodes, one from bone to skin, cut
 * through at the joint's axis; written for CalculiX. Their sides follow the trough's edges. Each
 * has its own axes: out of the skin, round the finger and along it.
 */
final class SkinBricks {
  /** Length of a brick (mm). */
  private static final double EDGE = 3;

  /** Bricks beside and beyond the trough where neighbours pull at each other. */
  private static final int BESIDE = 2;

  /** Moduli across and of shear of bricks that are columns, over that outward: next to none. */
  private static final double COLUMN = 0.01;

  /**
   * A brick's nodes in a grid of half its edges: steps along the finger, round it and out of it.
   * Counter-clockwise seen from outside is from proximal to distal, then back along the girth.
   */
  private static final int[][] NODES = {
    {0, 0, 0}, {0, 2, 0}, {2, 2, 0}, {2, 0, 0}, {0, 0, 2}, {0, 2, 2}, {2, 2, 2}, {2, 0, 2},
    {0, 1, 0}, {1, 2, 0}, {2, 1, 0}, {1, 0, 0}, {0, 1, 2}, {1, 2, 2}, {2, 1, 2}, {1, 0, 2},
    {0, 0, 1}, {0, 2, 1}, {2, 2, 1}, {2, 0, 1}
  };

  private final DigitSurface skin;
  private final UnderTrough under;
  private final Tissue tissue;
  private final int beside;
  private final StringBuilder nodes = new StringBuilder();
  private final StringBuilder elements = new StringBuilder();
  private final StringBuilder sections = new StringBuilder();
  private final StringBuilder outside = new StringBuilder();
  private final StringBuilder axes = new StringBuilder();
  private final List<Bone> bones = new ArrayList<>();
  private final List<Cell> cells = new ArrayList<>();
  private final List<Guided> guided = new ArrayList<>();
  private int lastNode;
  private int lastElement;

  /**
   * A node of a column, which moves against the bone only out of the skin.
   *
   * @param round direction round the finger
   * @param along direction along it
   */
  record Guided(int id, Vector3D place, Vector3D round, Vector3D along, boolean distal) {}

  /** The skin at a place: the point, its derivatives to the second, and its normal. */
  private record Jet(Vector3D[] p, Vector3D out) {
    static Jet of(Slice slice, double t) {
      double[] jet = new double[18];
      slice.jet(t, jet);
      Vector3D[] p = new Vector3D[6];
      for (int k = 0; k < p.length; k++) {
        p[k] = Vector3D.of(jet[3 * k], jet[3 * k + 1], jet[3 * k + 2]);
      }
      return new Jet(p, p[1].cross(p[2]).normalize());
    }

    Vector3D round() {
      return p[1].normalize();
    }

    /** Area per step of angle and station (mm). */
    double area() {
      return p[1].cross(p[2]).norm();
    }

    /** Sum of the two curvatures, positive where the skin bulges (1/mm). */
    double curvature() {
      double e = p[1].dot(p[1]);
      double f = p[1].dot(p[2]);
      double g = p[2].dot(p[2]);
      double sum = p[3].dot(out) * g - 2 * p[4].dot(out) * f + p[5].dot(out) * e;
      return -sum / (e * g - f * f);
    }
  }

  /**
   * The bricks under a trough.
   *
   * @param lastNode number of the last node there is
   * @param lastElement number of the last element there is
   */
  SkinBricks(UnderTrough under, DigitSurface skin, Tissue tissue, int lastNode, int lastElement) {
    this.under = under;
    this.skin = skin;
    this.tissue = tissue;
    this.lastNode = lastNode;
    this.lastElement = lastElement;
    beside = tissue.columns() ? 0 : BESIDE;
    lay(under.from() - beside * EDGE, skin.pipAxis(), false);
    lay(skin.pipAxis(), Math.min(under.to() + beside * EDGE, skin.pulpEnd() - 1), true);
  }

  private void lay(double from, double to, boolean distal) {
    int along = (int) Math.round((to - from) / EDGE);
    double radius = skin.circumference(skin.pipAxis()) / (2 * Math.PI);
    int covered = (int) Math.round(Math.PI * radius / EDGE);
    int across = covered + 2 * beside;
    double ds = (to - from) / along;
    int[][][] grid = new int[2 * along + 1][2 * across + 1][3];
    for (int i = 0; i <= 2 * along; i++) {
      double[] sides = sides(from + ds * i / 2, covered, EDGE / radius);
      for (int j = 0; j <= 2 * across; j++) {
        if (i % 2 == 0 || j % 2 == 0) {
          place(grid[i][j], from + ds * i / 2, sides[j], i % 2 + j % 2 == 0, distal);
        }
      }
    }
    for (int i = 0; i < along; i++) {
      double s = from + ds * (i + 0.5);
      double[] sides = sides(s, covered, EDGE / radius);
      for (int j = 0; j < across; j++) {
        Jet middle = Jet.of(skin.slice(s), sides[2 * j + 1]);
        brick(grid, 2 * i, 2 * j, middle);
        cell(grid, 2 * i, 2 * j, middle, ds * (sides[2 * j + 2] - sides[2 * j]));
      }
    }
  }

  /** Angles of the bricks' sides and middles at a station, even under the trough (rad). */
  private double[] sides(double station, int covered, double step) {
    double[] reach = under.angles(station);
    double[] sides = new double[2 * (covered + 2 * beside) + 1];
    for (int j = 0; j < sides.length; j++) {
      double side = j / 2.0 - beside;
      double inside = Math.max(0, Math.min(covered, side));
      sides[j] = reach[0] + (reach[1] - reach[0]) * inside / covered + (side - inside) * step;
    }
    return sides;
  }

  /**
   * Nodes from bone to skin. The bone lies where a column that narrows toward it, and is not held
   * by its neighbours, gives way as a layer of the stated thickness does.
   */
  private void place(int[] column, double s, double t, boolean corner, boolean distal) {
    Slice slice = skin.slice(s);
    Jet here = Jet.of(slice, t);
    double thickness = tissue.thickness() * slice.circumference() / (2 * Math.PI);
    double bend = here.curvature();
    double deep = -Math.expm1(-bend * thickness) / bend;
    for (int k = 0; k < 3; k += corner ? 1 : 2) {
      column[k] = ++lastNode;
      Vector3D at = here.p[0].subtract(here.out.multiply(deep * (2 - k) / 2));
      nodes.append(lastNode).append(line(at));
      if (k == 0) {
        bones.add(new Bone(lastNode, at, s, distal));
      } else if (tissue.columns()) {
        guided.add(new Guided(lastNode, at, here.round(), here.out.cross(here.round()), distal));
        axes.append("*NSET, NSET=GUIDED" + lastNode + "\n" + lastNode + "\n");
        axes.append("*TRANSFORM, TYPE=R, NSET=GUIDED" + lastNode + "\n");
        axes.append(line(here.out, here.round()).substring(1));
      }
    }
  }

  private void brick(int[][][] grid, int i, int j, Jet middle) {
    String name = "BRICK" + ++lastElement;
    elements.append("*ELEMENT, TYPE=C3D20, ELSET=" + name + "\n" + lastElement);
    for (int n = 0; n < NODES.length; n++) {
      int[] step = NODES[n];
      elements.append(n == 10 ? ",\n" : ",").append(grid[i + step[0]][j + step[1]][step[2]]);
    }
    elements.append("\n");
    outside.append(lastElement).append(",S2\n");
    sections.append("*ORIENTATION, SYSTEM=RECTANGULAR, NAME=" + name + "\n");
    sections.append(line(middle.out, middle.round()).substring(1));
    sections.append("*SOLID SECTION, MATERIAL=SOFT, ELSET=" + name + ", ORIENTATION=" + name);
    sections.append("\n");
  }

  private void cell(int[][][] grid, int i, int j, Jet middle, double size) {
    List<Integer> below = new ArrayList<>();
    for (int[] step : NODES) {
      if (step[2] == 0) {
        below.add(grid[i + step[0]][j + step[1]][0]);
      }
    }
    cells.add(new Cell(below, middle.p[0], middle.out, size * middle.area()));
  }

  private static String line(Vector3D... vectors) {
    StringBuilder line = new StringBuilder();
    for (Vector3D v : vectors) {
      line.append(String.format(Locale.ROOT, ",%.9f,%.9f,%.9f", v.getX(), v.getY(), v.getZ()));
    }
    return line.append("\n").toString();
  }

  /** Lines of the nodes. */
  String nodes() {
    return nodes.toString();
  }

  /** Blocks of the elements. */
  String elements() {
    return elements.toString();
  }

  /** The material, the bricks' axes and those of the guided nodes. */
  String sections() {
    double across = (tissue.columns() ? COLUMN : 1) * tissue.modulus();
    double shear = across / 2;
    String moduli =
        tissue.modulus() + ("," + across).repeat(2) + ",0,0,0" + ("," + shear).repeat(2);
    String material = "*MATERIAL, NAME=SOFT\n*ELASTIC, TYPE=ENGINEERING CONSTANTS\n";
    return material + moduli + ",\n" + shear + "\n" + sections + axes;
  }

  /** The faces of the skin. */
  String outside() {
    return outside.toString();
  }

  /** The nodes on the bones. */
  List<Bone> bones() {
    return bones;
  }

  /** The bricks' faces on the bones. */
  List<Cell> cells() {
    return cells;
  }

  /** The nodes of columns that do not lie on the bones. */
  List<Guided> guided() {
    return guided;
  }

  int lastElement() {
    return lastElement;
  }
}
