package org.midlateral.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.mesh.query.MeshAudit;

/** Closed form: a ring of six-sided section. */
class TubeTest {
  @Test
  void aClosedTubeIsClosedAndFacesOutward() {
    int n = 200;
    List<Vector3D> circle =
        IntStream.range(0, n)
            .mapToDouble(i -> 2 * Math.PI * i / n)
            .mapToObj(t -> Vector3D.of(0, 10 * Math.cos(t), 10 * Math.sin(t)))
            .toList();
    MeshAudit audit = MeshAudit.of(Tube.along(circle, true, 0.5));

    assertThat(audit.watertight()).isTrue();
    // Pappus: the hexagon's area, 3/2 of the root of 3 times its radius squared, round the circle.
    double volume = 1.5 * Math.sqrt(3) * 0.5 * 0.5 * 2 * Math.PI * 10;
    assertThat(audit.volume()).isCloseTo(volume, withPercentage(0.5));
  }
}
