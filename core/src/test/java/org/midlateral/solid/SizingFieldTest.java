package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.RingPieces;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.piece.Piece;

/**
 * The spacing of a mesh's points. On a round tube a chord of length w misses the circle of radius R
 * by w² / 8R: there the spacing is known.
 */
class SizingFieldTest {
  private static final double AIM = ErrorBudget.CHORD_OF_EVEN_TRIANGLES;

  private static final Piece STRAIGHT = StraightTrough.of(40);

  private static SizingField of(Piece piece, double edge, double fineness) {
    return SizingField.of(piece, Chart.of(piece), edge, fineness);
  }

  /** Asked for long edges, the chord round the outside misses by what is aimed at, and no more. */
  @Test
  void onARoundTubeTheChordsMissByWhatIsAimedAt() {
    SizingField field = of(STRAIGHT, 5, 1);
    for (double s = 6; s < 44; s += 0.7) {
      // Spacing counts on the mid-surface and of stretched angles.
      double step = field.spacing(s) / (field.stretched(1) * StraightTrough.MIDDLE);
      double chord = 2 * StraightTrough.OUTER * Math.sin(step / 2);
      double misses = chord * chord / (8 * StraightTrough.OUTER);

      assertThat(misses).as("station %.1f", s).isLessThanOrEqualTo(AIM * 1.001);
      assertThat(misses).as("station %.1f", s).isGreaterThan(0.9 * AIM);
    }
    // Drawn out along the finger, which is straight.
    assertThat(field.stretched(1)).isCloseTo(1.3, within(1e-3));
  }

  @Test
  void whereItIsFineEnoughTheSpacingIsWhatIsAskedFor() {
    for (double edge : new double[] {0.2, 0.4, 0.8, 1}) {
      SizingField field = of(STRAIGHT, edge, 1);
      for (double s = 6; s < 44; s += 0.7) {
        assertThat(field.spacing(s)).isCloseTo(edge, within(1e-12));
      }
      assertThat(field.stretched(0.7)).isCloseTo(0.7, within(1e-12));
    }
  }

  /** A quarter of the chord error takes half the spacing. */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.5, 0.8, 1.5})
  void allSpacingsGoWithTheFineness(double fineness) {
    SizingField usual = of(STRAIGHT, 5, 1);
    SizingField other = of(STRAIGHT, 5, fineness);
    for (double s = 6; s < 44; s += 0.7) {
      assertThat(other.spacing(s)).isCloseTo(fineness * usual.spacing(s), within(1e-12));
    }
    assertThat(other.stretched(1)).isCloseTo(usual.stretched(1), within(1e-12));
  }

  /** Along real pieces it never exceeds what is asked for, nor changes faster than by 0.12 a mm. */
  @Test
  void alongRealPiecesItChangesSlowly() throws Exception {
    double bent = Math.toRadians(25);
    for (Piece piece : List.of(RingPieces.trough(bent), RingPieces.dorsalShell(bent))) {
      Chart chart = Chart.of(piece);
      SizingField field = SizingField.of(piece, chart, 1.4, 1);
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      double h = 0.05;
      for (double s = piece.outline().proximal(); s + h < piece.outline().distal(); s += h) {
        double here = field.spacing(s);
        double change = Math.abs(field.spacing(s + h) - here) / (chart.v(s + h) - chart.v(s));
        assertThat(change).as("%s at %.2f", piece.name(), s).isLessThanOrEqualTo(0.12 + 1e-9);
        assertThat(here).isPositive().isLessThanOrEqualTo(1.4);
        least = Math.min(least, here);
        most = Math.max(most, here);
      }
      assertThat(least).as("closer where it bends").isLessThan(0.8 * most);
    }
  }

  /** The dorsal shell's step runs along it, over the trough's edge a quarter round the finger. */
  @Test
  void stepsAreNarrowerWhereItBendsAllAlong() throws Exception {
    SizingField field = of(RingPieces.dorsalShell(0), 0.8, 1);
    double h = Math.toRadians(1);
    double narrowest = 0;
    double where = 0;
    for (double angle = 0; angle < Math.PI / 2; angle += h) {
      double narrow = (field.stretched(angle + h) - field.stretched(angle)) / h;
      assertThat(narrow).isBetween(1 - 1e-9, 1.6 + 1e-9);
      where = narrow > narrowest ? angle : where;
      narrowest = Math.max(narrow, narrowest);
    }
    assertThat(field.stretched(h)).isCloseTo(h, within(1e-12));
    assertThat(narrowest).isGreaterThan(1.05);
    assertThat(where).isBetween(Math.toRadians(55), Math.toRadians(90));
  }

  @Test
  void theStretchedAngleIsTurnedBack() throws Exception {
    SizingField field = of(RingPieces.dorsalShell(0), 0.8, 1);
    for (double angle = -1.6; angle < 1.6; angle += 0.013) {
      double stretched = field.stretched(angle);
      assertThat(field.angle(stretched)).isCloseTo(angle, within(1e-12));
      assertThat(field.stretched(-angle)).isEqualTo(-stretched);
      assertThat(field.stretched(angle + 0.013)).isGreaterThan(stretched);
    }
  }
}
