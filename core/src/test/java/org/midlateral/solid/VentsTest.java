package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;

/** Vents of both pieces: true holes, round, and only where nothing speaks against one. */
class VentsTest {
  private static final double DIAMETER = 2.5;
  private static Orthosis made;

  private static Orthosis make(double fineness) throws Exception {
    return Orthosis.make(
        Orders.read(
                Path.of("..", "samples", "bulbous-ring.yaml"),
                List.of(
                    "print.label=yes",
                    "reference=r7",
                    "trough.vents.diameter=" + DIAMETER,
                    "trough.vents.spacing=6.5",
                    "dorsal-shell.vents.diameter=" + DIAMETER,
                    "dorsal-shell.vents.spacing=6.5",
                    "dorsal-shell.length=38",
                    "trough.liner=0"))
            .order(),
        fineness);
  }

  @BeforeAll
  static void make() throws Exception {
    made = make(1);
  }

  /** Clear of both edges and of the joint, a shell of 15 mm has room for none. */
  @Test
  void ventsThatFindNoRoomAreTold() throws Exception {
    Orders.Result read =
        Orders.read(
            Path.of("..", "samples", "slim-little.yaml"),
            List.of(
                "dorsal-shell.make=yes",
                "dorsal-shell.length=15",
                "dorsal-shell.vents.diameter=3",
                "trough.vents.diameter=3"));
    Product product = ProductRecipe.make(read.order(), read.cautions());
    assertThat(product.ok()).isTrue();
    assertThat(product.findings())
        .filteredOn(finding -> finding.code().equals("no-vents"))
        .singleElement()
        .satisfies(finding -> assertThat(finding.key()).isEqualTo("dorsal-shell.vents.diameter"));
    assertThat(ProductRecipe.checked(product).findings())
        .filteredOn(finding -> finding.code().equals("finite-elements"))
        .extracting(Finding::text)
        .anyMatch(text -> text.contains("leave the vents out"));
  }

  /** The Euler characteristic of a closed surface with k tunnels is 2 - 2 k. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.7})
  void eachVentIsATunnel(double fineness) throws Exception {
    for (Solid solid : make(fineness).solids()) {
      int holes = solid.piece().outline().polygon().getNumInteriorRing();
      MeshAudit audit = MeshAudit.of(solid.mesh());
      long edges = 3L * solid.mesh().triangleCount() / 2;

      assertThat(holes).as(solid.piece().name()).isPositive();
      assertThat(solid.mesh().vertexCount() - edges + solid.mesh().triangleCount())
          .isEqualTo(2 - 2L * holes);
      assertThat(audit.sound()).isTrue();
      assertThat(audit.holes()).isEqualTo(holes);
    }
  }

  @Test
  void eachVentIsRoundInTheMiddleOfTheWall() {
    for (Solid solid : made.solids()) {
      Polygon polygon = solid.piece().outline().polygon();
      BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(solid.mesh());
      for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
        Coordinate[] ring = polygon.getInteriorRingN(h).getCoordinates();
        int half = (ring.length - 1) / 2;
        for (int i = 0; i < half; i += 6) {
          Vector3D here = lifted(solid.piece(), ring[i]);
          Vector3D across = lifted(solid.piece(), ring[i + half]);
          assertThat(here.distance(across)).isCloseTo(DIAMETER, within(0.1));
          // The mesh's edge runs there, and nothing of it inside.
          assertThat(tree.closest(here).distance()).isLessThan(0.05);
          assertThat(tree.closest(here.lerp(across, 0.5)).distance())
              .isCloseTo(DIAMETER / 2, within(0.08));
        }
      }
    }
  }

  @Test
  void ventsKeepOffRimsReliefsThePressedZoneAndTheLabel() {
    double axis = made.digit().pipAxis();
    for (Solid solid : made.solids()) {
      Piece piece = solid.piece();
      Polygon polygon = piece.outline().polygon();
      LineString edge = polygon.getExteriorRing();
      for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
        LineString vent = polygon.getInteriorRingN(h);
        assertThat(vent.distance(edge)).isGreaterThan(piece.wall());
        assertThat(vent.distance(piece.raised().orElseThrow().shape()))
            .isGreaterThan(piece.wall() / 2);
        for (Coordinate c : vent.getCoordinates()) {
          // Half of a usual strap's 12 mm.
          assertThat(Math.abs(c.y - axis)).isGreaterThan(6);
          assertThat(made.relief().field().at(piece.skinGirth(c.x, c.y), c.y)).isZero();
        }
      }
    }
  }

  /** The point of the middle of the wall over a place of the unrolled plane. */
  private static Vector3D lifted(Piece piece, Coordinate c) {
    Slice slice = piece.digit().slice(c.y);
    double[] p = new double[6];
    new OffsetSurface(piece).at(slice, piece.midline().angle(slice, c.x), false, p, 0);
    double up = piece.wall() / 2;
    return Vector3D.of(p[0] + up * p[3], p[1] + up * p[4], p[2] + up * p[5]);
  }
}
