package org.midlateral.viewer.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.midlateral.measurement.Hand;
import org.midlateral.viewer.render.Orbit;

/** Closed form: where points appear from each side. */
class ProjectionTest {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 300;

  private static Vector3D seen(ViewSide side, Hand hand, double x, double y, double z) {
    Orbit orbit = new Orbit(Vector3D.ZERO, side.yaw(hand), side.pitch(), 30);
    return orbit.project(Vector3D.of(x, y, z), WIDTH, HEIGHT);
  }

  @ParameterizedTest
  @EnumSource
  void theSideLookedFromIsNearest(ViewSide side) {
    Vector3D toward =
        switch (side) {
          case DORSAL -> Vector3D.of(0, 0, 10);
          case VOLAR -> Vector3D.of(0, 0, -10);
          case RADIAL -> Vector3D.of(0, 10, 0);
          case ULNAR -> Vector3D.of(0, -10, 0);
          case PROXIMAL -> Vector3D.of(-10, 0, 0);
          case DISTAL -> Vector3D.of(10, 0, 0);
        };
    Vector3D p = seen(side, Hand.RIGHT, toward.getX(), toward.getY(), toward.getZ());
    assertThat(p.getX()).isCloseTo(WIDTH / 2.0, within(1e-9));
    assertThat(p.getY()).isCloseTo(HEIGHT / 2.0, within(1e-9));
    assertThat(p.getZ()).isCloseTo(10, within(1e-9));
  }

  @Test
  void distalPointsUpSeenFromTheBackOfTheFinger() {
    // 10 mm of 2 x 30 mm over 300 px are 50 px.
    Vector3D p = seen(ViewSide.DORSAL, Hand.RIGHT, 10, 0, 0);
    assertThat(p.getX()).isCloseTo(200, within(1e-9));
    assertThat(p.getY()).isCloseTo(100, within(1e-9));
  }

  @Test
  void aRightHandSeenFromTheBackHasItsThumbOnTheLeft() {
    // Palm down, fingers away: the radial side (+y on a right hand) lies to the left.
    assertThat(seen(ViewSide.DORSAL, Hand.RIGHT, 0, 10, 0).getX()).isLessThan(200);
    assertThat(seen(ViewSide.VOLAR, Hand.RIGHT, 0, 10, 0).getX()).isGreaterThan(200);
  }

  @Test
  void theRadialSideOfALeftHandIsTheOther() {
    assertThat(seen(ViewSide.RADIAL, Hand.LEFT, 0, -10, 0).getZ()).isCloseTo(10, within(1e-9));
  }

  @Test
  void whatIsProjectedComesBack() {
    Orbit orbit = new Orbit(Vector3D.of(5, 6, 7), 0.7, -0.3, 25);
    Vector3D back = orbit.unproject(123, 45, WIDTH, HEIGHT);
    Vector3D again = orbit.project(back, WIDTH, HEIGHT);
    assertThat(again.getX()).isCloseTo(123, within(1e-9));
    assertThat(again.getY()).isCloseTo(45, within(1e-9));
  }
}
