package org.midlateral.mechanics.held;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.SkinFoot;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;

/**
 * The mid-surface of one piece up to its finished edge: the middles between inner and outer
 * vertices, and one more node on the rim's crest beside each vertex of the edge. The front is the
 * outside.
 *
 * <p>The rim is half a disc of the wall's thickness. The strip between edge and crest thins toward
 * the crest so far that its section has the area of that half disc.
 */
final class ShellLayer {
  /** Wall at the crest over the wall: (1 + this) / 2 times half a wall is pi/8 walls. */
  private static final double CREST = Math.PI / 2 - 1;

  final Solid solid;

  /** Nodes, n by 3, row-major (mm); the crest's come last. */
  final double[] xyz;

  final double[] wall;
  final int[] corners;

  /** Station on the skin below each node (mm). */
  final double[] station;

  /**
   * Angle of each node about the centreline from the piece's own midline (rad), all of them the
   * same way round: toward +y from the volar midline, toward -y from the dorsal one.
   */
  final double[] turn;

  /** Number of nodes that are not on the crest. */
  final int inner;

  /** Edges of the finished edge, pairs of nodes. */
  final int[] crest;

  /**
   * The layer of a solid.
   *
   * @throws NotComputable where the mesh leaves a vertex of its edge out
   */
  ShellLayer(Solid solid) throws NotComputable {
    this.solid = solid;
    TriangleMesh mesh = solid.mesh();
    inner = solid.innerVertices();
    int edge = solid.edgeVertices();
    int n = inner + edge;
    xyz = Arrays.copyOf(middles(mesh), 3 * n);
    wall = new double[n];
    station = new double[n];
    turn = new double[n];
    for (int i = 0; i < inner; i++) {
      wall[i] = mesh.vertex(i).distance(mesh.vertex(inner + i));
      station[i] = solid.station(i);
    }
    int[] own = new int[3 * solid.innerTriangles()];
    for (int k = 0; k < own.length; k++) {
      own[k] = mesh.corner(solid.innerTriangles() + k / 3, k % 3) - inner;
    }
    int[] next = next(own, edge);
    corners = Arrays.copyOf(own, own.length + 6 * edge);
    crest = new int[2 * edge];
    extend(next, own.length);
    findTurns();
  }

  private double[] middles(TriangleMesh mesh) {
    double[] middles = new double[3 * inner];
    double[] all = mesh.coordinates();
    for (int k = 0; k < middles.length; k++) {
      middles[k] = (all[k] + all[3 * inner + k]) / 2;
    }
    return middles;
  }

  /** For each vertex on an edge the one that follows, with the piece on the left. */
  private static int[] next(int[] corners, int edge) throws NotComputable {
    Set<Long> sides = new HashSet<>();
    for (int k = 0; k < corners.length; k++) {
      sides.add(side(corners[k], following(corners, k)));
    }
    int[] next = new int[edge];
    Arrays.fill(next, -1);
    for (int k = 0; k < corners.length; k++) {
      int a = corners[k];
      int b = following(corners, k);
      if (a < edge && b < edge && !sides.contains(side(b, a))) {
        next[a] = b;
      }
    }
    if (Arrays.stream(next).anyMatch(follower -> follower < 0)) {
      throw new NotComputable("the mesh for computing leaves out a part of the piece's edge");
    }
    return next;
  }

  private static int following(int[] corners, int k) {
    return corners[k % 3 == 2 ? k - 2 : k + 1];
  }

  private static long side(int a, int b) {
    return (long) a << 32 | b;
  }

  private void extend(int[] next, int filled) {
    SkinFoot foot = new SkinFoot(solid.piece().digit());
    int[] before = new int[next.length];
    for (int i = 0; i < next.length; i++) {
      before[next[i]] = i;
    }
    int at = filled;
    for (int i = 0; i < next.length; i++) {
      Vector3D along = node(before[i]).vectorTo(node(next[i]));
      Vector3D out = along.cross(normal(i)).normalize();
      int c = inner + i;
      Vector3D place = node(i).add(out.multiply(wall[i] / 2));
      System.arraycopy(place.toArray(), 0, xyz, 3 * c, 3);
      wall[c] = CREST * wall[i];
      foot.find(place.getX(), place.getY(), place.getZ(), solid.skinAngle(i), station[i]);
      station[c] = foot.station();
      int j = next[i];
      int d = inner + j;
      for (int corner : new int[] {j, i, c, j, c, d}) {
        corners[at++] = corner;
      }
      crest[2 * i] = c;
      crest[2 * i + 1] = d;
    }
  }

  private void findTurns() {
    for (int i = 0; i < turn.length; i++) {
      turn[i] = turn(solid.piece(), station[i], node(i));
    }
  }

  /** Angle of a point about the centreline at a station, from the piece's own midline (rad). */
  static double turn(Piece piece, double station, Vector3D point) {
    DigitSurface digit = piece.digit();
    Vector3D arm = digit.centre(station).vectorTo(point);
    double up = arm.dot(digit.dorsal(station));
    return piece.midline().ownAngle(Math.atan2(arm.getY(), -up));
  }

  int nodeCount() {
    return wall.length;
  }

  Vector3D node(int i) {
    return Vector3D.of(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  /** The wall's direction at a node that is not on the crest, or beside one that is. */
  Vector3D normal(int i) {
    int k = i < inner ? i : i - inner;
    return solid.mesh().vertex(k).vectorTo(solid.mesh().vertex(inner + k)).normalize();
  }

  /** The node on the crest that is nearest to a point, counted in this layer. */
  int nearestOnCrest(Vector3D point) {
    int best = inner;
    double least = Double.POSITIVE_INFINITY;
    for (int i = inner; i < nodeCount(); i++) {
      double dx = xyz[3 * i] - point.getX();
      double dy = xyz[3 * i + 1] - point.getY();
      double dz = xyz[3 * i + 2] - point.getZ();
      double distance = dx * dx + dy * dy + dz * dz;
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }
}
