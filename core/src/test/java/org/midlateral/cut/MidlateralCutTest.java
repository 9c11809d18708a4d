package org.midlateral.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.midlateral.Fingers;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;

class MidlateralCutTest {
  private static final Measurements RING = Fingers.ring();
  private static final DigitSurface DIGIT = TapedDigit.of(RING);

  private static Outline cut(TroughDesign design) throws DesignRefused {
    return MidlateralCut.of(RING, design, DIGIT);
  }

  /** G2, in the plane: the flanks are the wrap's share of the circumference apart. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 0.55})
  void flanksLieAtTheTrimHeight(double wrap) throws DesignRefused {
    Outline outline = cut(Fingers.trough(wrap, DistalEnd.OPEN));
    int seen = 0;
    for (Coordinate c : outline.polygon().getExteriorRing().getCoordinates()) {
      if (c.y > outline.flankStart() && c.y < outline.flankEnd()) {
        assertThat(2 * Math.abs(c.x)).isCloseTo(wrap * DIGIT.circumference(c.y), within(1e-9));
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(100);
  }

  /** Against the overlay of JTS: at the tongue, the flanks, the corners, and beyond both ends. */
  @ParameterizedTest
  @EnumSource(DistalEnd.class)
  void theReachAtAStationIsThatOfALineAcross(DistalEnd end) throws DesignRefused {
    Outline outline = cut(Fingers.trough(0.5, end));
    Envelope box = outline.polygon().getEnvelopeInternal();
    for (double s = box.getMinY() - 1; s < box.getMaxY() + 1; s += 0.37) {
      Coordinate[] line = {
        new Coordinate(box.getMinX() - 1, s), new Coordinate(box.getMaxX() + 1, s)
      };
      Geometry across =
          outline.polygon().intersection(outline.polygon().getFactory().createLineString(line));
      assertThat(outline.reach(s).isEmpty()).isEqualTo(across.isEmpty());
      if (!across.isEmpty()) {
        Envelope expected = across.getEnvelopeInternal();
        assertThat(outline.reach(s).orElseThrow().from())
            .isCloseTo(expected.getMinX(), within(1e-9));
        assertThat(outline.reach(s).orElseThrow().to()).isCloseTo(expected.getMaxX(), within(1e-9));
      }
    }
  }

  /** G11: the tongue ends within the palmar crease, and beside the web the edge runs inward. */
  @ParameterizedTest
  @EnumSource(DistalEnd.class)
  void theTongueIsAnEllipseArmWithinTheCrease(DistalEnd end) throws DesignRefused {
    Outline outline = cut(Fingers.trough(0.5, end));
    double apex = -21 + 3.0;

    assertThat(outline.proximal()).isEqualTo(apex);
    assertThat(outline.polygon().getEnvelopeInternal().getMinY()).isCloseTo(apex, within(1e-9));
    for (Coordinate c : outline.polygon().getExteriorRing().getCoordinates()) {
      if (c.y <= 3) {
        double down = (3 - c.y) / (3 - apex);
        double arm = DIGIT.circumference(c.y) / 4 * Math.sqrt(Math.max(0, 1 - down * down));
        assertThat(Math.abs(c.x)).isCloseTo(arm, within(1e-6));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"2, OPEN", "4, OPEN", "8, OPEN", "4, COVERED"})
  void noCornerIsSharperThan1point5(double corner, DistalEnd end) throws DesignRefused {
    Coordinate[] ring = cut(design(corner, 4, end)).polygon().getExteriorRing().getCoordinates();
    int n = ring.length - 1;
    for (int i = 0; i < n; i++) {
      if (end == DistalEnd.COVERED && ring[i].y > DIGIT.tip()) {
        // Over the pulp girths shrink to nothing: the plane shows a point where there is none.
        continue;
      }
      // Three points half a millimetre apart, so that the rounding of nearer ones does not count.
      Coordinate before = ring[(i + n - 3) % n];
      Coordinate after = ring[(i + 3) % n];
      assertThat(radius(before, ring[i], after)).as("at %s", ring[i]).isGreaterThan(1.45);
    }
  }

  @Test
  void anOpenEndStopsItsMarginShortAndACoveredOneGoesOver() throws DesignRefused {
    assertThat(cut(design(4, 6, DistalEnd.OPEN)).distal()).isCloseTo(71 - 6, within(1e-6));
    assertThat(cut(design(4, 6, DistalEnd.COVERED)).distal()).isEqualTo(71);
  }

  @Test
  void theOutlineIsSymmetricValidAndCounterClockwise() throws DesignRefused {
    Outline outline = cut(Fingers.trough(0.5, DistalEnd.OPEN));

    assertThat(outline.polygon().isValid()).isTrue();
    assertThat(org.locationtech.jts.algorithm.Orientation.isCCW(ring(outline))).isTrue();
    assertThat(outline.polygon().symDifference(outline.mirrored().polygon()).getArea())
        .isLessThan(1e-9);
  }

  @Test
  void noRoomForATongueIsRefused() {
    TroughDesign design = Fingers.trough(0.5, DistalEnd.OPEN).withProximalMargin(20);

    assertThatThrownBy(() -> cut(design))
        .isInstanceOfSatisfying(
            DesignRefused.class,
            refused -> {
              assertThat(refused.finding().code()).isEqualTo("tongue-short");
              assertThat(refused.finding().key()).isEqualTo("trough.proximal-margin");
            });
  }

  private static Coordinate[] ring(Outline outline) {
    return outline.polygon().getExteriorRing().getCoordinates();
  }

  private static double radius(Coordinate a, Coordinate b, Coordinate c) {
    double area = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2;
    return a.distance(b) * b.distance(c) * c.distance(a) / (4 * Math.max(area, 1e-12));
  }

  private static TroughDesign design(double corner, double margin, DistalEnd end) {
    return Fingers.trough(0.5, end).withDistalMargin(margin).withCorner(corner);
  }
}
