package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.product.ProductWriter.Writing;
import org.midlateral.solid.Solid;

/**
 * The invariants of the trough on every sample. G1 perimeter, G2 girth between the finished edges,
 * G3 wall, G4 gap to the skin, G6 closed surface, G7 no meeting triangles, G8 no needles, G9 chord
 * error, G10 mirrored and converted input, G12 same bytes. What the program measures itself is
 * measured a second time here where it can be, on a skin of flat triangles of the test's own.
 */
class InvariantsTest {
  private static final int ROUND = 720;
  private static final double STEP = 0.25;

  private static Order sample(String name, String... more) {
    return Orders.read(Path.of("..", "samples", name + ".yaml"), List.of(more)).order();
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void theInspectionFindsNothing(Path file) {
    Order order = Orders.read(file, List.of()).order();
    Product product = ProductRecipe.make(order, List.of());
    PieceInspection trough = product.inspection().orElseThrow().trough();
    TroughDesign design = order.design().trough();

    // How a piece of filament stands on the bed is a note about the printing, not about the piece.
    assertThat(product.findings())
        .filteredOn(f -> f.text().contains("trough"))
        .filteredOn(f -> !List.of("print-footing", "print-layers").contains(f.code()))
        .isEmpty();
    product
        .inspection()
        .orElseThrow()
        .perimeters()
        .forEach(
            (level, perimeter) ->
                assertThat(perimeter)
                    .isCloseTo(
                        order.measurements().circumference().get(level), within(ErrorBudget.TAPE)));
    assertThat(trough.conformance().minWall())
        .isGreaterThanOrEqualTo(ErrorBudget.LEAST_WALL * design.wall());
    assertThat(trough.conformance().gap().min())
        .isGreaterThanOrEqualTo(design.clearance() + design.liner() - ErrorBudget.CLEARANCE);
    assertThat(trough.reliefError()).isLessThanOrEqualTo(ErrorBudget.RELIEF);
    assertThat(trough.conformance().chordError()).isLessThanOrEqualTo(ErrorBudget.CHORD);
    assertThat(trough.conformance().trimError().orElseThrow())
        .isLessThanOrEqualTo(ErrorBudget.TRIM);
    MeshAudit audit = trough.audit();
    assertThat(audit.sound()).isTrue();
    assertThat(audit.selfIntersections()).isZero();
    assertThat(audit.holes())
        .isEqualTo(trough.solid().piece().outline().polygon().getNumInteriorRing());
    assertThat(audit.minAngle()).isGreaterThanOrEqualTo(ErrorBudget.LEAST_ANGLE);
    assertThat(audit.shape().sharpShare()).isLessThanOrEqualTo(ErrorBudget.SHARP_SHARE);
  }

  /** G2 and G4, from the solid's points and the nearest points of a finely triangulated skin. */
  @ParameterizedTest
  @ValueSource(strings = {"slim-little", "bulbous-ring", "left-deficit"})
  void girthAndGapHoldOnAnotherSkin(String name) throws Exception {
    Order order = sample(name);
    Solid solid = Orthosis.make(order).trough();
    Skin skin = new Skin(solid.piece().digit(), -order.measurements().palmarCreaseToWeb());
    TriangleMesh mesh = solid.mesh();
    TroughDesign design = order.design().trough();
    double from = solid.piece().outline().flankStart();
    double to = solid.piece().outline().flankEnd();
    int bins = (int) ((to - from) / 2);
    double[][] past = new double[2][bins];
    for (double[] side : past) {
      java.util.Arrays.fill(side, Double.NEGATIVE_INFINITY);
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double[] foot = skin.foot(mesh.vertex(v));
      if (v < solid.innerVertices()) {
        assertThat(foot[2])
            .isGreaterThan(design.clearance() + design.liner() - ErrorBudget.CLEARANCE);
      }
      int bin = (int) ((foot[1] - from) / 2);
      if (foot[1] > from && bin < bins) {
        int side = foot[0] > 0 ? 1 : 0;
        double trim = design.wrap() / 2 * solid.piece().digit().circumference(foot[1]);
        past[side][bin] = Math.max(past[side][bin], Math.abs(foot[0]) - trim);
      }
    }
    for (int bin = 0; bin < bins; bin++) {
      // Both edges together are within 0.1 mm of the wrap's share of the circumference.
      assertThat(past[0][bin] + past[1][bin])
          .as("station %.0f mm", from + 2 * bin)
          .isCloseTo(0, within(2 * ErrorBudget.TRIM));
    }
  }

  /** G9, against the points of the same trough meshed four times finer. */
  @ParameterizedTest
  @ValueSource(strings = {"slim-little", "bulbous-ring", "covered-tip"})
  void aFinerMeshLiesWithinTheChordError(String name) throws Exception {
    Solid solid = ProductRecipe.make(sample(name), List.of()).orthosis().orElseThrow().trough();
    TriangleMesh fine = Orthosis.make(sample(name, "print.edge-length=0.2")).trough().mesh();
    BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(solid.mesh());
    double worst = 0;
    for (int v = 0; v < fine.vertexCount(); v++) {
      worst = Math.max(worst, tree.distance(fine.x(v), fine.y(v), fine.z(v), 5));
    }

    assertThat(worst).isLessThanOrEqualTo(ErrorBudget.CHORD);
    assertThat(worst).isGreaterThan(0.001);
  }

  /** G10: the other hand's file gives the mirror image. */
  @Test
  void theOtherHandIsTheMirrorImage() throws Exception {
    TriangleMesh right = Orthosis.make(sample("bulbous-ring")).trough().mesh();
    TriangleMesh left = Orthosis.make(sample("bulbous-ring", "hand=left")).trough().mesh();

    assertThat(left.coordinates()).isEqualTo(right.mirrored().coordinates());
    assertThat(left.triangles()).isEqualTo(right.mirrored().triangles());
    // Not the same on both sides: one bubble sits on the radial side only.
    assertThat(left.coordinates()).isNotEqualTo(right.coordinates());
  }

  @Test
  void theExtraBubbleIsOnTheRadialSide() throws Exception {
    Solid right = Orthosis.make(sample("bulbous-ring")).trough();
    Solid left = Orthosis.make(sample("bulbous-ring", "hand=left")).trough();

    // +y is radial on a right hand and ulnar on a left one.
    assertThat(right.piece().gap().at(10, 12)).isGreaterThan(right.piece().gap().at(-10, 12) + 0.7);
    assertThat(left.piece().gap().at(-10, 12)).isGreaterThan(left.piece().gap().at(10, 12) + 0.7);
  }

  /** G10: a file in inches gives the solid of the same file in millimetres. */
  @Test
  void inchesGiveTheSameSolid() throws Exception {
    Order millimetres = sample("slim-little");
    Measurements m = millimetres.measurements();
    List<String> inches = new ArrayList<>();
    m.circumference()
        .forEach((l, tape) -> inches.add("circumference." + l.key() + "=" + tape / 25.4 + " in"));
    inches.add("length.palmar-crease-to-web=" + m.palmarCreaseToWeb() / 25.4 + " in");
    inches.add("length.web-to-pip=" + m.webToPip() / 25.4 + " in");
    inches.add("length.pip-to-dip=" + m.pipToDip() / 25.4 + " in");
    inches.add("length.dip-to-tip=" + m.dipToTip() / 25.4 + " in");
    inches.add("trough.wall=" + 1.4 / 25.4 + " in");
    inches.add("trough.corner=" + 3 / 25.4 + " in");
    double[] a = Orthosis.make(millimetres).trough().mesh().coordinates();
    double[] b =
        Orthosis.make(sample("slim-little", inches.toArray(String[]::new)))
            .trough()
            .mesh()
            .coordinates();

    assertThat(b).hasSameSizeAs(a);
    for (int i = 0; i < a.length; i++) {
      assertThat(b[i]).isCloseTo(a[i], within(ErrorBudget.UNITS * 60));
    }
  }

  /** G12: the same order gives the same bytes. */
  @Test
  void theSameOrderGivesTheSameBytes(@TempDir Path folder) throws Exception {
    Path first = Files.createDirectory(folder.resolve("first"));
    Path second = Files.createDirectory(folder.resolve("second"));
    Order order = sample("covered-tip", "dorsal-shell.make=no");
    Writing writing = new Writing(List.of(SolidFormat.values()), false, true, Optional.empty());
    ProductWriter.write(ProductRecipe.make(order, List.of()), first, writing);
    ProductWriter.write(ProductRecipe.make(order, List.of()), second, writing);

    try (var files = Files.newDirectoryStream(first)) {
      for (Path file : files) {
        assertThat(second.resolve(file.getFileName())).hasSameBinaryContentAs(file);
      }
    }
  }

  /** The skin as flat triangles, finer than the chord error asks for. */
  private static final class Skin {
    private final DigitSurface digit;
    private final double[] station;
    private final TriangleMesh mesh;
    private final BoundingVolumeHierarchy tree;

    Skin(DigitSurface digit, double from) {
      this.digit = digit;
      int rows = (int) ((digit.pulpEnd() - 0.05 - from) / STEP) + 1;
      station = new double[rows];
      double[] xyz = new double[3 * rows * ROUND];
      for (int r = 0; r < rows; r++) {
        station[r] = from + r * STEP;
        Slice slice = digit.slice(station[r]);
        for (int i = 0; i < ROUND; i++) {
          System.arraycopy(slice.point(angle(i)).toArray(), 0, xyz, 3 * (r * ROUND + i), 3);
        }
      }
      int[] corners = new int[6 * (rows - 1) * ROUND];
      int n = 0;
      for (int r = 0; r + 1 < rows; r++) {
        for (int i = 0; i < ROUND; i++) {
          int j = (i + 1) % ROUND;
          int a = r * ROUND;
          int b = a + ROUND;
          for (int corner : new int[] {a + i, a + j, b + j, a + i, b + j, b + i}) {
            corners[n++] = corner;
          }
        }
      }
      mesh = new TriangleMesh(xyz, corners);
      tree = BoundingVolumeHierarchy.of(mesh);
    }

    private static double angle(int i) {
      return 2 * Math.PI * i / ROUND - Math.PI;
    }

    /** Girth, station and distance of a point's foot. */
    double[] foot(Vector3D point) {
      var nearest = tree.closest(point);
      double[] weight = weights(nearest.triangle(), nearest.point());
      double s = 0;
      double t = 0;
      double first = angle(mesh.corner(nearest.triangle(), 0) % ROUND);
      for (int c = 0; c < 3; c++) {
        int v = mesh.corner(nearest.triangle(), c);
        s += weight[c] * station[v / ROUND];
        double turn = angle(v % ROUND) - first;
        t += weight[c] * (first + Math.IEEEremainder(turn, 2 * Math.PI));
      }
      Slice slice = digit.slice(Math.min(s, digit.pulpEnd() - 0.05));
      return new double[] {slice.girth(t), s, nearest.distance()};
    }

    private double[] weights(int t, Vector3D p) {
      Vector3D a = mesh.vertex(mesh.corner(t, 0));
      Vector3D b = mesh.vertex(mesh.corner(t, 1));
      Vector3D c = mesh.vertex(mesh.corner(t, 2));
      Vector3D n = a.vectorTo(b).cross(a.vectorTo(c));
      double wa = p.vectorTo(b).cross(p.vectorTo(c)).dot(n) / n.normSq();
      double wb = p.vectorTo(c).cross(p.vectorTo(a)).dot(n) / n.normSq();
      return new double[] {wa, wb, 1 - wa - wb};
    }
  }
}
