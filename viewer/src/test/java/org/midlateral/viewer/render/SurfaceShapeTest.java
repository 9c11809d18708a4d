package org.midlateral.viewer.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.mesh.TriangleMesh;

class SurfaceShapeTest {
  private static SurfaceShape triangle(double z) {
    return SurfaceShape.of(
        new TriangleMesh(new double[] {0, 0, z, 1, 0, z, 0, 1, z}, new int[] {0, 1, 2}));
  }

  @Test
  void joinedShapesKeepTheirPlaces() {
    SurfaceShape joined = SurfaceShape.joined(List.of(triangle(0), triangle(5)));
    assertThat(joined.vertexCount()).isEqualTo(6);
    assertThat(joined.triangleCount()).isEqualTo(2);
    for (int corner = 0; corner < 3; corner++) {
      assertThat(joined.at(joined.corner(0, corner), 2)).isZero();
      assertThat(joined.at(joined.corner(1, corner), 2)).isEqualTo(5);
    }
    assertThat(joined.at(joined.corner(1, 1), 0)).isEqualTo(1);
  }

  @Test
  void joinedShapesKeepTheirNormals() {
    SurfaceShape joined = SurfaceShape.joined(List.of(triangle(0), triangle(5)));
    assertThat(joined.normals)
        .containsExactly(0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1);
  }
}
