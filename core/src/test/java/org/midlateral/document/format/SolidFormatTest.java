package org.midlateral.document.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AccessorData;
import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorIntData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.mesh.TriangleMesh.Face;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.document.Content;
import org.midlateral.document.Program;
import org.midlateral.document.WholeFile;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;

/** Every format read back by a reader of other people's: the same triangles, the same volume. */
class SolidFormatTest {
  private static final TriangleMesh TORUS = Meshes.moved(Meshes.torus(10, 3, 30, 18), -4, 7, 0.1);
  private static final TriangleMesh BOX = Meshes.moved(Meshes.box(10, 20, 30), 1e-4, -50, -3);
  private static final SolidSet SOLIDS =
      new SolidSet(
          "invented-ring \"a\"",
          "Midlateral 0",
          "PA12",
          List.of(
              new NamedSolid("trough", TORUS, AffineTransformMatrix3D.identity()),
              new NamedSolid("dorsal-shell", BOX, AffineTransformMatrix3D.identity())));
  private static final double VOLUME = MeshShape.of(TORUS).volume() + MeshShape.of(BOX).volume();
  private static final int TRIANGLES = TORUS.triangleCount() + BOX.triangleCount();

  @TempDir Path folder;

  @Test
  void keysAreNamesOfTheirFormats() {
    for (SolidFormat format : SolidFormat.values()) {
      assertThat(SolidFormat.of(format.key())).contains(format);
    }
    assertThat(Stream.of(SolidFormat.values()).map(SolidFormat::key))
        .containsExactly("stl", "stl-ascii", "3mf", "obj", "ply", "glb");
    assertThat(SolidFormat.of("step")).isEmpty();
  }

  @Test
  void noTwoFormatsShareAName() {
    List<String> names =
        Stream.of(SolidFormat.values())
            .flatMap(format -> format.files(SOLIDS).stream())
            .map(SolidFormat.Named::name)
            .toList();
    assertThat(names).doesNotHaveDuplicates().hasSize(9);
  }

  /** The outside check: assimp (Debian) reads each file and writes it out as STL again. */
  @ParameterizedTest
  @EnumSource(SolidFormat.class)
  void assimpReadsTheSameVolume(SolidFormat format) throws Exception {
    double volume = 0;
    int triangles = 0;
    for (Path file : write(format)) {
      Path stl = folder.resolve("read-" + file.getFileName() + ".stl");
      Program.run("assimp", "export", file.toString(), stl.toString(), "-fstlb");
      double scale = format == SolidFormat.GLB ? 1000 : 1;
      List<Face> faces = faces(stl);
      volume += volume(faces) * Math.pow(scale, 3);
      triangles += faces.size();
    }
    assertThat(triangles).isEqualTo(TRIANGLES);
    assertThat(volume).isCloseTo(VOLUME, within(1e-4 * VOLUME));
  }

  /** The outside check: Commons Geometry reads the text forms. */
  @ParameterizedTest
  @EnumSource(
      value = SolidFormat.class,
      names = {"STL_ASCII", "OBJ"})
  void commonsGeometryReadsTheSameVolume(SolidFormat format) throws IOException {
    double volume = 0;
    int triangles = 0;
    for (Path file : write(format)) {
      List<Face> faces = faces(file);
      volume += volume(faces);
      triangles += faces.size();
    }
    assertThat(triangles).isEqualTo(TRIANGLES);
    assertThat(volume).isCloseTo(VOLUME, within(1e-6 * VOLUME));
  }

  /** Khronos glTF 2.0, sections 3.4 and 3.6, through the reader jgltf-model: metres, +Y up. */
  @Test
  void glbHasNamedNodesAndMaterialsInMetres() throws Exception {
    GltfModel model = new GltfModelReader().read(write(SolidFormat.GLB).get(0).toUri());
    assertThat(model.getNodeModels())
        .extracting(NodeModel::getName)
        .containsExactly("trough", "dorsal-shell");
    double volume = 0;
    for (NodeModel node : model.getNodeModels()) {
      MeshPrimitiveModel primitive = node.getMeshModels().get(0).getMeshPrimitiveModels().get(0);
      assertThat(primitive.getMaterialModel().getName()).isEqualTo("PA12, " + node.getName());
      volume += volume(primitive);
    }
    assertThat(volume * 1e9).isCloseTo(VOLUME, within(1e-4 * VOLUME));
    // Dorsal, our +z, is the file's +y; the box is 30 mm high.
    var box = model.getMeshModels().get(1).getMeshPrimitiveModels().get(0);
    var position = box.getAttributes().get("POSITION");
    assertThat(position.getMax()[1].doubleValue() - position.getMin()[1].doubleValue())
        .isCloseTo(0.030, within(1e-8));
  }

  /** The outside check: Khronos' own validator (npm gltf-validator), where it is installed. */
  @Test
  void gltfValidatorFindsNoFault() throws Exception {
    Path file = write(SolidFormat.GLB).get(0);
    String script =
        "const v=require('gltf-validator'),f=require('fs');v.validateBytes(new Uint8Array("
            + "f.readFileSync(process.argv[1]))).then(r=>console.log(JSON.stringify(r.issues)));";
    Program.requireModule("gltf-validator");
    String said = Program.run("node", "-e", script, file.toString());
    assertThat(said).contains("\"numErrors\":0").contains("\"numWarnings\":0");
  }

  @Test
  void sameInputSameBytes() throws IOException {
    for (SolidFormat format : SolidFormat.values()) {
      List<byte[]> first = new ArrayList<>();
      for (Path file : write(format)) {
        first.add(Files.readAllBytes(file));
      }
      List<Path> again = write(format);
      for (int i = 0; i < again.size(); i++) {
        assertThat(Files.readAllBytes(again.get(i))).isEqualTo(first.get(i));
      }
    }
  }

  @Test
  void outlandishNamesStayOneWordInTextFormats() throws IOException {
    SolidSet odd =
        new SolidSet(
            "t",
            "a",
            "m",
            List.of(new NamedSolid("böx 1\nv 0 0 0", BOX, AffineTransformMatrix3D.identity())));
    String text = text(new ObjFile(odd));
    assertThat(text.lines().filter(line -> line.startsWith("v "))).hasSize(BOX.vertexCount());
    assertThat(text(new StlTextFile(odd.parts().get(0)))).startsWith("solid b_x_1_v_0_0_0\n");
  }

  private static String text(Content content) throws IOException {
    var out = new java.io.ByteArrayOutputStream();
    content.writeTo(out);
    return out.toString(StandardCharsets.US_ASCII);
  }

  private List<Path> write(SolidFormat format) {
    List<Path> files = new ArrayList<>();
    for (SolidFormat.Named named : format.files(SOLIDS)) {
      Path file = folder.resolve(named.name());
      WholeFile.write(file, named.content(), true);
      files.add(file);
    }
    return files;
  }

  private static List<Face> faces(Path file) throws IOException {
    var precision = Precision.doubleEquivalenceOfEpsilon(1e-12);
    List<Face> faces = new ArrayList<>();
    IO3D.readTriangleMesh(file, precision).faces().forEach(faces::add);
    return faces;
  }

  /** By the faces' own areas and middles, as the library has them. */
  private static double volume(List<Face> faces) {
    return faces.stream()
        .map(face -> face.getPolygon())
        .mapToDouble(
            face -> face.getSize() * face.getPlane().getNormal().dot(face.getCentroid()) / 3)
        .sum();
  }

  private static double volume(MeshPrimitiveModel primitive) {
    AccessorFloatData place =
        (AccessorFloatData) primitive.getAttributes().get("POSITION").getAccessorData();
    AccessorData corners = primitive.getIndices().getAccessorData();
    AccessorIntData index = (AccessorIntData) corners;
    double volume = 0;
    for (int t = 0; t < index.getNumElements(); t += 3) {
      double[][] p = new double[3][3];
      for (int c = 0; c < 3; c++) {
        for (int axis = 0; axis < 3; axis++) {
          p[c][axis] = place.get(index.get(t + c), axis);
        }
      }
      volume +=
          p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1])
              + p[0][1] * (p[1][2] * p[2][0] - p[1][0] * p[2][2])
              + p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
    }
    return volume / 6;
  }
}
