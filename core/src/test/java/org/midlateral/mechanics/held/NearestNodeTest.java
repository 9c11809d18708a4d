package org.midlateral.mechanics.held;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.ShellModel;

class NearestNodeTest {
  private static final int NODES = 60;

  /** A strip of triangles over places at random, some of them with the same x. */
  private static ShellModel model(SplittableRandom random) throws NotComputable {
    double[] xyz = new double[3 * NODES];
    double[] wall = new double[NODES];
    for (int i = 0; i < NODES; i++) {
      xyz[3 * i] = random.nextInt(12);
      xyz[3 * i + 1] = random.nextDouble(5);
      xyz[3 * i + 2] = random.nextDouble(5);
      wall[i] = 1;
    }
    int[] corners = new int[3 * (NODES - 2)];
    for (int t = 0; t < NODES - 2; t++) {
      for (int c = 0; c < 3; c++) {
        corners[3 * t + c] = t + c;
      }
    }
    return ShellModel.of(xyz, corners, wall, new Isotropic(400, 0.4));
  }

  @Test
  void noOtherNodeIsNearer() throws NotComputable {
    SplittableRandom random = new SplittableRandom(5);
    ShellModel model = model(random);
    int from = 7;
    int to = 51;
    NearestNode nearest = new NearestNode(model, from, to);
    for (int k = 0; k < 500; k++) {
      Vector3D place =
          Vector3D.of(random.nextDouble(-3, 15), random.nextDouble(7), random.nextDouble(7));
      double least = Double.POSITIVE_INFINITY;
      for (int i = from; i < to; i++) {
        least = Math.min(least, model.node(i).distance(place));
      }
      int found = nearest.to(place);
      assertThat(found).isBetween(from, to - 1);
      assertThat(model.node(found).distance(place)).isEqualTo(least);
    }
  }
}
