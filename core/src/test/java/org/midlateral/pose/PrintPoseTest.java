package org.midlateral.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.Fingers;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.MeshShape;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;
import org.midlateral.trough.Trough;

class PrintPoseTest {
  private static final PrintProcess FILAMENT = PrintProcess.of(ProcessDesign.FILAMENT);
  private static final PrintProcess POWDER = PrintProcess.of(ProcessDesign.POWDER);
  private static final PrintProcess RESIN = PrintProcess.of(ProcessDesign.RESIN);

  @Test
  void aPoseIsATurn() {
    double[][] ups = {
      {0, 0, 1}, {1, 0, 0}, {-1, 0, 0}, {0, -1, 0}, {0.6, 0, -0.8}, {0.48, 0.6, 0.64}
    };
    for (double[] up : ups) {
      Vector3D direction = Vector3D.of(up);
      AffineTransformMatrix3D pose = PrintPose.turn(direction);
      assertThat(pose.apply(direction).distance(Vector3D.Unit.PLUS_Z)).isLessThan(1e-12);
      // Lengths and handedness stay: the transpose is the inverse, and the determinant is 1.
      AffineTransformMatrix3D back = pose.linearTranspose();
      Vector3D any = Vector3D.of(3, -5, 7);
      assertThat(back.apply(pose.apply(any)).distance(any)).isLessThan(1e-12);
      assertThat(pose.determinant()).isCloseTo(1, within(1e-12));
    }
  }

  /** Against a count of every triangle in every direction that is tried, without bins. */
  @Test
  void noOtherDirectionNeedsClearlyLessSupport() throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PoseSearch.of(solid, RESIN);
    double cost = support(solid, chosen.pose());
    double area = MeshShape.of(solid.mesh()).area();
    for (int i = 0; i < 100; i++) {
      double z = 1 - (2.0 * i + 1) / 100;
      double across = Math.sqrt(1 - z * z);
      Vector3D up = Vector3D.of(across * Math.cos(2.4 * i), across * Math.sin(2.4 * i), z);
      assertThat(support(solid, PrintPose.turn(up))).isGreaterThan(cost - 0.05 * area);
    }
  }

  /**
   * An invented finger on which a direction in the plane of symmetry, 75 degrees up, needs less
   * support than any of the spread ones and has twice the footing.
   */
  @Test
  void thePlaneOfSymmetryIsSearched() throws DesignRefused {
    Solid solid = trough("57.5", "58.6", "51.3", "43.7", "17.8", "23", "18", "20.3");
    PrintPose chosen = PoseSearch.of(solid, FILAMENT);
    double least = Double.POSITIVE_INFINITY;
    for (int angle = 0; angle < 360; angle += 5) {
      double turn = Math.toRadians(angle);
      Vector3D up = Vector3D.of(Math.cos(turn), 0, Math.sin(turn));
      least = Math.min(least, support(solid, PrintPose.turn(up), FILAMENT));
    }
    assertThat(support(solid, chosen.pose(), FILAMENT)).isLessThanOrEqualTo(2 * least + 1e-9);
  }

  /** However broad the footing: never more than twice the least. */
  @Test
  void theBandIsNoWiderThanWhatItStandsOn() throws DesignRefused {
    Solid solid = trough();
    double least = Double.POSITIVE_INFINITY;
    for (int angle = 0; angle < 360; angle++) {
      double turn = Math.toRadians(angle);
      Vector3D up = Vector3D.of(Math.cos(turn), 0, Math.sin(turn));
      least = Math.min(least, support(solid, PrintPose.turn(up), FILAMENT));
    }
    PrintPose chosen = PoseSearch.of(solid, FILAMENT);
    assertThat(chosen.overhang()).isLessThanOrEqualTo(2 * least + 1);
  }

  /** Where only lying poses are allowed, layers run along the finger. */
  @Test
  void poseThatIsNotAllowedIsNotTaken() throws DesignRefused {
    PrintProcess lying = new PrintProcess("m", "m", 0.8, 0.2, 0.2, 45, true, true, 30, Map.of());
    assertThat(PoseSearch.of(trough(), lying).upright()).isLessThanOrEqualTo(30.01);
  }

  @ParameterizedTest
  @EnumSource(ProcessDesign.class)
  void theSkinSideStaysClean(ProcessDesign process) throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PoseSearch.of(solid, PrintProcess.of(process));
    double skin = solid.inner().triangleCount();
    double innerArea = MeshShape.of(solid.inner()).area();
    assertThat(skin).isPositive();
    assertThat(chosen.skinOverhang()).isBetween(0.0, 0.02 * innerArea);
    assertThat(chosen.overhang()).isGreaterThanOrEqualTo(chosen.skinOverhang());
  }

  @Test
  void whereThePowderHoldsItTheLowestPoseIsTaken() throws DesignRefused {
    PrintPose chosen = PoseSearch.of(trough(), POWDER);
    assertThat(chosen.overhang()).isZero();
    var box = MeshShape.of(trough().mesh()).bounds();
    double lying = box.getMax().getZ() - box.getMin().getZ();
    assertThat(chosen.height()).isLessThanOrEqualTo(lying + 0.5);
  }

  /** Stood on end, on the whole of an edge and not on a corner of it. */
  @Test
  void aPieceOfFilamentHasTheBroadestFooting() throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PoseSearch.of(solid, FILAMENT);
    assertThat(chosen.upright()).isBetween(60.0, 90.0);
    assertThat(chosen.footing()).isGreaterThan(2 * PoseSearch.of(solid, RESIN).footing());
  }

  /** Against the section, cut and measured apart. */
  @ParameterizedTest
  @EnumSource(ProcessDesign.class)
  void theFootingIsTheSectionJustAboveTheBed(ProcessDesign process) throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PoseSearch.of(solid, PrintProcess.of(process));
    double section = section(solid.mesh(), chosen.pose(), 0.2);
    assertThat(chosen.footing()).isCloseTo(section, within(1e-6 * section));
  }

  /** Area of a section as the sum of what its edges span with the origin. */
  private static double section(TriangleMesh mesh, AffineTransformMatrix3D pose, double above) {
    double low = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      low = Math.min(low, pose.apply(mesh.vertex(v)).getZ());
    }
    double twice = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      List<Vector3D> ends = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        Vector3D a = pose.apply(mesh.vertex(mesh.corner(t, k)));
        Vector3D b = pose.apply(mesh.vertex(mesh.corner(t, (k + 1) % 3)));
        double up = low + above;
        if (a.getZ() < up != b.getZ() < up) {
          // Outside lies to the right of an edge that comes in from above.
          Vector3D end = a.lerp(b, (up - a.getZ()) / (b.getZ() - a.getZ()));
          ends.add(a.getZ() < up ? ends.size() : 0, end);
        }
      }
      if (ends.size() == 2) {
        Vector3D from = ends.get(0);
        Vector3D to = ends.get(1);
        twice += from.getX() * to.getY() - from.getY() * to.getX();
      }
    }
    return Math.abs(twice) / 2;
  }

  private static double support(Solid solid, AffineTransformMatrix3D pose) {
    return support(solid, pose, RESIN);
  }

  private static double support(Solid solid, AffineTransformMatrix3D pose, PrintProcess process) {
    double sum = 0;
    TriangleMesh mesh = solid.mesh();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      var a = mesh.vertex(mesh.corner(t, 0));
      var n =
          a.vectorTo(mesh.vertex(mesh.corner(t, 1)))
              .cross(a.vectorTo(mesh.vertex(mesh.corner(t, 2))));
      double down = -pose.apply(n).getZ() / n.norm();
      double weight = t < solid.innerTriangles() ? PrintPose.SKIN_WEIGHT : 1;
      sum += down > Math.sin(Math.toRadians(process.overhang())) ? weight * n.norm() / 2 : 0;
    }
    return sum;
  }

  /** Girths from proximal to tip, then lengths, of a left middle finger. */
  private static Solid trough(String... mm) throws DesignRefused {
    List<String> keys =
        List.of(
            "circumference.proximal-phalanx",
            "circumference.pip",
            "circumference.middle-phalanx",
            "circumference.tip",
            "length.palmar-crease-to-web",
            "length.web-to-pip",
            "length.pip-to-dip",
            "length.dip-to-tip");
    List<String> row = new ArrayList<>(List.of("reference=inv-a", "hand=left", "digit=middle"));
    for (int i = 0; i < mm.length; i++) {
      row.add(keys.get(i) + "=" + mm[i]);
    }
    return Orthosis.make(Orders.row(row, "invented", 1, List.of()).order()).trough();
  }

  private static Solid trough() throws DesignRefused {
    Measurements ring = Fingers.ring();
    DigitSurface digit = TapedDigit.of(ring);
    var design = Fingers.trough(0.5, DistalEnd.OPEN);
    return SolidMesher.mesh(Trough.of(design, digit, MidlateralCut.of(ring, design, digit)), 1.2);
  }
}
