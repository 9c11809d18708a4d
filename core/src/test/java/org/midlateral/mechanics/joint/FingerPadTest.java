package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.Fingers;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Room;
import org.midlateral.mechanics.algebra.GroupedRows;

/**
 * The pad of an average index finger pressed flat on a plate. The ranges are the scatter between
 * subjects, from memory: Serina, Mote and Rempel, J. Biomech. 30 (1997) 1035-1040 and Serina,
 * Mockensturm, Mote and Rempel 31 (1998) 639-646 (1 N after some 1.2 to 2 mm, two thirds of the way
 * to 4 N within the first newton); Pawluk and Howe, J. Biomech. Eng. 121 (1999) 605-611 (1 N after
 * 1.0 to 1.5 mm, 2 N after 1.3 to 1.9); Dzidek and others, J. R. Soc. Interface 14 (2017) 20160935
 * (contact areas).
 */
class FingerPadTest {
  private static final double STEP = 0.4;

  private static final Measurements INDEX =
      new Measurements(
          "test-index",
          Hand.RIGHT,
          Digit.INDEX,
          LengthUnit.MM,
          Map.of(
              Level.PROXIMAL_PHALANX, 62.0,
              Level.PIP, 62.0,
              Level.MIDDLE_PHALANX, 54.0,
              Level.DIP, 51.0,
              Level.TIP, 48.0),
          Map.of(),
          20,
          22,
          22,
          25,
          0,
          0,
          2.5,
          7.5,
          Map.of(),
          Room.NONE);

  /** How far the plate is pressed in (mm), and where it touches (mm²). */
  private record Pressed(double depth, double area) {}

  private static Pressed press(double force) {
    DigitSurface digit = TapedDigit.of(INDEX);
    Tissue tissue =
        new Tissue(Fingers.design().holding().skin(), digit.pipAxis(), INDEX.dipAxis(), 1);
    List<Coupling> couplings = new ArrayList<>();
    List<Double> areas = new ArrayList<>();
    double lowest = 0;
    double[] jet = new double[18];
    for (double s = INDEX.dipAxis(); s < digit.pulpEnd() - 0.1; s += STEP) {
      Slice slice = digit.slice(s);
      for (double t = -1.5; t < 1.5; t += 0.05) {
        slice.jet(t, jet);
        double area =
            STEP
                * 0.05
                * -Vector3D.of(jet[3], jet[4], jet[5])
                    .cross(Vector3D.of(jet[6], jet[7], jet[8]))
                    .getZ();
        if (area > 0) {
          lowest = Math.min(lowest, jet[2]);
          areas.add(area);
          SpringLaw skin =
              new SoftContact(
                  List.of(tissue.at(s, slice.circumference() / (2 * Math.PI), t)), area);
          couplings.add(Coupling.fixed(skin, jet[2]));
        }
      }
    }
    double bottom = lowest;
    couplings.replaceAll(c -> Coupling.fixed(c.law(), c.gap() - bottom));
    couplings.add(Coupling.fixed(SpringLaw.constant(force), 0));
    double[][] rigid = new double[couplings.size()][6];
    for (int e = 0; e < rigid.length; e++) {
      rigid[e][2] = e + 1 < rigid.length ? -1 : 1;
    }
    HeldSystem plate =
        new HeldSystem(
            couplings, GroupedRows.of(rigid, new int[rigid.length]), 6, new JointMoment(0, 0));
    Resting resting =
        Equilibrium.heldAt(plate, Resting.start(plate, 0, new double[] {0, 0, 0.2, 0, 0, 0}));
    double touching = 0;
    for (int e = 0; e < areas.size(); e++) {
      touching += resting.force(e) > 0 ? areas.get(e) : 0;
    }
    return new Pressed(resting.motion()[2], touching);
  }

  @ParameterizedTest
  @CsvSource({
    "0.25, 0.5, 1.2, 40, 100",
    "1, 1.0, 2.0, 75, 160",
    "2, 1.3, 2.4, 95, 200",
    "4, 1.6, 3.0, 120, 260"
  })
  void liesWithinThePublishedScatter(
      double force, double low, double high, double least, double most) {
    Pressed pressed = press(force);
    System.out.printf(
        "finger pad: %.2f N after %.2f mm, on %.0f mm²%n", force, pressed.depth, pressed.area);
    assertThat(pressed.depth).isBetween(low, high);
    assertThat(pressed.area).isBetween(least, most);
  }

  /** 62 to 74 % of the way to 4 N lie within the first newton (Serina and others 1997). */
  @Test
  void mostOfTheWayIsGoneWithinTheFirstNewton() {
    assertThat(press(1).depth / press(4).depth).isBetween(0.6, 0.76);
  }
}
