package org.midlateral.viewer.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;
import org.midlateral.solid.Solid;
import org.midlateral.viewer.lesson.LoadedSection.SectionOutline;
import org.midlateral.viewer.sample.Sample;

/** What is drawn moves as far as the figures under it say. */
class ComparisonTest {
  /** Of the sample whose sections are looked at (mm). */
  private static final double WALL = 1.4;

  @ParameterizedTest
  @EnumSource(names = {"SLIM", "DEFICIT"})
  void theFloorIsDrawnWhereTheFiguresHaveIt(Sample sample) throws Exception {
    Order order = Orders.parse(sample.text(), "", List.of()).order();
    Orthosis made = Orthosis.make(order);
    Rigidity rigidity = RigidityRecipe.of(made, List.of(0.3, 0.5));
    DigitSurface digit = made.digit();
    for (int i = 0; i < 2; i++) {
      Rigidity.Curve curve = rigidity.curves().get(i);
      HeldShell held = curve.held().orElseThrow();
      ElasticMotion motion = ElasticMotion.of(held, curve.support());
      double expected = rigidity.rigidity().wraps().get(i).finiteElements().deflectionAtPip();
      double from = curve.support().proximal().middle();
      double to = curve.support().distal().middle();
      Vector3D chord = held.floor(from).place().vectorTo(held.floor(to).place());
      Vector3D up = chord.cross(Vector3D.Unit.PLUS_Y).normalize();
      assertThat(floor(motion, held, from).norm()).isCloseTo(0, within(1e-12));
      assertThat(floor(motion, held, to).dot(up)).isCloseTo(0, within(1e-12));
      assertThat(floor(motion, held, digit.pipAxis()).dot(up))
          .isCloseTo(expected, Percentage.withPercentage(3));
      assertThat(nearest(motion, held, digit.pipAxis()).dot(up))
          .isCloseTo(expected, Percentage.withPercentage(5));
      assertThat(asymmetry(motion, held)).isLessThan(0.02 * expected);
    }
  }

  private static Vector3D floor(ElasticMotion motion, HeldShell held, double station) {
    HeldShell.Moved floor = held.floor(station);
    return motion.elastic(floor.place(), floor.moved());
  }

  /** Mean difference in height between the trough's two sides (mm): the sample is symmetric. */
  private static double asymmetry(ElasticMotion motion, HeldShell held) {
    Solid trough = held.pieces().get(0);
    double sum = 0;
    for (int v = 0; v < trough.innerVertices(); v++) {
      sum += Math.signum(trough.mesh().y(v)) * motion.displacement(0, v).getZ();
    }
    return Math.abs(sum / trough.innerVertices());
  }

  /** Displacement of the vertex nearest to the floor at a station; it may be 0.8 mm off (mm). */
  private static Vector3D nearest(ElasticMotion motion, HeldShell held, double station) {
    Solid trough = held.pieces().get(0);
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < trough.innerVertices(); v++) {
      double off = Math.hypot(trough.station(v) - station, 8 * trough.angle(v));
      if (off < least) {
        least = off;
        best = v;
      }
    }
    return motion.displacement(0, best);
  }

  @ParameterizedTest
  @EnumSource(names = "SLIM")
  void allWrapsAreDrawnByElementsAndToOneScale(Sample sample) throws Exception {
    Order order = Orders.parse(sample.text(), "", List.of()).order();
    Comparison comparison = Comparison.of(order);
    assertThat(comparison.byElements()).isTrue();
    assertThat(comparison.cases()).hasSize(4);
    double[] farthest = comparison.cases().stream().mapToDouble(BentWrap::farthest).toArray();
    assertThat(farthest[0]).isGreaterThan(farthest[1]);
    assertThat(farthest[1]).isGreaterThan(farthest[2]);
    // The largest is drawn 13 mm long at most, and more than a third of that.
    assertThat(farthest[0] * comparison.exaggeration()).isBetween(4.0, 13.0);
    theReasonsHaveTheFigures(comparison);
    for (int i = 0; i < 4; i++) {
      double closure = comparison.cases().get(i).support().pipForce();
      assertThat(2 * comparison.reasons().wraps().get(i).pull()).isEqualTo(closure);
    }
  }

  /** Between the innermost points of both sides, in the drawn outlines. */
  private static void theSectionsCloseAsFarAsTold(Reasons reasons) {
    for (Reasons.WrapReason wrap : reasons.wraps()) {
      LoadedSection section = wrap.section().orElseThrow();
      if (wrap.rims().isPresent()) {
        SectionOutline trough = section.outlines().get(0);
        DoubleSummaryStatistics drawn = opening(trough);
        assertThat(wrap.rims().get()).as(wrap.title()).isBetween(drawn.getMin(), drawn.getMax());
        assertThat(crest(trough))
            .as(wrap.title())
            .isCloseTo(wrap.rims().get(), Percentage.withPercentage(8));
        // All of a rim goes the same way, and none of it twice as far as is told.
        assertThat(drawn.getMax()).isNegative();
        assertThat(drawn.getMin()).isGreaterThan(2 * wrap.rims().get());
        Loop large = trough.exaggerated(20);
        DoubleSummaryStatistics drawnLarge =
            opening(new SectionOutline(false, trough.before(), large));
        assertThat(drawnLarge.getMin())
            .isCloseTo(20 * drawn.getMin(), Percentage.withPercentage(0.1));
      }
      assertThat(section.farthest() * reasons.exaggeration()).isLessThanOrEqualTo(3);
      theStrapLiesOnFingerAndRims(reasons, wrap);
    }
  }

  /** It leaves an open trough at a rim on each side, and reaches over the back of the finger. */
  private static void theStrapLiesOnFingerAndRims(Reasons reasons, Reasons.WrapReason wrap) {
    Strap strap = Strap.round(wrap.loops(), reasons.skin());
    assertThat(strap.rims()).as(wrap.title()).hasSize(wrap.rims().isPresent() ? 2 : 0);
    double top =
        IntStream.range(0, strap.line().size()).mapToDouble(strap.line()::n).max().orElse(0);
    if (wrap.rims().isPresent()) {
      assertThat(top).isEqualTo(reasons.back());
      assertThat(strap.rims().get(0).y() + strap.rims().get(1).y()).isCloseTo(0, within(0.1));
    } else {
      assertThat(top).isGreaterThan(reasons.back());
    }
  }

  /**
   * By how much the rims open, by each point of their rounding: a rim that turns closes inside by
   * more than outside, and its crest, of which is told, lies between (mm).
   */
  private static DoubleSummaryStatistics opening(SectionOutline outline) {
    Loop before = outline.before();
    int crest =
        IntStream.range(0, before.size())
            .boxed()
            .max(Comparator.comparingDouble(before::n))
            .orElseThrow();
    return IntStream.range(0, before.size())
        .filter(i -> Math.abs(before.y(i)) > 1)
        .filter(
            i ->
                Math.hypot(
                        Math.abs(before.y(i)) - Math.abs(before.y(crest)),
                        before.n(i) - before.n(crest))
                    < WALL)
        .mapToDouble(i -> 2 * Math.signum(before.y(i)) * (outline.under().y(i) - before.y(i)))
        .summaryStatistics();
  }

  /**
   * By how much the rims open at their crests (mm): where the outline goes round the end of the
   * wall, half way between its inside and its outside.
   */
  private static double crest(SectionOutline outline) {
    return Stream.of(-1, 1).mapToDouble(side -> crest(outline, side)).sum();
  }

  private static double crest(SectionOutline outline, int side) {
    Loop before = outline.before();
    int end =
        IntStream.range(0, before.size())
            .filter(i -> side * before.y(i) > 0)
            .boxed()
            .max(Comparator.comparingDouble(i -> Math.atan2(side * before.y(i), -before.n(i))))
            .orElseThrow();
    List<Integer> round =
        IntStream.range(end + before.size() / 2, end + 3 * before.size() / 2)
            .filter(
                i -> Math.hypot(before.y(i) - before.y(end), before.n(i) - before.n(end)) < WALL)
            .boxed()
            .toList();
    DoubleSummaryStatistics radii =
        round.stream().mapToDouble(i -> radius(before, i)).summaryStatistics();
    double middle = (radii.getMin() + radii.getMax()) / 2;
    for (int i : round) {
      double share = (middle - radius(before, i)) / (radius(before, i + 1) - radius(before, i));
      if (share >= 0 && share < 1) {
        Loop under = outline.under();
        double first = under.y(i) - before.y(i);
        double second = under.y(i + 1) - before.y(i + 1);
        return side * (first + share * (second - first));
      }
    }
    throw new AssertionError("no crest");
  }

  private static double radius(Loop loop, int i) {
    return Math.hypot(loop.y(i), loop.n(i));
  }

  /** What is drawn as a reason is what the table's figures are made of. */
  private static void theReasonsHaveTheFigures(Comparison comparison) {
    Reasons reasons = comparison.reasons();
    double modulus = 0;
    double before = 0;
    for (Reasons.WrapReason wrap : reasons.wraps()) {
      // EI over I is the one modulus of all of them; EI was taken in the panel next to the axis.
      double each = wrap.bending() / wrap.moments().aboutY();
      modulus = modulus == 0 ? each : modulus;
      assertThat(each).as(wrap.title()).isCloseTo(modulus, Percentage.withPercentage(4));
      double depth = wrap.reach(1) + wrap.reach(-1);
      assertThat(depth).as(wrap.title()).isGreaterThan(before);
      before = depth;
    }
    Reasons.RingReason ring = reasons.ring().orElseThrow();
    assertThat(ring.slipping()).isBetween(ring.trough(), ring.bonded() / 2);
    assertThat(reasons.wraps().get(0).rims()).isPresent();
    theSectionsCloseAsFarAsTold(reasons);
    assertThat(reasons.wraps().get(3).rims()).isEmpty();
    assertThat(reasons.split().orElseThrow().sum()).isGreaterThan(0);
    assertThat(reasons.support().pipForce())
        .isCloseTo(
            reasons.support().proximalForce() + reasons.support().distalForce(), within(1e-12));
  }
}
