package org.midlateral.document.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.mesh.TriangleMesh;

/** Finds the edge of an open surface. */
public final class Borders {
  private Borders() {}

  /**
   * The edge as a polygon: the loop that is largest is the shell, the others are holes.
   *
   * @param flat places of the vertices in the plane, x and y in turn (mm)
   */
  static Polygon polygon(TriangleMesh mesh, double[] flat) {
    GeometryFactory geometry = new GeometryFactory();
    List<LinearRing> rings = new ArrayList<>();
    for (List<Integer> loop : loops(mesh)) {
      List<Coordinate> ring = new ArrayList<>();
      loop.forEach(v -> ring.add(new Coordinate(flat[2 * v], flat[2 * v + 1])));
      ring.add(ring.get(0).copy());
      rings.add(geometry.createLinearRing(ring.toArray(Coordinate[]::new)));
    }
    rings.sort(Comparator.comparingDouble(ring -> -geometry.createPolygon(ring).getArea()));
    return geometry.createPolygon(
        rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  /** The vertices of the longest loop of the edge. */
  public static List<Integer> shell(TriangleMesh mesh) {
    return loops(mesh).stream().max(Comparator.comparingInt(List::size)).orElseThrow();
  }

  private static List<List<Integer>> loops(TriangleMesh mesh) {
    Map<Integer, Integer> next = new TreeMap<>(borderEdges(mesh));
    List<List<Integer>> loops = new ArrayList<>();
    while (!next.isEmpty()) {
      List<Integer> loop = new ArrayList<>();
      Integer at = next.keySet().iterator().next();
      while (at != null) {
        loop.add(at);
        at = next.remove(at);
      }
      loop.remove(loop.size() - 1);
      loops.add(loop);
    }
    return loops;
  }

  /** Edges with a triangle on one side only, each from its first vertex to its second. */
  private static Map<Integer, Integer> borderEdges(TriangleMesh mesh) {
    Map<Long, int[]> open = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, (c + 1) % 3);
        if (open.remove((long) b * mesh.vertexCount() + a) == null) {
          open.put((long) a * mesh.vertexCount() + b, new int[] {a, b});
        }
      }
    }
    Map<Integer, Integer> next = new HashMap<>();
    open.values().forEach(edge -> next.put(edge[0], edge[1]));
    return next;
  }
}
