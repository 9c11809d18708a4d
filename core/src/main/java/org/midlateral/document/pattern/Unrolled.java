package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.mesh.TriangleMesh;

/** A surface laid flat with the least distortion there is, and what distortion is left. */
public final class Unrolled {
  private final MidSurface surface;
  private final double[] flat;
  private final Polygon outline;
  private final Distortion mostStretched;
  private final Distortion mostGathered;

  private Unrolled(MidSurface surface, double[] flat) {
    this.surface = surface;
    this.flat = flat;
    this.outline = Borders.polygon(surface.mesh(), flat);
    List<Distortion> all = distortions();
    Comparator<Distortion> byStretch = Comparator.comparing(Distortion::stretch);
    this.mostStretched = all.stream().max(byStretch).orElseThrow();
    this.mostGathered = all.stream().min(byStretch).orElseThrow();
  }

  /** Lays a surface flat; it comes to lie as it does in the unrolled plane. */
  public static Unrolled of(MidSurface surface) {
    return new Unrolled(surface, Unrolling.flatten(surface));
  }

  /**
   * The greatest change of length between the flat sheet and the piece.
   *
   * @param stretch from flat to piece, as a share; negative where the sheet is pushed together
   * @param station where (mm)
   * @param girth where (mm)
   * @param flat where on the flat sheet (mm)
   */
  public record Distortion(double stretch, double station, double girth, PointMark flat) {}

  /** Its edge in the plane, with its holes; girth to the right, distal upward (mm). */
  public Polygon outline() {
    return (Polygon) outline.copy();
  }

  /** Beyond this the sheet must be worked, not only bent. Common practice, no source. */
  private static final double NOTICED = 0.02;

  /** Beyond this a flat outline does not come out as it should. Common practice, no source. */
  private static final double TOO_FAR = 0.10;

  /** Whether bending takes up all that is left. */
  public boolean bends() {
    return most() < NOTICED;
  }

  /** Whether so much is left that a sheet cut to this outline would not come out right. */
  public boolean isTooFar() {
    return most() > TOO_FAR;
  }

  private double most() {
    return Math.max(mostStretched().stretch(), -mostGathered().stretch());
  }

  /** Where the sheet must stretch most. */
  public Distortion mostStretched() {
    return mostStretched;
  }

  /** Where the sheet is pushed together most. */
  public Distortion mostGathered() {
    return mostGathered;
  }

  /** The line of one station, from one edge to the other. */
  public List<PointMark> level(double station) {
    return contour(surface.station(), station, surface.girth());
  }

  /** The line of one girth, from the proximal to the distal edge. */
  public List<PointMark> along(double girth) {
    return contour(surface.girth(), girth, surface.station());
  }

  private List<PointMark> contour(MidSurface.Values field, double value, MidSurface.Values order) {
    TriangleMesh mesh = surface.mesh();
    double[] off = new double[mesh.vertexCount()];
    for (int vertex = 0; vertex < off.length; vertex++) {
      off[vertex] = field.at(vertex) - value;
    }
    List<Coordinate> crossings = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, Unrolling.NEXT[c]);
        double u = off[a];
        double v = off[b];
        if (u < 0 != v < 0) {
          double share = u / (u - v);
          double x = flat[2 * a] + share * (flat[2 * b] - flat[2 * a]);
          double y = flat[2 * a + 1] + share * (flat[2 * b + 1] - flat[2 * a + 1]);
          crossings.add(new Coordinate(x, y, order.at(a) + share * (order.at(b) - order.at(a))));
        }
      }
    }
    crossings.sort(Comparator.comparingDouble(Coordinate::getZ));
    return crossings.stream().map(c -> new PointMark(c.x, c.y)).toList();
  }

  /** Both principal stretches of every triangle. */
  private List<Distortion> distortions() {
    TriangleMesh mesh = surface.mesh();
    List<Distortion> all = new ArrayList<>(2 * mesh.triangleCount());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.corner(t, 0);
      int b = mesh.corner(t, 1);
      int c = mesh.corner(t, 2);
      double[] stretch = stretches(a, b, c);
      double station = mean(surface.station(), a, b, c);
      double girth = mean(surface.girth(), a, b, c);
      PointMark place =
          new PointMark(mean(v -> flat[2 * v], a, b, c), mean(v -> flat[2 * v + 1], a, b, c));
      all.add(new Distortion(stretch[0] - 1, station, girth, place));
      all.add(new Distortion(stretch[1] - 1, station, girth, place));
    }
    return all;
  }

  private static double mean(MidSurface.Values values, int a, int b, int c) {
    return (values.at(a) + values.at(b) + values.at(c)) / 3;
  }

  /** Greatest and least length of what was a unit length on the flat sheet. */
  private double[] stretches(int a, int b, int c) {
    double ux = flat[2 * b] - flat[2 * a];
    double uy = flat[2 * b + 1] - flat[2 * a + 1];
    double vx = flat[2 * c] - flat[2 * a];
    double vy = flat[2 * c + 1] - flat[2 * a + 1];
    double det = ux * vy - uy * vx;
    var p = surface.mesh().vertex(a).vectorTo(surface.mesh().vertex(b));
    var q = surface.mesh().vertex(a).vectorTo(surface.mesh().vertex(c));
    // Columns of the map from the plane to the surface: the images of the two unit vectors.
    var x = p.multiply(vy / det).subtract(q.multiply(uy / det));
    var y = q.multiply(ux / det).subtract(p.multiply(vx / det));
    double half = (x.normSq() + y.normSq()) / 2;
    double apart = Math.hypot((x.normSq() - y.normSq()) / 2, x.dot(y));
    return new double[] {Math.sqrt(half + apart), Math.sqrt(Math.max(0, half - apart))};
  }
}
