package org.midlateral.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Piece;
import org.midlateral.work.Interruption;

/**
 * Makes the closed surface of a piece: its domain is triangulated once, lifted to the inner and the
 * outer surface, and closed by a half-round rim.
 */
public final class SolidMesher {
  private final Piece piece;
  private final List<EdgeLoop> loops;
  private final Lifted points;
  private final int[] plain;
  private final int onLoops;
  private final RimArc arc;
  private final double[] xyz;
  private final int[] corners;
  private int vertices;
  private int used;

  private SolidMesher(
      Piece piece, List<EdgeLoop> loops, Lifted points, int[] plain, int onLoops, RimArc arc) {
    this.piece = piece;
    this.loops = loops;
    this.points = points;
    this.plain = plain;
    this.onLoops = onLoops;
    this.arc = arc;
    this.xyz = new double[3 * (2 * points.size() + (arc.strips() - 1) * onLoops)];
    this.corners = new int[2 * plain.length + 6 * arc.strips() * onLoops];
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
    SizingField density = SizingField.of(piece, chart, edgeLength, fineness);
    Interruption.ifInterrupted();
    Polygon polygon = piece.outline().polygon();
    List<EdgeLoop> loops = new ArrayList<>();
    loops.add(EdgeLoop.inside(piece, surface, polygon.getExteriorRing(), chart, density));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      loops.add(EdgeLoop.inside(piece, surface, polygon.getInteriorRingN(i), chart, density));
    }
    Interruption.ifInterrupted();
    Contours contours = Contours.of(piece, density);
    PlaneMesh plane = PlaneMesh.fill(loops, contours, chart, density);
    Lifted points = Lifted.of(piece, surface, loops, contours, plane);
    Interruption.ifInterrupted();
    int[] refined = Refinement.of(points, plane.triangles(), chart, fineness);
    int[] plain = points.inOrder(refined, plane.onLoops());
    SolidMesher mesher =
        new SolidMesher(
            piece, loops, points, plain, plane.onLoops(), RimArc.of(piece.wall() / 2, edgeLength));
    mesher.places();
    mesher.faces();
    int edge = 0;
    for (EdgeLoop loop : loops) {
      mesher.rim(loop, edge);
      edge += loop.vertices();
    }
    return mesher.solid(edgeLength);
  }

  private void places() {
    int n = points.size();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 3; k++) {
        double inner = points.frame(i, k);
        xyz[3 * i + k] = inner;
        xyz[3 * (n + i) + k] = inner + points.thickness(i) * points.frame(i, 3 + k);
      }
    }
    vertices = 2 * n;
  }

  private void faces() {
    int n = points.size();
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
    int lines = arc.strips();
    for (int line = 1; line < lines; line++) {
      double turn = Math.PI * line / lines;
      double reach = radius * arc.radius(line);
      double up = radius - reach * Math.cos(turn);
      double out = reach * Math.sin(turn);
      for (int i = 0; i < m; i++) {
        loop.frame(2 * i + line % 2, frame);
        for (int k = 0; k < 3; k++) {
          xyz[3 * vertices + k] = frame[k] + up * frame[3 + k] + out * frame[6 + k];
        }
        vertices++;
      }
    }
    for (int i = 0; i < m; i++) {
      int j = (i + 1) % m;
      for (int line = 0; line < lines; line++) {
        int low = line == 0 ? edge : first + (line - 1) * m;
        int high = line == lines - 1 ? points.size() + edge : first + line * m;
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
    int n = points.size();
    double[] angle = new double[n];
    double[] station = new double[n];
    for (int i = 0; i < n; i++) {
      angle[i] = points.angle(i);
      station[i] = points.station(i);
    }
    return new Solid(
        piece,
        new TriangleMesh(xyz, corners),
        angle,
        station,
        plain.length / 3,
        onLoops,
        loops.get(0).vertices(),
        edgeLength);
  }
}
