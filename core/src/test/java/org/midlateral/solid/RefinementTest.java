package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.midlateral.RingPieces;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.Slice;
import org.midlateral.piece.Piece;

/**
 * Triangles laid out too coarsely and then refined: they cover the same domain, edge to edge, and
 * miss the exact surfaces by no more than the chord error that is aimed at.
 */
class RefinementTest {
  private static final double AIM = ErrorBudget.CHORD_OF_FACES;

  /** Edges are not halved under this length (mm). */
  private static final double SHORTEST = 0.4;

  /** What a piece is lifted to, before and after. */
  private record Case(Piece piece, Lifted points, int before, int[] coarse, int[] refined) {
    static Case of(Piece piece, double coarseness) throws Exception {
      Chart chart = Chart.of(piece);
      OffsetSurface surface = new OffsetSurface(piece);
      SizingField density = SizingField.of(piece, chart, 5, coarseness);
      List<EdgeLoop> loops =
          List.of(
              EdgeLoop.inside(
                  piece, surface, piece.outline().polygon().getExteriorRing(), chart, density));
      Contours contours = Contours.of(piece, density);
      PlaneMesh plane = PlaneMesh.fill(loops, contours, chart, density);
      Lifted points = Lifted.of(piece, surface, loops, contours, plane);
      int before = points.size();
      int[] coarse = plane.triangles().corners().clone();
      int[] refined = Refinement.of(points, plane.triangles(), chart, 1);
      return new Case(piece, points, before, coarse, refined);
    }

    double area(int[] corners, int t) {
      int a = corners[t];
      double u = points.angle(corners[t + 1]) - points.angle(a);
      double v = points.station(corners[t + 1]) - points.station(a);
      double w = points.angle(corners[t + 2]) - points.angle(a);
      double z = points.station(corners[t + 2]) - points.station(a);
      return (u * z - v * w) / 2;
    }

    double area(int[] corners) {
      double sum = 0;
      for (int t = 0; t < corners.length; t += 3) {
        sum += area(corners, t);
      }
      return sum;
    }
  }

  private static List<Case> cases(double coarseness) throws Exception {
    double bent = Math.toRadians(25);
    return List.of(
        Case.of(StraightTrough.of(40), coarseness),
        Case.of(RingPieces.trough(bent), coarseness),
        Case.of(RingPieces.dorsalShell(bent), coarseness));
  }

  @Test
  void theSameDomainIsCoveredEdgeToEdge() throws Exception {
    for (Case c : cases(3)) {
      assertThat(c.refined().length).isGreaterThan(c.coarse().length);
      // Each point that is added turns two triangles into four.
      assertThat(c.refined().length / 3 - c.coarse().length / 3)
          .isEqualTo(2 * (c.points().size() - c.before()));
      assertThat(c.area(c.refined())).isCloseTo(c.area(c.coarse()), within(1e-9));
      for (int t = 0; t < c.refined().length; t += 3) {
        assertThat(c.area(c.refined(), t)).as("of triangle %d", t / 3).isPositive();
      }
      assertThat(border(c.refined())).isEqualTo(border(c.coarse()));
    }
  }

  /** The edges with one triangle, each as first and last point; no edge runs twice the same way. */
  private static Set<Long> border(int[] corners) {
    Set<Long> edges = new HashSet<>();
    for (int i = 0; i < corners.length; i++) {
      int next = i % 3 == 2 ? i - 2 : i + 1;
      assertThat(edges.add((long) corners[i] << 32 | corners[next])).isTrue();
    }
    Set<Long> border = new HashSet<>();
    for (long edge : edges) {
      if (!edges.contains(edge << 32 | edge >>> 32)) {
        border.add(edge);
      }
    }
    return border;
  }

  /** On a round tube: by how much the chords' middles and the triangles' stand off the circles. */
  @Test
  void onARoundTubeTheChordsMissNoMoreThanIsAimedAt() throws Exception {
    Case c = Case.of(StraightTrough.of(40), 3);
    double coarse = worstOnTube(c, c.coarse());
    double refined = worstOnTube(c, c.refined());

    assertThat(coarse).isGreaterThan(2 * AIM);
    // To fourth order of the turn between an edge's ends.
    assertThat(refined).isLessThanOrEqualTo(1.01 * AIM).isGreaterThan(AIM / 4);
  }

  private static double worstOnTube(Case c, int[] corners) {
    Set<Long> border = border(corners);
    double worst = 0;
    for (int i = 0; i < corners.length; i++) {
      int a = corners[i];
      int b = corners[i % 3 == 2 ? i - 2 : i + 1];
      if (i % 3 == 0) {
        worst = Math.max(worst, missesTube(c, a, b, corners[i + 2]));
      }
      if (length(c.points(), a, b) > SHORTEST && !border.contains((long) a << 32 | b)) {
        worst = Math.max(worst, missesTube(c, a, b));
      }
    }
    return worst;
  }

  private static double missesTube(Case c, int... of) {
    double worst = 0;
    for (int side = 0; side < 2; side++) {
      double y = 0;
      double z = 0;
      for (int i : of) {
        double wall = side * StraightTrough.WALL;
        y += (c.points().frame(i, 1) + wall * c.points().frame(i, 4)) / of.length;
        z += (c.points().frame(i, 2) + wall * c.points().frame(i, 5)) / of.length;
      }
      double radius = side == 0 ? StraightTrough.INNER : StraightTrough.OUTER;
      worst = Math.max(worst, Math.abs(Math.hypot(y, z) - radius));
    }
    return worst;
  }

  /**
   * Laid out as usual, real pieces: the places midway along the edges, beside the exact surface.
   */
  @Test
  void onRealPiecesTheChordsMissNoMoreThanTheBound() throws Exception {
    for (Case c : cases(1)) {
      Set<Long> border = border(c.refined());
      OffsetSurface surface = new OffsetSurface(c.piece());
      double worst = 0;
      for (int i = 0; i < c.refined().length; i++) {
        int a = c.refined()[i];
        int b = c.refined()[i % 3 == 2 ? i - 2 : i + 1];
        // The slope of what is raised is left as it is.
        boolean level = c.points().thickness(a) == c.points().thickness(b);
        boolean inside = !border.contains((long) a << 32 | b);
        if (level && inside && length(c.points(), a, b) > SHORTEST) {
          worst = Math.max(worst, misses(c, surface, a, b));
        }
      }
      assertThat(worst)
          .as(c.piece().name())
          .isLessThanOrEqualTo(ErrorBudget.CHORD)
          .isGreaterThan(AIM / 4);
    }
  }

  private static double misses(Case c, OffsetSurface surface, int a, int b) {
    Lifted points = c.points();
    double[] exact = new double[6];
    Slice slice = c.piece().digit().slice((points.station(a) + points.station(b)) / 2);
    surface.at(slice, (points.angle(a) + points.angle(b)) / 2, false, exact, 0);
    double off = 0;
    for (int k = 0; k < 3; k++) {
      off += ((points.frame(a, k) + points.frame(b, k)) / 2 - exact[k]) * exact[3 + k];
    }
    return Math.abs(off);
  }

  private static double length(Lifted points, int a, int b) {
    double square = 0;
    for (int k = 0; k < 3; k++) {
      double d = points.frame(b, k) - points.frame(a, k);
      square += d * d;
    }
    return Math.sqrt(square);
  }

  @Test
  void whatIsFineAlreadyStays() throws Exception {
    Case c = Case.of(StraightTrough.of(40), 0.7);

    assertThat(c.points().size()).isEqualTo(c.before());
    // Edges may be flipped, where smoothing moved points; nothing is divided.
    assertThat(c.refined()).hasSameSizeAs(c.coarse());
    assertThat(border(c.refined())).isEqualTo(border(c.coarse()));
  }

  /** What is added lies on the inner surface itself, not on the chord. */
  @Test
  void whatIsAddedLiesOnTheSurface() throws Exception {
    Case c = Case.of(StraightTrough.of(40), 3);
    for (int i = c.before(); i < c.points().size(); i++) {
      assertThat(Math.hypot(c.points().frame(i, 1), c.points().frame(i, 2)))
          .isCloseTo(StraightTrough.INNER, within(1e-9));
      assertThat(c.points().frame(i, 0)).isCloseTo(c.points().station(i), within(1e-9));
    }
  }
}
