package org.midlateral.document.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.document.bench.BenchFiles;
import org.midlateral.document.drawing.Drawing;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.document.drawing.Mark.LineStroke;
import org.midlateral.document.drawing.Mark.PointMark;
import org.midlateral.document.drawing.Pen;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.Strap;
import org.midlateral.recipe.Orthosis;

/** Cuts hook and straps out of the drawing, as from paper, and closes them round the girth. */
class StrapFigureTest {
  private static final int FINGERS = 60;

  /** Both straps on the hook, unrolled: the hook lies at 0, and again at every whole girth. */
  private record Closed(
      double girth,
      Envelope hook,
      Envelope first,
      Envelope second,
      Envelope firstStays,
      Envelope secondStays) {

    static Closed of(Drawing drawing, double girth) {
      List<Envelope> cut = boxes(drawing);
      assertThat(cut).hasSize(3);
      Envelope hook = cut.get(0);
      Envelope two = cut.get(1);
      Envelope one = cut.get(2);
      double middle = hook.getMinX() + hook.getWidth() / 2;
      double lane = hook.getMinY() + hook.getHeight() / 2;
      double oneStays = folds(drawing, one).get(0) - one.getMinX();
      double twoStays = two.getMaxX() - folds(drawing, two).get(0);
      return new Closed(
          girth,
          hook,
          new Envelope(
              middle, middle + one.getWidth(), hook.getMinY(), hook.getMinY() + one.getHeight()),
          new Envelope(middle - two.getWidth(), middle, lane, lane + two.getHeight()),
          new Envelope(middle, middle + oneStays, hook.getMinY(), hook.getMinY() + one.getHeight()),
          new Envelope(middle - twoStays, middle, lane, lane + two.getHeight()));
    }

    private static List<Envelope> boxes(Drawing drawing) {
      return drawing.marks().stream()
          .filter(mark -> mark instanceof LineStroke s && s.pen() == Pen.CUT && s.closed())
          .map(mark -> box(((LineStroke) mark).points()))
          .toList();
    }

    /** Where a strap's own fold lines cross it; the attached end's first. */
    private static List<Double> folds(Drawing drawing, Envelope strap) {
      List<Double> at = new ArrayList<>();
      drawing.marks().stream()
          .filter(mark -> mark instanceof LineStroke s && s.pen() == Pen.FOLD)
          .map(mark -> box(((LineStroke) mark).points()))
          .filter(strap::contains)
          .forEach(line -> at.add(line.getMinX()));
      return at;
    }

    private static Envelope box(List<PointMark> points) {
      Envelope box = new Envelope();
      points.forEach(p -> box.expandToInclude(p.x(), p.y()));
      return box;
    }

    private Envelope moved(Envelope box, double turns) {
      Envelope moved = new Envelope(box);
      moved.translate(turns * girth, 0);
      return moved;
    }

    /** Free hook that the first strap comes to lie on, once round. */
    Envelope firstLands() {
      return free(moved(hook, 1).intersection(first), moved(firstStays, 1));
    }

    Envelope secondLands() {
      return free(moved(hook, -1).intersection(second), moved(secondStays, -1));
    }

    /** A landing without what an attached end covers, which is at one of its ends. */
    private static Envelope free(Envelope landing, Envelope stays) {
      Envelope covered = landing.intersection(stays);
      return covered.centre().x > landing.centre().x
          ? new Envelope(landing.getMinX(), covered.getMinX(), landing.getMinY(), landing.getMaxY())
          : new Envelope(
              covered.getMaxX(), landing.getMaxX(), landing.getMinY(), landing.getMaxY());
    }

    void assertCloses() {
      Envelope slack = new Envelope(hook);
      slack.expandBy(1e-9);
      assertThat(slack.contains(firstStays)).isTrue();
      assertThat(slack.contains(secondStays)).isTrue();
      for (Envelope stays : List.of(firstStays, secondStays)) {
        assertThat(stays.getWidth()).isGreaterThanOrEqualTo(12 - 1e-9);
        assertThat(stays.getHeight()).isCloseTo(hook.getHeight() / 2, within(1e-9));
      }
      assertThat(firstLands().getWidth()).isGreaterThanOrEqualTo(12 - 1e-9);
      assertThat(secondLands().getWidth()).isGreaterThanOrEqualTo(12 - 1e-9);
      // No end lies where another strap lands: each opens while the other stays closed.
      assertThat(moved(firstLands(), -1).intersection(secondStays).getArea()).isLessThan(1e-9);
      assertThat(moved(secondLands(), 1).intersection(firstStays).getArea()).isLessThan(1e-9);
      assertThat(first.getMaxY()).isLessThanOrEqualTo(second.getMinY() + 1e-9);
      assertThat(second.getMaxY()).isLessThanOrEqualTo(hook.getMaxY() + 1e-9);
      assertThat(first.getWidth() - girth).isGreaterThanOrEqualTo(15 - 1e-9);
      assertThat(second.getWidth() - girth).isGreaterThanOrEqualTo(15 - 1e-9);
    }
  }

  private static boolean assertCloses(Orthosis orthosis) {
    Closure closure =
        Closure.of(orthosis.order(), orthosis.digit(), orthosis.relief(), orthosis.solids());
    if (closure.straps().isEmpty()) {
      return false;
    }
    Strap strap = closure.straps().get(0);
    Measurements measured = orthosis.order().measurements();
    Drawing drawing =
        StrapFigure.of(closure.straps(), measured.hand(), new Lengths(measured.unit()));
    Closed closed = Closed.of(drawing, strap.girth());
    closed.assertCloses();
    // The hook lies clear of the shell's edges, or within the trough's rims; on the skin, where
    // there is less room than outside.
    double skin = orthosis.digit().circumference(orthosis.digit().pipAxis());
    var outlines = orthosis.solids().stream().map(solid -> solid.piece().outline()).toList();
    var trough = orthosis.trough().piece();
    double off = trough.wall() + trough.gap().at(0, orthosis.digit().pipAxis());
    double round = skin + 2 * Math.PI * off;
    double covered =
        outlines.size() > 1
            ? outlines.get(1).wrap() * skin + 2 * orthosis.order().design().dorsalShell().overlap()
            : (1 - outlines.get(0).wrap()) * skin;
    assertThat(closed.hook().getWidth()).isLessThan(round * (1 - covered / skin) + 1);
    return true;
  }

  /** Invented fingers, both hands, with and without a shell. */
  @Test
  void strapsCutFromTheDrawingClose() throws Exception {
    int closed = 0;
    for (int seed = 0; seed < FINGERS; seed++) {
      closed += assertCloses(BenchFiles.orthosis("bulbous-ring", drawn(new Random(seed)))) ? 1 : 0;
    }
    assertThat(closed).isGreaterThan(FINGERS / 2);
  }

  private static String[] drawn(Random random) {
    double pip = 52 + 20 * random.nextDouble();
    return new String[] {
      "hand=" + (random.nextBoolean() ? "right" : "left"),
      "width.pip=" + 0.33 * pip,
      "circumference.pip=" + pip,
      "circumference.proximal-phalanx=" + pip * (0.97 + 0.04 * random.nextDouble()),
      "circumference.middle-phalanx=" + pip * (0.88 + 0.05 * random.nextDouble()),
      "circumference.tip=" + pip * (0.76 + 0.06 * random.nextDouble()),
      "closure.kind=strap",
      "closure.width=" + (10 + 20 * random.nextDouble()),
      "closure.lap=" + (5 + 40 * random.nextDouble()),
      "dorsal-shell.overlap=" + (2 + 3 * random.nextDouble()),
      "dorsal-shell.make=" + (random.nextBoolean() ? "yes" : "no"),
      "relief.make=no",
      "relief.bubbles=[]"
    };
  }

  @Test
  void thoseOfTheSampleDoToo() throws Exception {
    assertThat(assertCloses(BenchFiles.orthosis("middle-inches"))).isTrue();
  }
}
