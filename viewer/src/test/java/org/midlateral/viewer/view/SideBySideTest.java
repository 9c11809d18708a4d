package org.midlateral.viewer.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Hand;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;

/** Two designs side by side do not cover each other, from wherever they are looked at. */
class SideBySideTest {
  @Test
  void theOneKeptStandsClearAboveFromEverySide() throws Exception {
    DesignShapes now = made(Sample.SLIM);
    DesignShapes kept = made(Sample.INCHES);
    for (ViewSide side : ViewSide.values()) {
      clear(now, kept, new Orbit(Vector3D.ZERO, side.yaw(Hand.RIGHT), side.pitch(), 60));
    }
    clear(now, kept, new Orbit(Vector3D.ZERO, -1.1, -0.42, 60));
  }

  private static DesignShapes made(Sample sample) throws Exception {
    return MadeDraft.of(DraftText.read(sample.text()).with("print.edge-length", "1.2 mm"))
        .shapes()
        .orElseThrow();
  }

  private static void clear(DesignShapes now, DesignShapes kept, Orbit orbit) {
    Vector3D beside = SideBySide.about(now).above(SideBySide.about(kept), orbit);
    double highest = -reach(now, Vector3D.ZERO, orbit, -1);
    double lowest = reach(kept, beside, orbit, 1);
    assertThat(lowest).isGreaterThan(highest);
  }

  /** Least height of a design in the picture, or the negative of its largest. */
  private static double reach(DesignShapes design, Vector3D place, Orbit orbit, int sign) {
    double least = least(design.skin(), place, orbit, sign);
    for (var piece : design.pieces()) {
      least = Math.min(least, least(piece.shape(), place, orbit, sign));
    }
    return least;
  }

  private static double least(SurfaceShape shape, Vector3D place, Orbit orbit, int sign) {
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < shape.vertexCount(); v++) {
      Vector3D p = Vector3D.of(shape.at(v, 0), shape.at(v, 1), shape.at(v, 2)).add(place);
      least = Math.min(least, sign * p.dot(orbit.up()));
    }
    return least;
  }
}
