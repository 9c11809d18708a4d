package org.midlateral.document.format;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.midlateral.mesh.TriangleMesh;

/** Reads a solid back from a binary STL that {@link StlFile} wrote. */
public final class StlMesh {
  private static final int HEAD = 80;
  private static final int TRIANGLE = 50;

  /** A corner by the bits of its three 32-bit numbers: equal ones are one vertex. */
  private record Corner(int x, int y, int z) {}

  private StlMesh() {}

  /**
   * Reads one.
   *
   * @return the mesh, corners at the same place joined (mm)
   * @throws IOException if it cannot be read or is not as long as it says
   */
  public static TriangleMesh read(Path file) throws IOException {
    ByteBuffer stl = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
    if (stl.capacity() < HEAD + 4 || stl.capacity() != HEAD + 4 + TRIANGLE * stl.getInt(HEAD)) {
      throw new IOException(file + " is no binary STL, or not whole");
    }
    int triangles = stl.getInt(HEAD);
    int[] corners = new int[3 * triangles];
    Map<Corner, Integer> vertices = new HashMap<>(4 * triangles);
    double[] xyz = new double[9 * triangles];
    for (int t = 0; t < triangles; t++) {
      for (int k = 0; k < 3; k++) {
        int at = HEAD + 4 + TRIANGLE * t + 12 * (k + 1);
        int next = vertices.size();
        int vertex =
            vertices.computeIfAbsent(
                new Corner(stl.getInt(at), stl.getInt(at + 4), stl.getInt(at + 8)), c -> next);
        corners[3 * t + k] = vertex;
        for (int axis = 0; axis < 3; axis++) {
          xyz[3 * vertex + axis] = stl.getFloat(at + 4 * axis);
        }
      }
    }
    return new TriangleMesh(Arrays.copyOf(xyz, 3 * vertices.size()), corners);
  }
}
