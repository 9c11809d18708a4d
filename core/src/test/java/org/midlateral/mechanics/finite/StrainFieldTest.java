package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.mechanics.element.Isotropic;

/** Strains at the nodes of a flat strip that is given a known motion. */
class StrainFieldTest {
  private static final double BEND = 1e-3;
  private static final MappedGrid GRID =
      MappedGrid.open(
          MappedGrid.even(16, 0, 16), MappedGrid.even(8, -4, 4), (u, v) -> Vector3D.of(u, v, 0));
  private static final ShellModel MODEL = GRID.shell(1.5, new Isotropic(1000, 0));

  private interface Field {
    double[] at(double x, double y);
  }

  private static StrainField strains(Field field) {
    double[] moved = new double[6 * MODEL.nodeCount()];
    for (int i = 0; i < MODEL.nodeCount(); i++) {
      Vector3D p = MODEL.node(i);
      System.arraycopy(field.at(p.getX(), p.getY()), 0, moved, 6 * i, 6);
    }
    return new StrainField(
        new ShellResult(
            MODEL,
            new MeshCurvature(MODEL),
            List.of(),
            ShellLoad.none(MODEL),
            moved,
            new double[0]));
  }

  /** Bent across its plane: w = -b x² / 2, so that the front stretches by b z. */
  @Test
  void bothFacesOfABentStripStrainOppositely() {
    StrainField strains = strains((x, y) -> new double[] {0, 0, -BEND * x * x / 2, 0, BEND * x, 0});
    double want = BEND * 0.75;
    for (int i = 0; i < MODEL.nodeCount(); i++) {
      assertThat(strains.at(i, WallFace.FRONT)).isCloseTo(want, within(1e-9 * want));
      assertThat(strains.at(i, WallFace.BACK)).isCloseTo(-want, within(1e-9 * want));
    }
  }

  /**
   * Bent in its plane: u = b x y, v = -b x² / 2; the strain grows to b times 4 at the very edge.
   */
  @Test
  void anEdgeGetsTheStrainAtTheEdge() {
    StrainField strains =
        strains((x, y) -> new double[] {BEND * x * y, -BEND * x * x / 2, 0, 0, 0, -BEND * x});
    for (int i = 0; i < MODEL.nodeCount(); i++) {
      double y = MODEL.node(i).getY();
      if (Math.abs(y) > 1) {
        for (WallFace side : WallFace.values()) {
          assertThat(strains.at(i, side)).isCloseTo(BEND * y, within(0.025 * 4 * BEND));
        }
      }
    }
  }
}
