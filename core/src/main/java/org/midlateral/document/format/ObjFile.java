package org.midlateral.document.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.midlateral.document.Content;
import org.midlateral.mesh.TriangleMesh;

/**
 * Solids as a Wavefront OBJ file, each a named object. The format knows no unit; the numbers are
 * the same 32-bit mm as in the STL files, and a comment says so.
 *
 * @param solids what is written
 */
public record ObjFile(SolidSet solids) implements Content {
  @Override
  public void writeTo(OutputStream out) throws IOException {
    StringBuilder text = new StringBuilder(1 << 20);
    text.append("# ").append(PlainName.word(solids.application())).append(", mm\n");
    int first = 1;
    for (NamedSolid part : solids.parts()) {
      TriangleMesh mesh = part.mesh();
      text.append("o ").append(PlainName.word(part.title())).append('\n');
      for (int v = 0; v < mesh.vertexCount(); v++) {
        text.append("v ").append((float) mesh.x(v)).append(' ').append((float) mesh.y(v));
        text.append(' ').append((float) mesh.z(v)).append('\n');
      }
      for (int t = 0; t < mesh.triangleCount(); t++) {
        text.append("f ").append(first + mesh.corner(t, 0)).append(' ');
        text.append(first + mesh.corner(t, 1)).append(' ');
        text.append(first + mesh.corner(t, 2)).append('\n');
      }
      first += mesh.vertexCount();
    }
    out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
  }
}
