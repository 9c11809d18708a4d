package org.midlateral.mesh;

import java.util.Arrays;

/**
 * How the triangles of a mesh hang together, judged by vertex numbers alone.
 *
 * @param triangles number of triangles
 * @param vertices number of vertices
 * @param edges number of pairs of vertices joined by a triangle's side
 * @param openEdges edges with one triangle
 * @param tangledEdges edges with more than two triangles, or with two that run the same way
 * @param pinchedVertices vertices at which the triangles do not form one fan
 * @param unusedVertices vertices that belong to no triangle
 * @param shells number of connected pieces
 */
public record MeshTopology(
    int triangles,
    int vertices,
    int edges,
    int openEdges,
    int tangledEdges,
    int pinchedVertices,
    int unusedVertices,
    int shells) {

  /**
   * Counts a mesh.
   *
   * @param corners vertex numbers, m by 3, row-major
   * @param sides of the same triangles
   */
  public static MeshTopology of(int vertices, int[] corners, HalfEdges sides) {
    int[] piece = pieces(vertices, corners);
    boolean[] used = new boolean[vertices];
    for (int v : corners) {
      used[v] = true;
    }
    int unused = 0;
    int shells = 0;
    for (int v = 0; v < vertices; v++) {
      unused += used[v] ? 0 : 1;
      shells += used[v] && piece[v] == v ? 1 : 0;
    }
    return new MeshTopology(
        corners.length / 3,
        vertices,
        sides.edges,
        sides.open,
        sides.tangled,
        pinched(vertices, corners, sides.twin),
        unused,
        shells);
  }

  /** Vertices less edges plus triangles: 2 - 2·holes for one closed shell. */
  public int eulerCharacteristic() {
    return vertices - edges + triangles;
  }

  /** Whether every edge is shared by exactly two triangles that run opposite ways along it. */
  public boolean closed() {
    return triangles > 0 && openEdges == 0 && tangledEdges == 0 && pinchedVertices == 0;
  }

  /** Number of holes through the solid, of all its shells together; 0 for an open mesh. */
  public int holes() {
    return closed() ? shells - (eulerCharacteristic() - unusedVertices) / 2 : 0;
  }

  /** Union-find over the vertices: every vertex ends up with the root of its piece. */
  private static int[] pieces(int vertices, int[] corners) {
    int[] parent = new int[vertices];
    Arrays.setAll(parent, v -> v);
    for (int t = 0; t < corners.length; t += 3) {
      int a = root(parent, corners[t]);
      parent[root(parent, corners[t + 1])] = a;
      parent[root(parent, corners[t + 2])] = a;
    }
    return parent;
  }

  private static int root(int[] parent, int vertex) {
    int v = vertex;
    while (parent[v] != v) {
      parent[v] = parent[parent[v]];
      v = parent[v];
    }
    return v;
  }

  /** Counts vertices with more than one fan: turns about one corner, then looks for others. */
  private static int pinched(int vertices, int[] corners, int[] twin) {
    boolean[] turned = new boolean[corners.length];
    int[] fans = new int[vertices];
    for (int side = 0; side < corners.length; side++) {
      if (!turned[side]) {
        fans[corners[side]]++;
        turn(side, twin, turned);
      }
    }
    int pinched = 0;
    for (int count : fans) {
      pinched += count > 1 ? 1 : 0;
    }
    return pinched;
  }

  /** Marks the sides that leave one vertex within one fan, both ways round from a first. */
  private static void turn(int first, int[] twin, boolean[] turned) {
    int side = first;
    while (side >= 0 && !turned[side]) {
      turned[side] = true;
      side = twin[HalfEdges.before(side)];
    }
    side = twin[first] < 0 ? -1 : HalfEdges.after(twin[first]);
    while (side >= 0 && !turned[side]) {
      turned[side] = true;
      side = twin[side] < 0 ? -1 : HalfEdges.after(twin[side]);
    }
  }
}
