package org.midlateral.mechanics;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;
import org.midlateral.trough.Trough;

/** Sections of real meshes on a straight round finger, against closed forms. */
class RoundTroughTest {
  private static final double STATION = 26.5;

  private static Measurements round(double circumference) {
    Measurements m = Fingers.ring();
    Map<Level, Double> tape = new EnumMap<>(Level.class);
    Map<Level, Double> width = new EnumMap<>(Level.class);
    for (Level level :
        List.of(Level.PROXIMAL_PHALANX, Level.PIP, Level.MIDDLE_PHALANX, Level.TIP)) {
      tape.put(level, circumference);
      width.put(level, circumference / Math.PI);
    }
    return new Measurements(
        m.reference(),
        m.hand(),
        m.digit(),
        m.unit(),
        tape,
        width,
        m.palmarCreaseToWeb(),
        m.webToPip(),
        m.pipToDip(),
        m.dipToTip(),
        0,
        0,
        m.pipAxisDistalOfCrease(),
        m.dipAxisDistalOfCrease(),
        Map.of());
  }

  private static Section cut(double circumference, double wrap, double wall, double edge)
      throws Exception {
    Design.TroughDesign usual = Fingers.trough(wrap, Design.DistalEnd.OPEN);
    Design.TroughDesign design =
        new Design.TroughDesign(
            wrap,
            wall,
            0.3,
            0,
            usual.webClearance(),
            usual.proximalMargin(),
            usual.distal(),
            usual.distalMargin(),
            usual.corner(),
            usual.flare(),
            usual.flareWidth(),
            usual.vents());
    Measurements finger = round(circumference);
    TapedDigit digit = TapedDigit.of(finger);
    Solid solid =
        SolidMesher.mesh(Trough.of(design, digit, MidlateralCut.of(finger, design, digit)), edge);
    return Sections.of(digit, List.of(solid)).at(STATION, Joining.BONDED);
  }

  @Test
  void agreesWithTheThickFormAtTheUsualEdgeLength() throws Exception {
    double radius = 62 / (2 * Math.PI) + 0.3 + 0.8;
    for (double wrap : new double[] {0.25, 0.35, 0.5}) {
      double[] exact = Arcs.rounded(Math.PI * wrap, radius, 1.6);
      for (double edge : new double[] {1.6, 0.8, 0.4, 0.2}) {
        Section section = cut(62, wrap, 1.6, edge);
        AreaMoments m = section.moments();
        System.out.printf(
            "%.2f %.1f  A %.5f n %.5f Iy %.5f In %.5f J %.5f (%.5f) As %.4f%n",
            wrap,
            edge,
            m.area() / exact[0] - 1,
            m.n() / exact[1] - 1,
            m.aboutY() / exact[2] - 1,
            m.aboutN() / exact[3] - 1,
            section.torsion(),
            m.area() * 1.6 * 1.6 / 3,
            m.area() / section.shearArea());
      }
      System.out.printf(
          "%f %f %f%n",
          exact[2],
          Arcs.second(Math.PI * wrap, radius, 1.6),
          Arcs.thin(Math.PI * wrap, radius, 1.6));
    }
  }
}
