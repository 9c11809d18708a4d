package org.midlateral.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.OffsetSurface;
import org.midlateral.trough.Trough;

/** What bridges a waist bends in no more than its wall can follow. */
class BridgeTest {
  /** An invented little finger whose PIP joint is swollen by some 9 mm. */
  private static final List<String> SWOLLEN =
      List.of(
          "reference=invented-swollen",
          "hand=right",
          "digit=little",
          "circumference.proximal-phalanx=56.7",
          "circumference.pip=63.1",
          "circumference.middle-phalanx=54.9",
          "circumference.tip=43.9",
          "length.palmar-crease-to-web=19.2",
          "length.web-to-pip=20.1",
          "length.pip-to-dip=14.0",
          "length.dip-to-tip=25.0");

  /** One as invented, for which thick walls are asked. */
  private static final List<String> THICK =
      List.of(
          "reference=invented-thick",
          "hand=right",
          "digit=little",
          "circumference.proximal-phalanx=53.7",
          "circumference.pip=61.7",
          "circumference.middle-phalanx=50.4",
          "circumference.tip=43.9",
          "length.palmar-crease-to-web=18.3",
          "length.web-to-pip=18.6",
          "length.pip-to-dip=17.1",
          "length.dip-to-tip=26.8",
          "trough.wall=3.2",
          "dorsal-shell.wall=3.2");

  private static final double STEP = 0.1;

  /** Creases turn less than this: a chord of 0.2 mm across one misses the printer's by far. */
  private static final double TURN = Math.toRadians(6);

  @Test
  void theOutsideOfBothPiecesKeepsItsBendRadius() throws Exception {
    Order order = Orders.row(SWOLLEN, "swollen", 1, List.of()).order();
    Orthosis made = Orthosis.make(order);
    int bridged = 0;
    for (Piece piece : List.of(made.plainTrough(), made.plainShell().orElseThrow())) {
      double to = Math.min(piece.outline().distal(), piece.digit().tip());
      // The shell goes on past the mid-lateral line.
      double edge = piece.outline().wrap() + (piece.dorsal() ? 0.1 : 0);
      for (double share = 0; share < edge; share += 0.05) {
        bridged += outsideBends(piece, share, piece.outline().flankStart(), to - STEP);
      }
    }
    assertThat(bridged).isPositive();
  }

  /** Checks the outside along one share of the girth; counts the places that are bridged. */
  private static int outsideBends(Piece piece, double share, double from, double to) {
    OffsetSurface surface = new OffsetSurface(piece);
    int n = (int) ((to - from) / STEP);
    double[] frame = new double[6 * n];
    int bridged = 0;
    for (int i = 0; i < n; i++) {
      double station = from + i * STEP;
      Slice slice = piece.digit().slice(station);
      double own = share * slice.circumference() / 2;
      surface.at(slice, piece.midline().angle(slice, own), false, frame, i);
      double rise = piece.bridge().at(piece.skinGirth(own, station), station);
      assertThat(rise).isGreaterThan(-1e-3);
      bridged += rise > 0.005 ? 1 : 0;
    }
    for (int i = 0; i + 1 < n; i++) {
      double square = 0;
      double turn = 0;
      for (int k = 0; k < 3; k++) {
        double dn = frame[6 * i + 9 + k] - frame[6 * i + 3 + k];
        double d = frame[6 * i + 6 + k] - frame[6 * i + k] + piece.wall() * dn;
        square += d * d;
        turn -= d * dn;
      }
      // How much the outside turns inward over a step, less what the least radius allows.
      double inward = turn / Math.sqrt(square) - Math.sqrt(square) / Bridge.OUTSIDE;
      assertThat(inward)
          .as("%s, share %.1f, station %.1f", piece.name(), share, from + i * STEP)
          .isLessThan(TURN);
    }
    return bridged;
  }

  @Test
  void aPlainFingerNeedsNone() throws Exception {
    DigitSurface digit = TapedDigit.of(Fingers.slim());
    Piece piece =
        Trough.of(
            Fingers.design().trough(),
            digit,
            MidlateralCut.of(Fingers.slim(), Fingers.design().trough(), digit));

    assertThat(Bridge.laid(piece)).isSameAs(piece);
  }

  /** Its slopes are those of its values, up to the creases of the skin. */
  @Test
  void itsSlopesAreThoseOfItsValues() throws Exception {
    Order order = Orders.row(SWOLLEN, "swollen", 1, List.of()).order();
    Piece piece = Orthosis.make(order).plainTrough();
    double h = 1e-4;
    double[] jet = new double[3];
    for (double station = 22.05; station < 32; station += 0.37) {
      for (double girth = -12; girth < 12; girth += 1.9) {
        GapField rise = piece.bridge();
        rise.jet(girth, station, jet);
        double byGirth = (rise.at(girth + h, station) - rise.at(girth - h, station)) / (2 * h);
        double byStation = (rise.at(girth, station + h) - rise.at(girth, station - h)) / (2 * h);
        assertThat(jet[1]).isCloseTo(byGirth, within(1e-5));
        assertThat(jet[2]).isCloseTo(byStation, within(1e-4));
      }
    }
  }

  /** What is told of it spans all that rises, and names the highest place. */
  @Test
  void whereItBridgesIsTold() throws Exception {
    Order order = Orders.row(THICK, "thick", 1, List.of()).order();
    Orthosis made = Orthosis.make(order);
    Piece piece = made.dorsalShell().orElseThrow().piece();
    List<BridgedStretch> told = BridgedStretch.of(piece);
    double most = 0;
    for (double s = piece.outline().proximal(); s < piece.outline().distal(); s += 0.07) {
      double edge = piece.outline().wrap() * piece.digit().circumference(s) / 2;
      for (double own = -edge; own <= edge; own += edge / 73) {
        double rise = piece.bridge().at(piece.skinGirth(own, s), s);
        most = Math.max(most, rise);
        double at = s;
        boolean within = told.stream().anyMatch(b -> at > b.from() - 1 && at < b.to() + 1);
        assertThat(within || rise < BridgedStretch.TOLD + 0.005).isTrue();
      }
    }

    assertThat(told).isNotEmpty();
    assertThat(told.stream().mapToDouble(BridgedStretch::rise).max().orElseThrow())
        .isCloseTo(most, within(0.03 * most));
    assertThat(made.findings()).extracting(Finding::code).contains("bridges-bend");
  }

  @Test
  void nothingIsToldOfAPlainFinger() throws Exception {
    assertThat(BridgedStretch.of(Orthosis.make(Fingers.order(Fingers.slim())).trough().piece()))
        .isEmpty();
  }
}
