package org.midlateral.document.format;

import com.fasterxml.jackson.core.io.NumberOutput;
import org.midlateral.mesh.TriangleMesh;

/**
 * The text of the model part of a 3MF package. Numbers are the shortest decimals that read back as
 * the same 32-bit floats.
 */
final class ThreeMfModel {
  /** Room between parts, and before the first one along each axis of the bed (mm). */
  static final float ROOM = 5;

  private static final int MATERIAL_ID = 1;
  private static final int FIRST_OBJECT_ID = 2;

  private final StringBuilder out = new StringBuilder(1 << 16);

  private ThreeMfModel() {}

  static String of(SolidSet file) {
    ThreeMfModel model = new ThreeMfModel();
    model.write(file);
    return model.out.toString();
  }

  private void write(SolidSet file) {
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<model unit=\"millimeter\" xml:lang=\"en-US\"");
    out.append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n");
    out.append(" <metadata name=\"Title\">").append(escaped(file.title()));
    out.append("</metadata>\n <metadata name=\"Application\">");
    out.append(escaped(file.application())).append("</metadata>\n <resources>\n");
    out.append("  <basematerials id=\"").append(MATERIAL_ID).append("\">\n   <base name=\"");
    out.append(escaped(file.material())).append("\" displaycolor=\"#D8D3C8\"/>\n");
    out.append("  </basematerials>\n");
    int id = FIRST_OBJECT_ID;
    for (NamedSolid part : file.parts()) {
      object(part, id++);
    }
    out.append(" </resources>\n <build>\n");
    id = FIRST_OBJECT_ID;
    float y = ROOM;
    for (NamedSolid part : file.parts()) {
      if (file.placed()) {
        double[] place = part.pose().toArray();
        item(id++, place, (float) place[3], (float) place[7], (float) place[11]);
      } else {
        y += item(part, id++, y) + ROOM;
      }
    }
    out.append(" </build>\n</model>\n");
  }

  private void object(NamedSolid part, int id) {
    TriangleMesh mesh = part.mesh();
    out.ensureCapacity(out.length() + 64 * mesh.vertexCount() + 48 * mesh.triangleCount());
    out.append("  <object id=\"").append(id).append("\" type=\"model\" name=\"");
    out.append(escaped(part.title())).append("\" pid=\"").append(MATERIAL_ID);
    out.append("\" pindex=\"0\">\n   <mesh>\n    <vertices>\n");
    for (int v = 0; v < mesh.vertexCount(); v++) {
      out.append("<vertex x=\"").append(text(mesh.x(v)));
      out.append("\" y=\"").append(text(mesh.y(v)));
      out.append("\" z=\"").append(text(mesh.z(v))).append("\"/>\n");
    }
    out.append("    </vertices>\n    <triangles>\n");
    for (int t = 0; t < mesh.triangleCount(); t++) {
      out.append("<triangle v1=\"").append(mesh.corner(t, 0));
      out.append("\" v2=\"").append(mesh.corner(t, 1));
      out.append("\" v3=\"").append(mesh.corner(t, 2)).append("\"/>\n");
    }
    out.append("    </triangles>\n   </mesh>\n  </object>\n");
  }

  /** Moves a part onto the bed, its near edge at the given y; tells its depth along y (mm). */
  private float item(NamedSolid part, int id, float y) {
    TriangleMesh mesh = part.mesh();
    double[] pose = part.pose().toArray();
    double lowX = Double.MAX_VALUE;
    double lowY = Double.MAX_VALUE;
    double lowZ = Double.MAX_VALUE;
    double highY = -Double.MAX_VALUE;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      lowX = Math.min(lowX, turned(mesh, v, pose, 0));
      double across = turned(mesh, v, pose, 4);
      lowY = Math.min(lowY, across);
      highY = Math.max(highY, across);
      lowZ = Math.min(lowZ, turned(mesh, v, pose, 8));
    }
    item(id, pose, (float) (ROOM - lowX), (float) (y - lowY), (float) (0 - lowZ));
    return (float) (highY - lowY);
  }

  private void item(int id, double[] turn, float x, float y, float z) {
    out.append("  <item objectid=\"").append(id).append("\" transform=\"");
    // A point is a row before the matrix, so that the matrix's columns are the new axes.
    for (int column = 0; column < 3; column++) {
      append(turn[column], turn[4 + column], turn[8 + column]);
    }
    out.append(x).append(' ').append(y).append(' ').append(z).append("\"/>\n");
  }

  /** A vertex, as the file has it, along the axis that a row of a matrix stands for (mm). */
  private static double turned(TriangleMesh mesh, int v, double[] matrix, int row) {
    return matrix[row] * (float) mesh.x(v)
        + matrix[row + 1] * (float) mesh.y(v)
        + matrix[row + 2] * (float) mesh.z(v);
  }

  /** The shortest decimal of the 32-bit float, by the library's fast writer. */
  private static String text(double number) {
    return NumberOutput.toString((float) number, true);
  }

  private void append(double... numbers) {
    for (double number : numbers) {
      String text = Float.toString((float) number + 0f);
      out.append(text.endsWith(".0") ? text.substring(0, text.length() - 2) : text).append(' ');
    }
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
