package org.midlateral.document.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.midlateral.document.Content;
import org.midlateral.mesh.TriangleMesh;

/**
 * A solid as STL in its text form: the same 32-bit numbers (mm) as the binary form, each as the
 * shortest decimal that reads back as it.
 *
 * @param part what is written
 */
public record StlTextFile(NamedSolid part) implements Content {
  @Override
  public void writeTo(OutputStream out) throws IOException {
    TriangleMesh mesh = part.mesh();
    StringBuilder text = new StringBuilder(260 * mesh.triangleCount());
    text.append("solid ").append(PlainName.word(part.title())).append('\n');
    float[] corner = new float[9];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int v = mesh.corner(t, c);
        corner[3 * c] = (float) mesh.x(v);
        corner[3 * c + 1] = (float) mesh.y(v);
        corner[3 * c + 2] = (float) mesh.z(v);
      }
      facet(text, corner);
    }
    text.append("endsolid ").append(PlainName.word(part.title())).append('\n');
    out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private static void facet(StringBuilder text, float[] p) {
    double ux = (double) p[3] - p[0];
    double uy = (double) p[4] - p[1];
    double uz = (double) p[5] - p[2];
    double vx = (double) p[6] - p[0];
    double vy = (double) p[7] - p[1];
    double vz = (double) p[8] - p[2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double scale = size > 0 ? 1 / size : 0;
    text.append("facet normal ").append((float) (nx * scale)).append(' ');
    text.append((float) (ny * scale)).append(' ').append((float) (nz * scale));
    text.append("\nouter loop\n");
    for (int i = 0; i < 9; i += 3) {
      text.append("vertex ").append(p[i]).append(' ').append(p[i + 1]).append(' ');
      text.append(p[i + 2]).append('\n');
    }
    text.append("endloop\nendfacet\n");
  }
}
