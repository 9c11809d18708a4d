package org.midlateral.document.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.midlateral.document.Content;

/**
 * A solid as binary STL: an 80-byte header, a count, and 50 bytes a triangle, little-endian: unit
 * normal and three corners as 32-bit floats, counter-clockwise seen from outside, and two bytes of
 * nothing. The format knows no unit; the numbers are mm, and the header says so before the part's
 * title.
 *
 * @param part what is written
 */
public record StlFile(NamedSolid part) implements Content {
  private static final int HEADER = 80;
  private static final int TRIANGLE = 50;

  @Override
  public void writeTo(OutputStream out) throws IOException {
    out.write(bytes());
  }

  private byte[] bytes() {
    int triangles = part.mesh().triangleCount();
    double[] xyz = part.mesh().coordinates();
    int[] corners = part.mesh().triangles();
    ByteBuffer buffer =
        ByteBuffer.allocate(HEADER + 4 + TRIANGLE * triangles).order(ByteOrder.LITTLE_ENDIAN);
    // Never beginning with "solid", by which readers tell the text form of the format.
    byte[] title = ("mm: " + part.title()).getBytes(StandardCharsets.US_ASCII);
    buffer.put(title, 0, Math.min(title.length, HEADER));
    buffer.position(HEADER).putInt(triangles);
    for (int t = 0; t < corners.length; t += 3) {
      put(buffer, xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
    }
    return buffer.array();
  }

  private static void put(ByteBuffer buffer, double[] xyz, int a, int b, int c) {
    double ux = (float) xyz[b] - (double) (float) xyz[a];
    double uy = (float) xyz[b + 1] - (double) (float) xyz[a + 1];
    double uz = (float) xyz[b + 2] - (double) (float) xyz[a + 2];
    double vx = (float) xyz[c] - (double) (float) xyz[a];
    double vy = (float) xyz[c + 1] - (double) (float) xyz[a + 1];
    double vz = (float) xyz[c + 2] - (double) (float) xyz[a + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double scale = length > 0 ? 1 / length : 0;
    buffer.putFloat((float) (nx * scale)).putFloat((float) (ny * scale));
    buffer.putFloat((float) (nz * scale));
    corner(buffer, xyz, a);
    corner(buffer, xyz, b);
    corner(buffer, xyz, c);
    buffer.putShort((short) 0);
  }

  private static void corner(ByteBuffer buffer, double[] xyz, int i) {
    buffer.putFloat((float) xyz[i]).putFloat((float) xyz[i + 1]).putFloat((float) xyz[i + 2]);
  }
}
