package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.midlateral.Fingers;
import org.midlateral.cut.DesignRefused;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Measurements;
import org.midlateral.trough.Trough;

class PrintPoseTest {
  private static final double LEAN = Math.toRadians(45);

  @Test
  void aPoseIsATurn() {
    double[][] ups = {
      {0, 0, 1}, {1, 0, 0}, {-1, 0, 0}, {0, -1, 0}, {0.6, 0, -0.8}, {0.48, 0.6, 0.64}
    };
    for (double[] up : ups) {
      Pose pose = Pose.up(up[0], up[1], up[2]);
      assertThat(pose.z(up[0], up[1], up[2])).isCloseTo(1, within(1e-12));
      assertThat(pose.x(up[0], up[1], up[2])).isCloseTo(0, within(1e-12));
      assertThat(pose.y(up[0], up[1], up[2])).isCloseTo(0, within(1e-12));
      // Lengths and handedness stay: the determinant is 1.
      double det =
          pose.xx() * (pose.yy() * pose.zz() - pose.yz() * pose.zy())
              - pose.xy() * (pose.yx() * pose.zz() - pose.yz() * pose.zx())
              + pose.xz() * (pose.yx() * pose.zy() - pose.yy() * pose.zx());
      assertThat(det).isCloseTo(1, within(1e-12));
    }
  }

  /** Against a count of every triangle in every direction that is tried, without bins. */
  @Test
  void noOtherDirectionNeedsClearlyLessSupport() throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PrintPose.of(solid, LEAN, true);
    double cost = support(solid, chosen.pose());
    double area = MeshShape.of(solid.mesh()).area();
    for (int i = 0; i < 100; i++) {
      double z = 1 - (2.0 * i + 1) / 100;
      double across = Math.sqrt(1 - z * z);
      Pose other = Pose.up(across * Math.cos(2.4 * i), across * Math.sin(2.4 * i), z);
      assertThat(support(solid, other)).isGreaterThan(cost - 0.05 * area);
    }
  }

  @Test
  void theSkinSideStaysClean() throws DesignRefused {
    Solid solid = trough();
    PrintPose chosen = PrintPose.of(solid, LEAN, true);
    double skin = solid.inner().triangleCount();
    double innerArea = MeshShape.of(solid.inner()).area();
    assertThat(skin).isPositive();
    assertThat(chosen.skinOverhang()).isBetween(0.0, 0.02 * innerArea);
    assertThat(chosen.overhang()).isGreaterThanOrEqualTo(chosen.skinOverhang());
  }

  @Test
  void whereThePowderHoldsItTheLowestPoseIsTaken() throws DesignRefused {
    PrintPose chosen = PrintPose.of(trough(), Math.PI / 2, false);
    assertThat(chosen.overhang()).isZero();
    var box = MeshShape.of(trough().mesh()).bounds();
    double lying = box.getMax().getZ() - box.getMin().getZ();
    assertThat(chosen.height()).isLessThanOrEqualTo(lying + 0.5);
  }

  private static double support(Solid solid, Pose pose) {
    double sum = 0;
    TriangleMesh mesh = solid.mesh();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      var a = mesh.vertex(mesh.corner(t, 0));
      var n =
          a.vectorTo(mesh.vertex(mesh.corner(t, 1)))
              .cross(a.vectorTo(mesh.vertex(mesh.corner(t, 2))));
      double down = -pose.z(n.getX(), n.getY(), n.getZ()) / n.norm();
      double weight = t < solid.innerTriangles() ? PrintPose.SKIN_WEIGHT : 1;
      sum += down > Math.sin(LEAN) ? weight * n.norm() / 2 : 0;
    }
    return sum;
  }

  private static Solid trough() throws DesignRefused {
    Measurements ring = Fingers.ring();
    DigitSurface digit = TapedDigit.of(ring);
    var design = Fingers.trough(0.5, DistalEnd.OPEN);
    return SolidMesher.mesh(Trough.of(design, digit, MidlateralCut.of(ring, design, digit)), 1.2);
  }
}
