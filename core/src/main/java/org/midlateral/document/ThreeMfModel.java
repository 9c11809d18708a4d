package org.midlateral.document;

import java.nio.charset.StandardCharsets;
import org.midlateral.solid.Pose;
import org.midlateral.solid.TriangleMesh;

/**
 * The text of the model part of a 3MF package. Numbers are the shortest decimals that read back as
 * the same 32-bit floats.
 */
final class ThreeMfModel {
  /** Room between parts, and before the first one along each axis of the bed (mm). */
  static final float ROOM = 5;

  private static final int MATERIAL_ID = 1;
  private static final int FIRST_OBJECT_ID = 2;

  private static final byte[] VERTEX = ascii("<vertex x=\"");
  private static final byte[] Y = ascii("\" y=\"");
  private static final byte[] Z = ascii("\" z=\"");
  private static final byte[] TRIANGLE = ascii("<triangle v1=\"");
  private static final byte[] SECOND = ascii("\" v2=\"");
  private static final byte[] THIRD = ascii("\" v3=\"");
  private static final byte[] END = ascii("\"/>\n");

  private final NumberText out;

  private ThreeMfModel(int room) {
    this.out = new NumberText(room);
  }

  static byte[] of(Solids file) {
    int room = 1 << 12;
    for (Part part : file.parts()) {
      room += 64 * part.mesh().vertexCount() + 48 * part.mesh().triangleCount();
    }
    ThreeMfModel model = new ThreeMfModel(room);
    model.write(file);
    return model.out.toBytes();
  }

  private void write(Solids file) {
    out.put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.put("<model unit=\"millimeter\" xml:lang=\"en-US\"");
    out.put(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n");
    out.put(" <metadata name=\"Title\">").put(escaped(file.title()));
    out.put("</metadata>\n <metadata name=\"Application\">");
    out.put(escaped(file.application())).put("</metadata>\n <resources>\n");
    out.put("  <basematerials id=\"").put(MATERIAL_ID).put("\">\n   <base name=\"");
    out.put(escaped(file.material())).put("\" displaycolor=\"#D8D3C8\"/>\n");
    out.put("  </basematerials>\n");
    int id = FIRST_OBJECT_ID;
    for (Part part : file.parts()) {
      object(part, id++);
    }
    out.put(" </resources>\n <build>\n");
    id = FIRST_OBJECT_ID;
    float y = ROOM;
    for (Part part : file.parts()) {
      y += item(part, id++, y) + ROOM;
    }
    out.put(" </build>\n</model>\n");
  }

  private void object(Part part, int id) {
    TriangleMesh mesh = part.mesh();
    out.put("  <object id=\"").put(id).put("\" type=\"model\" name=\"");
    out.put(escaped(part.name())).put("\" pid=\"").put(MATERIAL_ID);
    out.put("\" pindex=\"0\">\n   <mesh>\n    <vertices>\n");
    for (int v = 0; v < mesh.vertexCount(); v++) {
      out.put(VERTEX).put((float) mesh.x(v)).put(Y).put((float) mesh.y(v));
      out.put(Z).put((float) mesh.z(v)).put(END);
    }
    out.put("    </vertices>\n    <triangles>\n");
    for (int t = 0; t < mesh.triangleCount(); t++) {
      out.put(TRIANGLE).put(mesh.corner(t, 0)).put(SECOND).put(mesh.corner(t, 1));
      out.put(THIRD).put(mesh.corner(t, 2)).put(END);
    }
    out.put("    </triangles>\n   </mesh>\n  </object>\n");
  }

  /** Moves a part onto the bed, its near edge at the given y; tells its depth along y (mm). */
  private float item(Part part, int id, float y) {
    TriangleMesh mesh = part.mesh();
    Pose pose = part.pose();
    double lowX = Double.MAX_VALUE;
    double lowY = Double.MAX_VALUE;
    double lowZ = Double.MAX_VALUE;
    double highY = -Double.MAX_VALUE;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double px = (float) mesh.x(v);
      double py = (float) mesh.y(v);
      double pz = (float) mesh.z(v);
      lowX = Math.min(lowX, pose.x(px, py, pz));
      lowY = Math.min(lowY, pose.y(px, py, pz));
      lowZ = Math.min(lowZ, pose.z(px, py, pz));
      highY = Math.max(highY, pose.y(px, py, pz));
    }
    out.put("  <item objectid=\"").put(id).put("\" transform=\"");
    // A point is a row before the matrix, so that the matrix's columns are the new axes.
    append(pose.xx(), pose.yx(), pose.zx());
    append(pose.xy(), pose.yy(), pose.zy());
    append(pose.xz(), pose.yz(), pose.zz());
    out.put((float) (ROOM - lowX)).put(" ").put((float) (y - lowY)).put(" ");
    out.put((float) (0 - lowZ)).put("\"/>\n");
    return (float) (highY - lowY);
  }

  private void append(double... numbers) {
    for (double number : numbers) {
      out.put((float) number + 0f).put(" ");
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        default -> safe.append(c < ' ' ? ' ' : c);
      }
    }
    return safe.toString();
  }
}
