package org.midlateral.document.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.Program;
import org.midlateral.document.WholeFile;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;

class StlFileTest {
  private static final TriangleMesh TORUS = Meshes.torus(10, 3, 30, 18);

  @TempDir Path folder;

  @Test
  void layout() throws IOException {
    byte[] bytes = bytes("solid trough");
    assertThat(bytes).hasSize(84 + 50 * TORUS.triangleCount());
    assertThat(new String(bytes, 0, 80, StandardCharsets.US_ASCII))
        .doesNotStartWith("solid")
        .contains("trough");
    ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(buffer.getInt(80)).isEqualTo(TORUS.triangleCount());
    for (int t = 0; t < TORUS.triangleCount(); t++) {
      int at = 84 + 50 * t;
      Vector3D[] v = new Vector3D[4];
      for (int i = 0; i < 4; i++) {
        v[i] =
            Vector3D.of(
                buffer.getFloat(at + 12 * i),
                buffer.getFloat(at + 12 * i + 4),
                buffer.getFloat(at + 12 * i + 8));
      }
      assertThat(v[0].norm()).isCloseTo(1, within(1e-6));
      Vector3D turn = v[2].subtract(v[1]).cross(v[3].subtract(v[1]));
      assertThat(turn.normalize().dot(v[0])).isCloseTo(1, within(1e-6));
      assertThat((float) TORUS.x(TORUS.corner(t, 0))).isEqualTo((float) v[1].getX());
      assertThat(buffer.getShort(at + 48)).isZero();
    }
  }

  @Test
  void longNamesAreCutAndSameInputGivesSameBytes() throws IOException {
    String name = "x".repeat(200);
    assertThat(bytes(name)).isEqualTo(bytes(name)).hasSize(84 + 50 * TORUS.triangleCount());
  }

  /** The outside check: Commons Geometry's reader, and its faces' own areas and centroids. */
  @Test
  void commonsGeometryReadsItBack() {
    Path file = folder.resolve("torus.stl");
    WholeFile.write(
        file,
        new StlFile(new NamedSolid("torus", TORUS, AffineTransformMatrix3D.identity())),
        false);
    var read = IO3D.readTriangleMesh(file, Precision.doubleEquivalenceOfEpsilon(1e-10));
    assertThat(read.getFaceCount()).isEqualTo(TORUS.triangleCount());
    assertThat(read.getVertexCount()).isEqualTo(TORUS.vertexCount());
    double volume = MeshShape.of(TORUS).volume();
    double sum =
        read.boundaryStream()
            .mapToDouble(
                face -> face.getSize() * face.getPlane().getNormal().dot(face.getCentroid()) / 3)
            .sum();
    assertThat(sum).isCloseTo(volume, within(1e-6 * volume));
  }

  /** The outside check: admesh (Debian), which finds nothing to mend and the same volume. */
  @Test
  void admeshFindsNothingToMend() throws Exception {
    Path file = folder.resolve("torus.stl");
    WholeFile.write(
        file,
        new StlFile(new NamedSolid("torus", TORUS, AffineTransformMatrix3D.identity())),
        false);
    String said = Program.run("admesh", file.toString());
    assertThat(figure(said, "Number of facets")).isEqualTo(TORUS.triangleCount());
    assertThat(figure(said, "Number of parts")).isEqualTo(1);
    assertThat(figure(said, "Degenerate facets")).isZero();
    assertThat(figure(said, "Edges fixed")).isZero();
    assertThat(figure(said, "Facets reversed")).isZero();
    assertThat(figure(said, "Normals fixed")).isZero();
    assertThat(figure(said, "Backwards edges")).isZero();
    double volume = MeshShape.of(TORUS).volume();
    assertThat(figure(said, "Volume")).isCloseTo(volume, within(1e-4 * volume));
  }

  private static double figure(String said, String name) {
    Matcher found = Pattern.compile(name + "\\s*:\\s*([-0-9.]+)").matcher(said);
    assertThat(found.find()).as("%s in %s", name, said).isTrue();
    return Double.parseDouble(found.group(1));
  }

  private static byte[] bytes(String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new StlFile(new NamedSolid(name, TORUS, AffineTransformMatrix3D.identity())).writeTo(out);
    return out.toByteArray();
  }
}
