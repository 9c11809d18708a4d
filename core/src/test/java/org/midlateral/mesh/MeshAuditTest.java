package org.midlateral.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.midlateral.mesh.query.MeshAudit;

class MeshAuditTest {
  @Test
  void tetrahedron() {
    MeshAudit audit = MeshAudit.of(Meshes.tetrahedron(2));
    assertThat(audit.sound()).isTrue();
    assertThat(audit.volume()).isCloseTo(8.0 / 6, within(1e-12));
    // Three right triangles of legs 2 and one equilateral of side 2√2.
    assertThat(audit.area()).isCloseTo(6 + 2 * Math.sqrt(3), within(1e-12));
    assertThat(audit.minAngle()).isCloseTo(45, within(1e-9));
    assertThat(audit.topology().eulerCharacteristic()).isEqualTo(2);
    assertThat(audit.topology().edges()).isEqualTo(6);
    assertThat(audit.bounds().getMax()).isEqualTo(Vector3D.of(2, 2, 2));
  }

  @Test
  void boxIsSoundThoughItsFacesAreFlat() {
    MeshAudit audit = MeshAudit.of(Meshes.box(10, 20, 30));
    assertThat(audit.sound()).isTrue();
    assertThat(audit.volume()).isCloseTo(6000, within(1e-9));
    assertThat(audit.area()).isCloseTo(2200, within(1e-9));
  }

  /**
   * Closed form: at every height the polyhedron's section is the ring between two regular m-gons,
   * so it is m sin(2π/m) / 2π of the n-gon's solid of revolution, which Pappus gives as 2πR times
   * the n-gon's area.
   */
  @Test
  void torusHasOneHoleAndItsVolumeIsThatOfItsPolyhedron() {
    int m = 40;
    int n = 24;
    MeshAudit audit = MeshAudit.of(Meshes.torus(10, 3, m, n));
    assertThat(audit.sound()).isTrue();
    assertThat(audit.topology().eulerCharacteristic()).isZero();
    assertThat(audit.holes()).isEqualTo(1);
    double section = n / 2.0 * 9 * Math.sin(2 * Math.PI / n);
    double volume = m * Math.sin(2 * Math.PI / m) * 10 * section;
    assertThat(audit.volume()).isCloseTo(volume, within(1e-6 * volume));
    assertThat(MeshShape.of(Meshes.torus(10, 3, m, n)).volume())
        .isCloseTo(volume, within(1e-12 * volume));
  }

  /** The outside check: Commons Geometry's own volume and area of the same triangles. */
  @Test
  void volumeAndAreaAgreeWithABinarySpacePartition() {
    TriangleMesh torus = Meshes.torus(10, 3, 16, 10);
    List<Vector3D> places =
        IntStream.range(0, torus.vertexCount()).mapToObj(torus::vertex).toList();
    List<int[]> faces =
        IntStream.range(0, torus.triangleCount())
            .mapToObj(t -> new int[] {torus.corner(t, 0), torus.corner(t, 1), torus.corner(t, 2)})
            .toList();
    var peer = SimpleTriangleMesh.from(places, faces, Precision.doubleEquivalenceOfEpsilon(1e-9));
    RegionBSPTree3D region = peer.toTree();
    MeshShape shape = MeshShape.of(torus);
    assertThat(shape.volume()).isCloseTo(region.getSize(), within(1e-6 * region.getSize()));
    assertThat(shape.area())
        .isCloseTo(region.getBoundarySize(), within(1e-6 * region.getBoundarySize()));
  }

  @Test
  void twoShellsAreSeenAsTwo() {
    TriangleMesh one = Meshes.tetrahedron(1);
    MeshAudit audit = MeshAudit.of(Meshes.both(one, Meshes.moved(one, 5, 0, 0)));
    assertThat(audit.shells()).isEqualTo(2);
    assertThat(audit.watertight()).isTrue();
    assertThat(audit.sound()).isFalse();
    assertThat(audit.holes()).isZero();
  }

  @Test
  void insideOutIsNotWatertight() {
    int[] corners = Meshes.tetrahedron(1).triangles();
    for (int t = 0; t < corners.length; t += 3) {
      swap(corners, t);
    }
    MeshAudit audit = MeshAudit.of(with(Meshes.tetrahedron(1), corners));
    assertThat(audit.volume()).isNegative();
    assertThat(audit.watertight()).isFalse();
  }

  @Test
  void flippedTriangleTanglesItsThreeEdges() {
    TriangleMesh torus = Meshes.torus(10, 3, 12, 8);
    int[] corners = torus.triangles();
    swap(corners, 30);
    MeshAudit audit = MeshAudit.of(with(torus, corners));
    assertThat(audit.topology().tangledEdges()).isEqualTo(3);
    assertThat(audit.watertight()).isFalse();
  }

  @Test
  void missingTriangleOpensThreeEdges() {
    TriangleMesh torus = Meshes.torus(10, 3, 12, 8);
    int[] corners = torus.triangles();
    MeshAudit audit = MeshAudit.of(with(torus, Arrays.copyOf(corners, corners.length - 3)));
    assertThat(audit.topology().openEdges()).isEqualTo(3);
    assertThat(audit.topology().closed()).isFalse();
  }

  @Test
  void doubledTriangleTanglesAndMeets() {
    TriangleMesh torus = Meshes.torus(10, 3, 12, 8);
    int[] corners = torus.triangles();
    int[] more = Arrays.copyOf(corners, corners.length + 3);
    System.arraycopy(corners, 30, more, corners.length, 3);
    MeshAudit audit = MeshAudit.of(with(torus, more));
    assertThat(audit.topology().tangledEdges()).isEqualTo(3);
    assertThat(audit.selfIntersections()).isPositive();
  }

  @Test
  void twoTetrahedraOnOneVertexArePinched() {
    TriangleMesh two =
        Meshes.soup(
            0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0,
            0, 0, 0, 1, 0, 1, 0, 0, 0, 0, -1, 0, 0, 0, -1, 0, 0, 0, 0, 0, 0, -1, -1, 0, 0, -1, 0, 0,
            0, 0, -1, 0, -1, 0, 0, 0, 0, 0, -1, 0, 0, 0, -1);
    MeshAudit audit = MeshAudit.of(two);
    assertThat(audit.topology().pinchedVertices()).isEqualTo(1);
    assertThat(audit.topology().openEdges() + audit.topology().tangledEdges()).isZero();
    assertThat(audit.watertight()).isFalse();
  }

  @Test
  void needleIsMeasuredAndRoundingMayFlattenIt() {
    double thin = 1e-9;
    TriangleMesh needle =
        Meshes.soup(100, 0, 0, 101, 0, 0, 102, thin, 0, 100, 0, 0, 0, 5, 0, 0, 0, 5);
    assertThat(MeshShape.of(needle).degenerateTriangles()).isZero();
    assertThat(MeshShape.of(needle).smallestAngle()).isPositive().isLessThan(1e-6);
    TriangleMesh flat = Meshes.soup(100, 7, 0, 101, 7, 0, 102, 7 + thin, 0);
    assertThat(MeshShape.of(flat).degenerateTriangles()).isZero();
    MeshAudit audit = MeshAudit.of(flat);
    assertThat(audit.shape().degenerateTriangles()).isEqualTo(1);
    assertThat(audit.minAngle()).isZero();
    assertThat(audit.shape().sharpShare()).isEqualTo(1);
  }

  /** A vertex moved onto its neighbours' line flattens one triangle of a solid, and only that. */
  @Test
  void flatTriangleWithinASolidIsCounted() {
    double[] xyz = {0, 0, 0, 4, 0, 0, 0, 4, 0, 0, 0, 4, 2, 0, 0};
    int[] corners = {0, 2, 1, 0, 4, 3, 4, 1, 3, 1, 2, 3, 0, 3, 2, 0, 1, 4};
    MeshAudit audit = MeshAudit.of(new TriangleMesh(xyz, corners));
    assertThat(audit.watertight()).isTrue();
    assertThat(audit.shape().degenerateTriangles()).isEqualTo(1);
    assertThat(audit.sound()).isFalse();
    // Its two neighbours across the line now touch the one along it.
    assertThat(audit.selfIntersections()).isEqualTo(2);
  }

  @Test
  void verticesThatRoundToOnePlaceAreSeen() {
    TriangleMesh mesh = Meshes.moved(Meshes.tetrahedron(1), 100, 0, 0);
    double[] xyz = Arrays.copyOf(mesh.coordinates(), 15);
    System.arraycopy(new double[] {100 + 1e-7, 0, -0.0}, 0, xyz, 12, 3);
    MeshAudit audit = MeshAudit.of(new TriangleMesh(xyz, mesh.triangles()));
    assertThat(audit.shape().repeatedVertices()).isEqualTo(1);
    assertThat(audit.topology().unusedVertices()).isEqualTo(1);
    assertThat(audit.watertight()).isFalse();
  }

  @Test
  void nothingAndNowhereAreRefused() {
    assertThatThrownBy(() -> MeshAudit.of(new TriangleMesh(new double[0], new int[0])))
        .hasMessageContaining("without triangles");
    double[] xyz = Meshes.tetrahedron(1).coordinates();
    xyz[4] = Double.NaN;
    assertThatThrownBy(() -> MeshAudit.of(new TriangleMesh(xyz, Meshes.tetrahedron(1).triangles())))
        .hasMessageContaining("vertex 1");
  }

  private static TriangleMesh with(TriangleMesh mesh, int[] corners) {
    return new TriangleMesh(mesh.coordinates(), corners);
  }

  private static void swap(int[] corners, int t) {
    int kept = corners[t];
    corners[t] = corners[t + 1];
    corners[t + 1] = kept;
  }
}
