package org.midlateral.document.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.Program;
import org.midlateral.document.WholeFile;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.MeshAudit;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Against the 3MF Core Specification 1.4.0 (3MF Consortium), sections as named. */
class ThreeMfFileTest {
  private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
  private static final TriangleMesh TORUS = Meshes.moved(Meshes.torus(10, 3, 30, 18), -4, 7, 0.1);
  private static final TriangleMesh BOX = Meshes.moved(Meshes.box(10, 20, 30), 1e-4, -50, -3);
  private static final ThreeMfFile FILE =
      new ThreeMfFile(
          new SolidSet(
              "ring & \"index\" <ä>",
              "Midlateral 0",
              "PA12",
              List.of(
                  new NamedSolid("trough", TORUS, AffineTransformMatrix3D.identity()),
                  new NamedSolid("dorsal-shell", BOX, AffineTransformMatrix3D.identity()))));

  @TempDir Path folder;

  /** Sections 2.1 and 2.2: content types, the relationship that names the model, its place. */
  @Test
  void packageParts() throws Exception {
    Map<String, byte[]> parts = unzip(bytes());
    assertThat(parts.keySet())
        .containsExactly("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
    Document types = parse(parts.get("[Content_Types].xml"));
    assertThat(types.getDocumentElement().getNamespaceURI())
        .isEqualTo("http://schemas.openxmlformats.org/package/2006/content-types");
    assertThat(attributes(types.getElementsByTagNameNS("*", "Default"), "Extension", "ContentType"))
        .containsExactlyInAnyOrder(
            "rels application/vnd.openxmlformats-package.relationships+xml",
            "model application/vnd.ms-package.3dmanufacturing-3dmodel+xml");
    Document relations = parse(parts.get("_rels/.rels"));
    assertThat(relations.getDocumentElement().getNamespaceURI())
        .isEqualTo("http://schemas.openxmlformats.org/package/2006/relationships");
    assertThat(attributes(relations.getElementsByTagNameNS("*", "Relationship"), "Target", "Type"))
        .containsExactly(
            "/3D/3dmodel.model http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
  }

  /** Sections 3.4 and 4: unit, metadata, resources before the build, identifiers, names. */
  @Test
  void modelStructure() throws Exception {
    Document model = model();
    Element root = model.getDocumentElement();
    assertThat(root.getNamespaceURI()).isEqualTo(CORE);
    assertThat(root.getAttribute("unit")).isEqualTo("millimeter");
    assertThat(children(root)).containsExactly("metadata", "metadata", "resources", "build");
    assertThat(root.getElementsByTagNameNS(CORE, "metadata").item(0).getTextContent())
        .isEqualTo("ring & \"index\" <ä>");
    assertThat(attributes(model.getElementsByTagNameNS(CORE, "object"), "id", "name", "pid"))
        .containsExactly("2 trough 1", "3 dorsal-shell 1");
    assertThat(attributes(model.getElementsByTagNameNS(CORE, "basematerials"), "id"))
        .containsExactly("1");
    assertThat(attributes(model.getElementsByTagNameNS(CORE, "base"), "name"))
        .containsExactly("PA12");
    assertThat(attributes(model.getElementsByTagNameNS(CORE, "item"), "objectid"))
        .containsExactly("2", "3");
  }

  /** Section 4.1: manifold edges and outward normals; the floats are those of the STL file. */
  @Test
  void meshesAreTheSameFloatsAndManifold() throws Exception {
    NodeList objects = model().getElementsByTagNameNS(CORE, "object");
    for (int i = 0; i < 2; i++) {
      TriangleMesh ours = FILE.solids().parts().get(i).mesh().filed();
      TriangleMesh read = mesh((Element) objects.item(i));
      assertThat(read.coordinates()).isEqualTo(ours.coordinates());
      assertThat(read.triangles()).isEqualTo(ours.triangles());
      assertThat(MeshAudit.of(read).topology().closed()).isTrue();
      assertThat(MeshShape.of(read).volume()).isPositive();
    }
  }

  /** Section 3.3: a row vector times the matrix; the parts stand on the bed, none in another. */
  @Test
  void partsStandSideBySideInThePositiveOctant() throws Exception {
    NodeList items = model().getElementsByTagNameNS(CORE, "item");
    double reached = 0;
    for (int i = 0; i < 2; i++) {
      String[] m = ((Element) items.item(i)).getAttribute("transform").split(" ");
      assertThat(m).hasSize(12).startsWith("1", "0", "0", "0", "1", "0", "0", "0", "1");
      Bounds3D bounds = MeshShape.of(FILE.solids().parts().get(i).mesh()).bounds();
      assertThat(bounds.getMin().getX() + Double.parseDouble(m[9])).isCloseTo(5, within(1e-5));
      double y = Double.parseDouble(m[10]);
      assertThat(bounds.getMin().getY() + y).isCloseTo(reached + 5, within(1e-5));
      assertThat(bounds.getMin().getZ() + Double.parseDouble(m[11])).isCloseTo(0, within(1e-5));
      reached = bounds.getMax().getY() + y;
    }
  }

  @Test
  void sameBytesInEveryTimeZone() throws IOException {
    TimeZone here = TimeZone.getDefault();
    byte[] bytes = bytes();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertThat(bytes()).isEqualTo(bytes);
    } finally {
      TimeZone.setDefault(here);
    }
  }

  /** The outside check: assimp (Debian) reads the package and writes the build out as STL. */
  @Test
  void assimpReadsBothParts() throws Exception {
    Path file = folder.resolve("both.3mf");
    WholeFile.write(file, FILE, false);
    String said = Program.run("assimp", "info", file.toString());
    assertThat(said)
        .containsPattern("Meshes:\\s+2\\b")
        .containsPattern("Minimum point\\s+\\(5.000000 5.000000 0.000000\\)")
        .contains("PA12");
    Path stl = folder.resolve("both.stl");
    Program.run("assimp", "export", file.toString(), stl.toString(), "-fstlb");
    var read = IO3D.readTriangleMesh(stl, Precision.doubleEquivalenceOfEpsilon(1e-10));
    double volume = MeshShape.of(TORUS).volume() + MeshShape.of(BOX).volume();
    assertThat(read.getFaceCount()).isEqualTo(TORUS.triangleCount() + BOX.triangleCount());
    double sum =
        read.boundaryStream()
            .mapToDouble(
                face -> face.getSize() * face.getPlane().getNormal().dot(face.getCentroid()) / 3)
            .sum();
    assertThat(sum).isCloseTo(volume, within(1e-5 * volume));
  }

  private static TriangleMesh mesh(Element object) {
    NodeList vertices = object.getElementsByTagNameNS(CORE, "vertex");
    NodeList triangles = object.getElementsByTagNameNS(CORE, "triangle");
    double[] xyz = new double[3 * vertices.getLength()];
    int[] corners = new int[3 * triangles.getLength()];
    String[] axes = {"x", "y", "z"};
    String[] names = {"v1", "v2", "v3"};
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = Float.parseFloat(((Element) vertices.item(i / 3)).getAttribute(axes[i % 3]));
    }
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Integer.parseInt(((Element) triangles.item(i / 3)).getAttribute(names[i % 3]));
    }
    return new TriangleMesh(xyz, corners);
  }

  private static List<String> attributes(NodeList elements, String... names) {
    List<String> out = new ArrayList<>();
    for (int i = 0; i < elements.getLength(); i++) {
      List<String> values = new ArrayList<>();
      for (String name : names) {
        values.add(((Element) elements.item(i)).getAttribute(name));
      }
      out.add(String.join(" ", values));
    }
    return out;
  }

  private static List<String> children(Element element) {
    List<String> out = new ArrayList<>();
    for (var node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        out.add(child.getLocalName());
      }
    }
    return out;
  }

  private static Document model() throws Exception {
    return parse(unzip(bytes()).get("3D/3dmodel.model"));
  }

  private static Document parse(byte[] bytes) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }

  private static Map<String, byte[]> unzip(byte[] bytes) throws IOException {
    Map<String, byte[]> out = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        out.put(entry.getName(), zip.readAllBytes());
      }
    }
    return out;
  }

  private static byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FILE.writeTo(out);
    return out.toByteArray();
  }
}
