package org.midlateral.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Fingers;
import org.midlateral.RoundFinger;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Measurements;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.piece.Midline;
import org.midlateral.piece.Piece;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;
import org.midlateral.trough.Trough;

/** Sections of real meshes on a straight round finger, against closed forms. */
class RoundTroughTest {
  private static final double STATION = 26.5;
  private static final double GAP = 0.3;
  private static final int STATIONS = 12;

  /** As long as the ring finger of the tests. */
  private static Measurements round(double circumference) {
    return RoundFinger.of(circumference / (2 * Math.PI), 21, 24, 23, 24);
  }

  /** The trough, and beside it the same piece turned to the dorsal side. */
  private static List<Solid> halves(double circumference, double wrap, double wall, double edge)
      throws Exception {
    Design.TroughDesign design =
        Fingers.trough(wrap, Design.DistalEnd.OPEN).withWall(wall).withClearance(GAP);
    Measurements finger = round(circumference);
    TapedDigit digit = TapedDigit.of(finger);
    Piece volar = Trough.of(design, digit, MidlateralCut.of(finger, design, digit));
    Piece dorsal = new Piece("dorsal", digit, volar.outline(), Midline.DORSAL, volar.gap(), wall);
    return List.of(SolidMesher.mesh(volar, edge), SolidMesher.mesh(dorsal, edge));
  }

  private static Section section(List<Solid> solids) {
    return Sections.of(solids.get(0).piece().digit(), solids).at(STATION, Joining.BONDED);
  }

  private static Section trough(double circumference, double wrap, double wall, double edge)
      throws Exception {
    return section(halves(circumference, wrap, wall, edge).subList(0, 1));
  }

  private static double midRadius(double circumference, double wall) {
    return circumference / (2 * Math.PI) + GAP + wall / 2;
  }

  /**
   * Off the closed form of the hollow sector with round ends by at most 0.5 % at an edge length of
   * 0.8 mm in the mean over stations (a single cut by at most 0.55 %), and second order as the
   * edges halve. Relative errors times 1000:
   *
   * <pre>
   * wrap  edge    area   second moment   about the symmetry axis
   * 0.25  0.8    -0.64       -1.66              -1.12
   * 0.25  0.4    -0.16       -0.41              -0.29
   * 0.25  0.2    -0.04       -0.11              -0.07
   * 0.35  0.8    -0.65       -1.27              -1.25
   * 0.35  0.4    -0.16       -0.35              -0.30
   * 0.35  0.2    -0.04       -0.09              -0.07
   * 0.50  0.8    -0.64       -1.22              -1.26
   * 0.50  0.4    -0.17       -0.32              -0.32
   * 0.50  0.2    -0.04       -0.08              -0.08
   * </pre>
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.35, 0.5})
  void secondOrderTowardTheThickForm(double wrap) throws Exception {
    double[] exact = Arcs.rounded(Math.PI * wrap, midRadius(62, 1.6), 1.6);
    double[] usual = meanError(halves(62, wrap, 1.6, 0.8).subList(0, 1), exact);
    double[] half = meanError(halves(62, wrap, 1.6, 0.4).subList(0, 1), exact);
    double[] quarter = meanError(halves(62, wrap, 1.6, 0.2).subList(0, 1), exact);
    for (int k = 0; k < 3; k++) {
      assertThat(Math.abs(usual[k])).isLessThan(0.005);
      assertThat(usual[k] / half[k]).isGreaterThan(3);
      assertThat(half[k] / quarter[k]).isGreaterThan(3);
      double order = Math.log(usual[k] / quarter[k]) / Math.log(4);
      assertThat(order).as("wrap %s, figure %s", wrap, k).isBetween(1.85, 2.15);
    }
  }

  /** Relative errors of area and both second moments, mean over stations that cut edges anyhow. */
  private static double[] meanError(List<Solid> solids, double[] exact) {
    Sections sections = Sections.of(solids.get(0).piece().digit(), solids);
    double[] off = new double[3];
    for (int i = 0; i < STATIONS; i++) {
      AreaMoments m = sections.at(STATION + 0.37 * i, Joining.BONDED).moments();
      assertThat(m.n()).isCloseTo(exact[1], withinPercentage(0.1));
      off[0] += (m.area() / exact[0] - 1) / STATIONS;
      off[1] += (m.aboutY() / exact[2] - 1) / STATIONS;
      off[2] += (m.aboutN() / exact[3] - 1) / STATIONS;
      assertThat(Math.abs(m.aboutY() / exact[2] - 1)).isLessThan(0.0055);
    }
    return off;
  }

  /** b t³/3 of the mid-line, whose ends are round: between no ends at all and square ones. */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.35, 0.5})
  void torsionConstant(double wrap) throws Exception {
    double radius = midRadius(62, 1.6);
    double square = 2 * Math.PI * wrap * radius * 1.6 * 1.6 * 1.6 / 3;

    double torsion = trough(62, wrap, 1.6, 0.8).torsion();

    // Over a half round, the integral of t³/3 is 3 pi/32 t⁴/3 instead of t⁴/6.
    double rounds = 2 * Math.pow(1.6, 4) * (0.5 - 3 * Math.PI / 32) / 3;
    assertThat(torsion).isCloseTo(square - rounds, withinPercentage(0.5));
  }

  /**
   * The lesson, with a wall thin enough for the thin formulas: 0.0122 R³t at a quarter, 0.2976 R³t
   * at a half, pi R³t closed, so 24.5 and 10.6 times.
   */
  @Test
  void lessonOfTheThinWall() throws Exception {
    double wall = 0.1;
    double unit = Math.pow(midRadius(120, wall), 3) * wall;
    double quarter = trough(120, 0.25, wall, 0.4).moments().aboutY();
    List<Solid> halves = halves(120, 0.5, wall, 0.4);
    double half = section(halves.subList(0, 1)).moments().aboutY();
    double closed = section(halves).moments().aboutY();

    assertThat(quarter / unit).isCloseTo(0.01216, withinPercentage(0.8));
    assertThat(half / unit).isCloseTo(0.297556782, withinPercentage(0.5));
    assertThat(closed / unit).isCloseTo(Math.PI, withinPercentage(0.5));
    assertThat(half / quarter).isCloseTo(24.47, withinPercentage(0.8));
    assertThat(closed / half).isCloseTo(10.5579, withinPercentage(0.5));
  }

  /**
   * The lesson at the usual wall of 1.6 mm on a finger of 62 mm: thickness and round rims bring the
   * two ratios to 21.6 and 10.8 in closed form.
   */
  @Test
  void lessonOfTheUsualWall() throws Exception {
    double radius = midRadius(62, 1.6);
    double shallow = Arcs.rounded(Math.PI / 4, radius, 1.6)[2];
    double even = Arcs.rounded(Math.PI / 2, radius, 1.6)[2];
    double outer = radius + 0.8;
    double inner = radius - 0.8;
    double ring = Math.PI / 4 * (Math.pow(outer, 4) - Math.pow(inner, 4));
    List<Solid> halves = halves(62, 0.5, 1.6, 0.8);
    Section half = section(halves.subList(0, 1));
    Section closed = section(halves);

    double quarter = trough(62, 0.25, 1.6, 0.8).moments().aboutY();
    assertThat(even / shallow).isCloseTo(21.6, within(0.05));
    assertThat(half.moments().aboutY() / quarter).isCloseTo(even / shallow, withinPercentage(0.5));
    assertThat(closed.moments().aboutY()).isCloseTo(ring, withinPercentage(0.5));
    assertThat(closed.moments().aboutY() / half.moments().aboutY())
        .isCloseTo(ring / even, withinPercentage(0.5));
    assertThat(closed.closed()).isTrue();
    // Exact for a ring: twice its second moment. The two rounds that touch along each seam cost
    // Bredt's flow some of its path.
    assertThat(closed.torsion()).isCloseTo(2 * ring, withinPercentage(3));
    assertThat(closed.moments().y()).isCloseTo(0, within(1e-4));
  }

  /** A vertex, an edge or a whole face on the plane: the loops still close, and once. */
  @Test
  void planesThroughVertices() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0, 0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 1};
    int[] corners = {
      0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3,
      0, 4, 3, 4, 7
    };
    MeshCut cube = MeshCut.of(new TriangleMesh(xyz, corners));
    Vector3D along = Vector3D.Unit.PLUS_X;

    List<Loop> middle = cube.at(new SectionPlane(Vector3D.of(0.5, 0.5, 0.5), along));
    assertThat(middle).hasSize(1);
    assertThat(AreaMoments.of(middle).area()).isCloseTo(1, within(1e-15));
    // The far face lies on the plane and so just distal of it; the near one is cut by nothing.
    List<Loop> far = cube.at(new SectionPlane(Vector3D.of(1, 0, 0), along));
    assertThat(AreaMoments.of(far).area()).isCloseTo(1, within(1e-15));
    assertThat(cube.at(new SectionPlane(Vector3D.of(0, 0, 0), along))).isEmpty();
    // Through four vertices, along two of the edges and two diagonals' ends.
    double slant = Math.sqrt(0.5);
    List<Loop> oblique =
        cube.at(new SectionPlane(Vector3D.of(1, 0, 0), Vector3D.of(slant, 0, slant)));
    assertThat(AreaMoments.of(oblique).area()).isCloseTo(Math.sqrt(2), within(1e-12));
  }

  /** Every loop of every cut has material on its left, and their areas add up to the volume. */
  @Test
  void areasAddUpToTheVolume() throws Exception {
    List<Solid> solids = halves(62, 0.5, 1.6, 0.8).subList(0, 1);
    Sections sections = Sections.of(solids.get(0).piece().digit(), solids);
    double volume = 0;
    for (double s = -20; s < 75; s += 0.1) {
      volume += 0.1 * sections.at(s + 0.05, Joining.BONDED).moments().area();
    }
    double exact = MeshShape.of(solids.get(0).mesh()).volume();

    assertThat(volume).isCloseTo(exact, withinPercentage(0.05));
  }
}
