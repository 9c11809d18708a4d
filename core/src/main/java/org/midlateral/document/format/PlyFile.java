package org.midlateral.document.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.midlateral.document.Content;
import org.midlateral.mesh.TriangleMesh;

/**
 * A solid as binary little-endian PLY: vertices as 32-bit floats (mm), faces as lists of three.
 *
 * @param part what is written
 */
public record PlyFile(NamedSolid part) implements Content {
  @Override
  public void writeTo(OutputStream out) throws IOException {
    TriangleMesh mesh = part.mesh();
    String header =
        "ply\nformat binary_little_endian 1.0\ncomment "
            + PlainName.word(part.title())
            + ", mm\nelement vertex "
            + mesh.vertexCount()
            + "\nproperty float x\nproperty float y\nproperty float z\nelement face "
            + mesh.triangleCount()
            + "\nproperty list uchar int vertex_indices\nend_header\n";
    byte[] head = header.getBytes(StandardCharsets.US_ASCII);
    ByteBuffer bytes =
        ByteBuffer.allocate(head.length + 12 * mesh.vertexCount() + 13 * mesh.triangleCount())
            .order(ByteOrder.LITTLE_ENDIAN);
    bytes.put(head);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      bytes.putFloat((float) mesh.x(v)).putFloat((float) mesh.y(v)).putFloat((float) mesh.z(v));
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      bytes.put((byte) 3).putInt(mesh.corner(t, 0));
      bytes.putInt(mesh.corner(t, 1)).putInt(mesh.corner(t, 2));
    }
    out.write(bytes.array());
  }
}
