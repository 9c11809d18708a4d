package org.midlateral.recipe.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.record.MakingRecord;
import org.midlateral.recipe.record.MakingSource;

/** Where parts lie, by outlines that JTS unites from their triangles. */
class PlateTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** An L, which another may lie in: 40 by 40 with a quarter of 28 by 28 left out, 6 high. */
  private static final TriangleMesh ANGLE =
      both(Meshes.box(40, 12, 6), Meshes.moved(Meshes.box(12, 28, 6), 0, 12, 0));

  private static TriangleMesh both(TriangleMesh a, TriangleMesh b) {
    double[] xyz = new double[a.coordinates().length + b.coordinates().length];
    System.arraycopy(a.coordinates(), 0, xyz, 0, a.coordinates().length);
    System.arraycopy(b.coordinates(), 0, xyz, a.coordinates().length, b.coordinates().length);
    int[] corners = new int[a.triangles().length + b.triangles().length];
    System.arraycopy(a.triangles(), 0, corners, 0, a.triangles().length);
    for (int i = 0; i < b.triangles().length; i++) {
      corners[a.triangles().length + i] = a.vertexCount() + b.triangles()[i];
    }
    return new TriangleMesh(xyz, corners);
  }

  private static PlatePart part(TriangleMesh mesh) {
    MakingRecord record =
        MakingRecord.of(
            "inv-a",
            Optional.empty(),
            MakingSource.of("t:2", "", List.of(), List.of(), List.of(), List.of()),
            MakingRecord.RecordedResult.none("made", ""),
            new MakingRecord.RecordedPlace(1, Optional.empty(), Optional.empty()),
            Map.of());
    return new PlatePart(record, new NamedSolid("a", mesh, AffineTransformMatrix3D.identity()));
  }

  private static List<PlatePart> parts(int count, TriangleMesh mesh) {
    List<PlatePart> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      parts.add(part(mesh));
    }
    return parts;
  }

  private static Machine machine(String process, double width, double depth, double height) {
    PrintProcess limits =
        PrintProcess.all().stream().filter(p -> p.name().equals(process)).findFirst().orElseThrow();
    return new Machine(
        "m", ProcessDesign.FILAMENT, limits, new Machine.Bed(width, depth, height), 5, 3, 0, 0, 0);
  }

  private static Geometry outline(NamedSolid solid) {
    List<Geometry> triangles = new ArrayList<>();
    for (int t = 0; t < solid.mesh().triangleCount(); t++) {
      Coordinate[] ring = new Coordinate[4];
      for (int k = 0; k < 3; k++) {
        Vector3D p = solid.pose().apply(solid.mesh().vertex(solid.mesh().corner(t, k)));
        ring[k] = new Coordinate(p.getX(), p.getY());
      }
      ring[3] = ring[0];
      Geometry triangle = FACTORY.createPolygon(ring);
      if (triangle.getArea() > 1e-9) {
        triangles.add(triangle);
      }
    }
    return CascadedPolygonUnion.union(triangles);
  }

  @Test
  void partsKeepTheirDistanceAndLieOnTheBed() {
    Machine machine = machine("filament", 130, 120, 100);
    Plate.LaidParts laid = Plate.lay(parts(9, ANGLE), machine);
    assertThat(laid.tooLarge()).isEmpty();
    int count = 0;
    for (Plate plate : laid.plates()) {
      List<NamedSolid> solids = plate.solids();
      count += solids.size();
      for (int i = 0; i < solids.size(); i++) {
        Geometry a = outline(solids.get(i));
        assertThat(a.getEnvelopeInternal().getMinX()).isGreaterThanOrEqualTo(5 - 1e-6);
        assertThat(a.getEnvelopeInternal().getMinY()).isGreaterThanOrEqualTo(5 - 1e-6);
        assertThat(a.getEnvelopeInternal().getMaxX()).isLessThanOrEqualTo(125 + 1e-6);
        assertThat(a.getEnvelopeInternal().getMaxY()).isLessThanOrEqualTo(115 + 1e-6);
        for (int j = 0; j < i; j++) {
          assertThat(a.distance(outline(solids.get(j)))).isGreaterThanOrEqualTo(3 - 1e-6);
        }
      }
    }
    assertThat(count).isEqualTo(9);
  }

  /** Two lie in one another on 58 by 58 mm, where boxes of 40 by 40 would need a bed each. */
  @Test
  void partsLieWithinOneAnothersOutline() {
    Plate.LaidParts laid = Plate.lay(parts(2, ANGLE), machine("filament", 68, 68, 100));
    assertThat(laid.plates()).hasSize(1);
  }

  @Test
  void powderHoldsLayersOverOneAnother() {
    Machine machine = machine("powder", 60, 60, 30);
    List<PlatePart> parts = parts(4, Meshes.box(40, 40, 6));
    Plate.LaidParts laid = Plate.lay(parts, machine);
    // 6 and 3 between: three in 30 mm, the fourth in the next.
    assertThat(laid.plates()).hasSize(2);
    assertThat(laid.plates().get(0).parts())
        .extracting(LaidPart::base)
        .containsExactly(0.0, 9.0, 18.0);
    assertThat(Plate.lay(parts, machine("filament", 60, 60, 30)).plates()).hasSize(4);
  }

  @Test
  void whatHasNoRoomIsToldAndTheRestIsLaid() {
    List<PlatePart> parts = new ArrayList<>(parts(1, ANGLE));
    parts.add(part(Meshes.box(100, 10, 10)));
    parts.add(part(Meshes.box(10, 10, 99)));
    Plate.LaidParts laid = Plate.lay(parts, machine("filament", 60, 60, 50));
    assertThat(laid.tooLarge()).hasSize(2);
    assertThat(laid.plates()).hasSize(1);
  }

  /** The cells cover the outline, and reach no further beyond it than a cell on each side. */
  @Test
  void aFootprintIsTheOutlineInCells() {
    TriangleMesh torus = Meshes.torus(12, 4, 60, 24);
    Geometry exact = outline(new NamedSolid("t", torus, AffineTransformMatrix3D.identity()));
    double area = Footprint.of(torus, AffineTransformMatrix3D.identity()).area();
    assertThat(area).isBetween(exact.getArea(), exact.buffer(Footprint.CELL).getArea());
    TriangleMesh box = Meshes.moved(Meshes.box(10, 4, 2), 0.1, 0.1, 0);
    assertThat(Footprint.of(box, AffineTransformMatrix3D.identity()).area())
        .isCloseTo(10 * 4, within(2 * 0.5 * (10 + 4) + 1));
  }
}
