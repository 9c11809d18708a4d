package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.cut.DesignRefused;
import org.midlateral.digit.Slice;
import org.midlateral.trough.Piece;

/**
 * Makes the closed surface of a piece: its domain is triangulated once, lifted to the inner and the
 * outer surface, and closed by a half-round rim.
 */
public final class SolidMesher {
  /** Sagitta of the rim's round between two of its lines (mm). */
  private static final double RIM_SAGITTA = 0.016;

  /**
   * Width of a strip of the rim over the edge length: the rim then has no more share in the error
   * of a cross-section's second moment than the faces, and loses it with the square of the edge.
   */
  private static final double RIM_STRIP = 0.25;

  private final Piece piece;
  private final List<EdgeLoop> loops;
  private final Contours contours;
  private final PlaneMesh plane;
  private final int lines;
  private final double[] xyz;
  private final int[] corners;
  private int vertices;
  private int used;

  private SolidMesher(
      Piece piece, List<EdgeLoop> loops, Contours contours, PlaneMesh plane, int lines) {
    this.piece = piece;
    this.loops = loops;
    this.contours = contours;
    this.plane = plane;
    this.lines = lines;
    int n = plane.size();
    this.xyz = new double[3 * (2 * n + (lines - 1) * plane.onLoops())];
    this.corners = new int[2 * plane.corners().length + 6 * lines * plane.onLoops()];
  }

  /**
   * Meshes a piece.
   *
   * @param edgeLength of the triangles (mm); they are finer where the surface bends sharply
   * @throws DesignRefused where the surface folds at an edge
   */
  public static Solid mesh(Piece piece, double edgeLength) throws DesignRefused {
    return mesh(piece, edgeLength, 1);
  }

  /**
   * Meshes a piece more finely or more coarsely than usual.
   *
   * @param edgeLength of the triangles (mm)
   * @param fineness 1 as usual; less makes all triangles so much smaller, more so much larger
   * @throws DesignRefused where the surface folds at an edge
   */
  public static Solid mesh(Piece piece, double edgeLength, double fineness) throws DesignRefused {
    Chart chart = Chart.of(piece);
    OffsetSurface surface = new OffsetSurface(piece);
    Density density = Density.of(piece, chart, edgeLength, fineness);
    Polygon polygon = piece.outline().polygon();
    List<EdgeLoop> loops = new ArrayList<>();
    loops.add(EdgeLoop.inside(piece, surface, polygon.getExteriorRing(), false, chart, density));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      LineString vent = polygon.getInteriorRingN(i);
      loops.add(EdgeLoop.inside(piece, surface, vent, true, chart, density));
    }
    Contours contours = Contours.of(piece, density);
    PlaneMesh plane = PlaneMesh.fill(loops, contours, chart, density);
    SolidMesher mesher =
        new SolidMesher(piece, loops, contours, plane, rimLines(piece.wall() / 2, edgeLength));
    mesher.lift(surface);
    mesher.faces();
    int edge = 0;
    for (EdgeLoop loop : loops) {
      mesher.rim(loop, edge);
      edge += loop.vertices();
    }
    return mesher.solid(edgeLength);
  }

  /** Number of strips round the rim: even, since every second line stands half a step on. */
  private static int rimLines(double radius, double edgeLength) {
    double round = Math.PI / (2 * Math.acos(1 - RIM_SAGITTA / radius));
    double fine = Math.PI * radius / (RIM_STRIP * edgeLength);
    return 2 * (int) Math.ceil(Math.max(round, fine) / 2);
  }

  private void lift(OffsetSurface surface) {
    int n = plane.size();
    double[] frame = new double[9];
    int at = 0;
    for (EdgeLoop loop : loops) {
      for (int i = 0; i < loop.vertices(); i++) {
        loop.frame(2 * i, frame);
        put(at++, n, 0, frame);
      }
    }
    Slice slice = null;
    boolean uniform = false;
    for (int i = plane.onLoops(); i < n; i++) {
      double s = plane.station(i);
      if (slice == null || slice.station() != s) {
        slice = piece.digit().slice(s);
        uniform = piece.gap().uniformAt(s);
      }
      surface.at(slice, plane.angle(i), uniform, frame, 0);
      int c = i - plane.onLoops();
      put(
          i,
          n,
          c < contours.size() ? contours.height(c) : contours.height(piece, slice, plane.angle(i)),
          frame);
    }
    vertices = 2 * n;
  }

  private void put(int i, int n, double raised, double[] frame) {
    for (int k = 0; k < 3; k++) {
      xyz[3 * i + k] = frame[k];
      xyz[3 * (n + i) + k] = frame[k] + (piece.wall() + raised) * frame[3 + k];
    }
  }

  private void faces() {
    int[] plain = plane.corners();
    int n = plane.size();
    for (int t = 0; t < plain.length; t += 3) {
      triangle(plain[t], plain[t + 2], plain[t + 1]);
    }
    for (int t = 0; t < plain.length; t += 3) {
      triangle(n + plain[t], n + plain[t + 1], n + plain[t + 2]);
    }
  }

  /**
   * Half a circle from the inner to the outer edge, in lines that stand half a step on by turns.
   */
  private void rim(EdgeLoop loop, int edge) {
    int m = loop.vertices();
    int first = vertices;
    double[] frame = new double[9];
    double radius = piece.wall() / 2;
    for (int line = 1; line < lines; line++) {
      double turn = Math.PI * line / lines;
      double up = radius * (1 - Math.cos(turn));
      double out = radius * Math.sin(turn);
      for (int i = 0; i < m; i++) {
        loop.frame(2 * i + line % 2, frame);
        for (int k = 0; k < 3; k++) {
          xyz[3 * vertices + k] = frame[k] + up * frame[3 + k] + out * frame[6 + k];
        }
        vertices++;
      }
    }
    for (int line = 0; line < lines; line++) {
      int low = line == 0 ? edge : first + (line - 1) * m;
      int high = line == lines - 1 ? plane.size() + edge : first + line * m;
      for (int i = 0; i < m; i++) {
        int j = (i + 1) % m;
        if (line % 2 == 0) {
          triangle(low + i, low + j, high + i);
          triangle(low + j, high + j, high + i);
        } else {
          triangle(low + i, high + j, high + i);
          triangle(low + i, low + j, high + j);
        }
      }
    }
  }

  private void triangle(int a, int b, int c) {
    corners[used++] = a;
    corners[used++] = b;
    corners[used++] = c;
  }

  private Solid solid(double edgeLength) {
    int n = plane.size();
    double[] angle = new double[n];
    double[] station = new double[n];
    for (int i = 0; i < n; i++) {
      angle[i] = plane.angle(i);
      station[i] = plane.station(i);
    }
    return new Solid(
        piece,
        new TriangleMesh(xyz, corners),
        angle,
        station,
        plane.corners().length / 3,
        plane.onLoops(),
        loops.get(0).vertices(),
        edgeLength);
  }
}
