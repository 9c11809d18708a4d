package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.RandomFile;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.TapedDigit;
import org.midlateral.inspection.Conformance;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.HalfEdges;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.HeightFieldPatches;
import org.midlateral.mesh.query.VertexStars;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.relief.Relief;

/** What saves time in the inspection of a solid finds the same as the long way. */
class ShortCutsTest {
  @ParameterizedTest
  @ValueSource(strings = {"bulbous-ring", "left-deficit", "slim-little"})
  void samplesPassTheLongWayToo(String sample) {
    Path file = Path.of("../samples", sample + ".yaml");
    Product product = ProductRecipe.make(Orders.read(file, List.of()).order(), List.of());
    for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
      assertThat(SlowChecks.faults(piece.solid(), piece.conformance())).isEmpty();
    }
  }

  /**
   * Random designs with sharp bends: one whose worst place the turn of the normals does not tell
   * of, others with raised marks and with edges that bow out between two points.
   */
  @ParameterizedTest
  @ValueSource(ints = {273, 281, 309, 513, 774, 1606})
  void theChordErrorIsThatOfTheWorstPlace(int index) {
    Product product = randomProduct(7, index);
    for (PieceInspection piece : product.inspection().orElseThrow().pieces()) {
      assertThat(SlowChecks.faults(piece.solid(), piece.conformance()))
          .noneMatch(fault -> fault.startsWith("the chord error"));
    }
  }

  /** A triangle without area has no distance to a place; what there is to measure still is. */
  @Test
  void aTriangleWithoutAreaLeavesTheOthersToBeMeasured() {
    Path file = Path.of("../samples/slim-little.yaml");
    Product product = ProductRecipe.make(Orders.read(file, List.of()).order(), List.of());
    Solid whole = product.orthosis().orElseThrow().trough();
    TriangleMesh mesh = whole.mesh();
    double[] xyz = mesh.coordinates();
    int t = whole.innerTriangles() / 2;
    int moved = mesh.corner(t, 0);
    double off = 0;
    for (int k = 0; k < 3; k++) {
      off = Math.hypot(off, xyz[3 * mesh.corner(t, 1) + k] - xyz[3 * moved + k]);
      xyz[3 * moved + k] = xyz[3 * mesh.corner(t, 1) + k];
    }
    Solid flat = with(whole, new TriangleMesh(xyz, mesh.triangles()));
    assertThat(MeshShape.of(flat.mesh()).degenerateTriangles()).isPositive();

    Conformance found = Conformance.of(flat, BoundingVolumeHierarchy.of(flat.mesh()), 0, List.of());

    // Where the vertex was, the next triangles now pass by, at most as far off as it was moved.
    assertThat(found.chordError()).isBetween(ErrorBudget.CHORD_OF_FACES, off);
    assertThat(found.gap().min()).isFinite();
  }

  private static Solid with(Solid solid, TriangleMesh mesh) {
    int n = solid.innerVertices();
    return new Solid(
        solid.piece(),
        mesh,
        IntStream.range(0, n).mapToDouble(solid::angle).toArray(),
        IntStream.range(0, n).mapToDouble(solid::station).toArray(),
        solid.innerTriangles(),
        solid.edgeVertices(),
        solid.firstLoop(),
        solid.edgeLength());
  }

  private static Product randomProduct(int seed, int index) {
    double[] draws = new Random(seed * 1_000_003 + index).doubles(RandomFile.DRAWS).toArray();
    List<String> entries = new ArrayList<>(RandomFile.entries(draws, 1.2));
    entries.removeIf(entry -> entry.matches("(relief.sore|room.swelling|print.proximal)=.*"));
    Order order = Orders.row(entries, "random", index, List.of()).order();
    // These designs were found with the pair of reliefs on every joint that stands out.
    if (Relief.suggested(
        order.measurements(), order.design().relief(), TapedDigit.of(order.measurements()))) {
      order = Orders.row(entries, "random", index, List.of("relief.sore=yes")).order();
    }
    return ProductRecipe.make(order, List.of());
  }

  /** Closed meshes shaken until they fold into themselves: the very same pairs. */
  @Test
  void shakenMeshesMeetInTheSamePlaces() {
    Random random = new Random(3);
    int folded = 0;
    for (int i = 0; i < 60; i++) {
      double[] xyz = Meshes.torus(10, 3, 24, 16).coordinates();
      double size = 0.06 * i;
      for (int k = 0; k < xyz.length; k++) {
        xyz[k] += size * (random.nextDouble() - 0.5);
      }
      TriangleMesh mesh = new TriangleMesh(xyz, Meshes.torus(10, 3, 24, 16).triangles());
      BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(mesh);
      TreeSet<Long> fast = pairs(tree.selfIntersections(100_000, twins(mesh)));
      assertThat(fast).isEqualTo(pairs(tree.selfIntersections(100_000, new int[0])));
      folded += fast.isEmpty() ? 0 : 1;
    }
    assertThat(folded).isBetween(20, 59);
  }

  /** Finer, so that large parts are sheets, and dented rather than shaken. */
  @Test
  void dentedMeshesMeetInTheSamePlaces() {
    Random random = new Random(7);
    int folded = 0;
    int inSheets = 0;
    for (int i = 0; i < 60; i++) {
      TriangleMesh torus = Meshes.torus(10, 3, 60, 36);
      double[] xyz = torus.coordinates();
      for (int dent = 0; dent < 4; dent++) {
        dent(xyz, 3 * random.nextInt(xyz.length / 3), 1 + 2 * random.nextDouble(), random, i);
      }
      TriangleMesh mesh = new TriangleMesh(xyz, torus.triangles());
      BoundingVolumeHierarchy tree = BoundingVolumeHierarchy.of(mesh);
      int[] sheets =
          HeightFieldPatches.of(
              xyz, mesh.triangles(), twins(mesh), VertexStars.axes(xyz, mesh.triangles()));
      inSheets += (int) Arrays.stream(sheets).filter(s -> s >= 0).count();
      TreeSet<Long> all = pairs(tree.selfIntersections(1_000_000, new int[0]));
      assertThat(pairs(tree.selfIntersections(1_000_000, twins(mesh)))).isEqualTo(all);
      assertThat(all).noneMatch(p -> inOneSheet(sheets, p));
      folded += all.isEmpty() ? 0 : 1;
    }
    assertThat(folded).isBetween(15, 55);
    assertThat(inSheets).isGreaterThan(60 * 4320 / 3);
  }

  private static boolean inOneSheet(int[] sheets, long pair) {
    int first = sheets[(int) (pair >> 32)];
    return first >= 0 && first == sheets[(int) pair];
  }

  /** Shears all that is near a place by so much that with luck it folds over. */
  private static void dent(double[] xyz, int place, double radius, Random random, int size) {
    double x = xyz[place];
    double y = xyz[place + 1];
    double z = xyz[place + 2];
    double push = 0.3 * size;
    double px = push * (random.nextDouble() - 0.5);
    double py = push * (random.nextDouble() - 0.5);
    double pz = push * (random.nextDouble() - 0.5);
    for (int k = 0; k < xyz.length; k += 3) {
      double d2 =
          Math.pow(xyz[k] - x, 2) + Math.pow(xyz[k + 1] - y, 2) + Math.pow(xyz[k + 2] - z, 2);
      double near = Math.max(0, 1 - d2 / (radius * radius));
      xyz[k] += px * near;
      xyz[k + 1] += py * near;
      xyz[k + 2] += pz * near;
    }
  }

  private static int[] twins(TriangleMesh mesh) {
    return new HalfEdges(mesh.vertexCount(), mesh.triangles()).twin;
  }

  @Test
  void aBoundedGapIsTheSmallestOrNothing() {
    BoundingVolumeHierarchy inner = BoundingVolumeHierarchy.of(Meshes.halfTube(8, 40, 30, 24, -1));
    BoundingVolumeHierarchy outer = BoundingVolumeHierarchy.of(Meshes.halfTube(9.6, 40, 30, 24, 1));
    double gap = inner.gap(outer).distance();
    assertThat(inner.gap(outer, gap * 0.999)).isEmpty();
    assertThat(inner.gap(outer, gap * 1.001).orElseThrow().distance())
        .isCloseTo(gap, within(1e-12));
  }

  private static TreeSet<Long> pairs(int[] found) {
    TreeSet<Long> pairs = new TreeSet<>();
    for (int i = 0; i < found.length; i += 2) {
      long low = Math.min(found[i], found[i + 1]);
      pairs.add(low << 32 | Math.max(found[i], found[i + 1]));
    }
    return pairs;
  }
}
