package org.midlateral.document.format;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import org.midlateral.document.Content;
import org.midlateral.mesh.TriangleMesh;

/**
 * Solids as binary glTF 2.0 (Khronos Group): a header, a chunk of JSON and a chunk of numbers, each
 * padded to four bytes. Metres, +Y up: dorsal is up, and the finger points along +X. Every part is
 * a named node with a named material; normals are left to the reader, which shades flat.
 *
 * @param solids what is written
 */
public record GlbFile(SolidSet solids) implements Content {
  private static final int MAGIC = 0x46546C67;
  private static final int JSON = 0x4E4F534A;
  private static final int BINARY = 0x004E4942;
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;
  private static final double[][] COLOURS = {{0.72, 0.66, 0.55}, {0.47, 0.60, 0.66}};

  @Override
  public void writeTo(OutputStream out) throws IOException {
    byte[] json = padded(json());
    int numbers = solids.parts().stream().mapToInt(part -> bytes(part.mesh())).sum();
    ByteBuffer all =
        ByteBuffer.allocate(12 + 8 + json.length + 8 + numbers).order(ByteOrder.LITTLE_ENDIAN);
    all.putInt(MAGIC).putInt(2).putInt(all.capacity());
    all.putInt(json.length).putInt(JSON).put(json);
    all.putInt(numbers).putInt(BINARY);
    for (NamedSolid part : solids.parts()) {
      put(all, part.mesh());
    }
    out.write(all.array());
  }

  private static int bytes(TriangleMesh mesh) {
    return 12 * mesh.vertexCount() + 12 * mesh.triangleCount();
  }

  /** A vertex's coordinate in the file: metres, y up. */
  private static float place(TriangleMesh mesh, int vertex, int axis) {
    double mm =
        switch (axis) {
          case 0 -> mesh.x(vertex);
          case 1 -> mesh.z(vertex);
          default -> -mesh.y(vertex);
        };
    return (float) (mm / 1000);
  }

  private static void put(ByteBuffer all, TriangleMesh mesh) {
    for (int v = 0; v < mesh.vertexCount(); v++) {
      all.putFloat(place(mesh, v, 0)).putFloat(place(mesh, v, 1)).putFloat(place(mesh, v, 2));
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      all.putInt(mesh.corner(t, 0)).putInt(mesh.corner(t, 1)).putInt(mesh.corner(t, 2));
    }
  }

  private static byte[] padded(byte[] json) {
    byte[] out = Arrays.copyOf(json, (json.length + 3) / 4 * 4);
    Arrays.fill(out, json.length, out.length, (byte) ' ');
    return out;
  }

  private byte[] json() throws IOException {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    List<NamedSolid> parts = solids.parts();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeObjectFieldStart("asset");
      json.writeStringField("version", "2.0");
      json.writeStringField("generator", solids.application());
      json.writeEndObject();
      json.writeNumberField("scene", 0);
      json.writeArrayFieldStart("scenes");
      json.writeStartObject();
      json.writeStringField("name", solids.title());
      json.writeArrayFieldStart("nodes");
      for (int i = 0; i < parts.size(); i++) {
        json.writeNumber(i);
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeEndArray();
      nodes(json);
      materials(json);
      meshes(json);
      storage(json);
      json.writeEndObject();
    }
    return text.toByteArray();
  }

  private void nodes(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("nodes");
    for (int i = 0; i < solids.parts().size(); i++) {
      json.writeStartObject();
      json.writeStringField("name", solids.parts().get(i).title());
      json.writeNumberField("mesh", i);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void materials(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("materials");
    for (int i = 0; i < solids.parts().size(); i++) {
      json.writeStartObject();
      json.writeStringField("name", solids.material() + ", " + solids.parts().get(i).title());
      json.writeObjectFieldStart("pbrMetallicRoughness");
      json.writeArrayFieldStart("baseColorFactor");
      for (double share : COLOURS[i % COLOURS.length]) {
        json.writeNumber(share);
      }
      json.writeNumber(1);
      json.writeEndArray();
      json.writeNumberField("metallicFactor", 0);
      json.writeNumberField("roughnessFactor", 0.8);
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void meshes(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("meshes");
    for (int i = 0; i < solids.parts().size(); i++) {
      json.writeStartObject();
      json.writeStringField("name", solids.parts().get(i).title());
      json.writeArrayFieldStart("primitives");
      json.writeStartObject();
      json.writeObjectFieldStart("attributes");
      json.writeNumberField("POSITION", 2 * i);
      json.writeEndObject();
      json.writeNumberField("indices", 2 * i + 1);
      json.writeNumberField("material", i);
      json.writeEndObject();
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Accessors, the views they look through, and the one buffer. */
  private void storage(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("accessors");
    for (int i = 0; i < solids.parts().size(); i++) {
      TriangleMesh mesh = solids.parts().get(i).mesh();
      accessor(json, 2 * i, FLOAT, mesh.vertexCount(), "VEC3");
      extreme(json, "min", mesh, false);
      extreme(json, "max", mesh, true);
      json.writeEndObject();
      accessor(json, 2 * i + 1, UNSIGNED_INT, 3 * mesh.triangleCount(), "SCALAR");
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("bufferViews");
    int at = 0;
    for (NamedSolid part : solids.parts()) {
      at = view(json, at, 12 * part.mesh().vertexCount(), VERTICES);
      at = view(json, at, 12 * part.mesh().triangleCount(), INDICES);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("buffers");
    json.writeStartObject();
    json.writeNumberField("byteLength", at);
    json.writeEndObject();
    json.writeEndArray();
  }

  private static void accessor(JsonGenerator json, int view, int kind, int count, String type)
      throws IOException {
    json.writeStartObject();
    json.writeNumberField("bufferView", view);
    json.writeNumberField("componentType", kind);
    json.writeNumberField("count", count);
    json.writeStringField("type", type);
  }

  private static void extreme(JsonGenerator json, String name, TriangleMesh mesh, boolean highest)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (int axis = 0; axis < 3; axis++) {
      float most = place(mesh, 0, axis);
      for (int v = 1; v < mesh.vertexCount(); v++) {
        float value = place(mesh, v, axis);
        most = highest ? Math.max(most, value) : Math.min(most, value);
      }
      json.writeNumber((double) most);
    }
    json.writeEndArray();
  }

  private static int view(JsonGenerator json, int at, int length, int target) throws IOException {
    json.writeStartObject();
    json.writeNumberField("buffer", 0);
    json.writeNumberField("byteOffset", at);
    json.writeNumberField("byteLength", length);
    json.writeNumberField("target", target);
    json.writeEndObject();
    return at + length;
  }
}
