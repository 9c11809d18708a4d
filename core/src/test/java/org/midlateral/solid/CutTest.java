package org.midlateral.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.MeshAudit;

/** G1, by the saw: the skin's mesh cut by a plane at each level measures what the tape read. */
class CutTest {
  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void theCutIsAsLongAsTheTape(Path sample) {
    Measurements measured = Orders.read(sample, List.of()).order().measurements();
    TapedDigit digit = TapedDigit.of(measured);
    List<Double> stations =
        measured.circumference().keySet().stream().map(measured::stationOf).toList();
    SkinMesh skin = skin(digit, -measured.palmarCreaseToWeb(), stations);

    measured
        .circumference()
        .forEach(
            (level, tape) -> {
              double s = measured.stationOf(level);
              double cut = cut(skin.mesh(), digit.centre(s), digit.tangent(s));
              assertThat(cut).as(level.key()).isCloseTo(tape, within(ErrorBudget.TAPE));
              assertThat(SkinMesh.perimeter(digit, s)).as(level.key()).isCloseTo(cut, within(1e-3));
            });
  }

  /** As fine as it is measured on. */
  private static SkinMesh skin(TapedDigit digit, double from, List<Double> levels) {
    return SkinMesh.of(digit, from, levels, SkinMesh.AROUND, 0.8);
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void theSkinIsClosed(Path sample) {
    Measurements measured = Orders.read(sample, List.of()).order().measurements();
    MeshAudit audit =
        MeshAudit.of(
            skin(TapedDigit.of(measured), -measured.palmarCreaseToWeb(), List.of()).mesh());

    assertThat(audit.watertight()).isTrue();
    assertThat(audit.volume()).as("its outside faces outward").isPositive();
    assertThat(audit.shells()).isEqualTo(1);
    assertThat(audit.holes()).isZero();
  }

  /** Length of a mesh's section by a plane, moved off its vertices by a thousandth. */
  private static double cut(TriangleMesh mesh, Vector3D point, Vector3D normal) {
    double sum = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vector3D first = null;
      for (int c = 0; c < 3; c++) {
        Vector3D a = mesh.vertex(mesh.corner(t, c));
        Vector3D b = mesh.vertex(mesh.corner(t, (c + 1) % 3));
        double da = point.vectorTo(a).dot(normal) - 1e-3;
        double db = point.vectorTo(b).dot(normal) - 1e-3;
        if (da < 0 != db < 0) {
          Vector3D on = a.lerp(b, da / (da - db));
          sum += first == null ? 0 : first.distance(on);
          first = on;
        }
      }
    }
    return sum;
  }
}
