package org.midlateral.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.Fingers;
import org.midlateral.LongRun;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.SolidComparisonTest;

/**
 * A trough in a wrap on a soft finger, beside CalculiX's solids in contact. The tissue there is a
 * layer of columns, as the model has it: what neighbours would do for each other is told in
 * JOINT.md. The solids' joint is turned to the angle found here; what holds it there is the moment
 * that both are then compared at. Skipped where the program (Debian package calculix-ccx) is
 * missing, but not on a build server, and where the run is not a long one: each finger takes a
 * quarter of a minute.
 */
@Tag(LongRun.TAG)
class ContactComparisonTest {
  /** PCL, as the table of materials has it. */
  static final Isotropic PCL = new Isotropic(400, 0.4);

  @TempDir Path directory;

  @BeforeAll
  static void needsTheProgramAndTime() {
    assumeTrue(LongRun.count(0, 1) == 1, "in a long run");
    SolidComparisonTest.needsTheProgram();
  }

  /** With about the moment that a joint of their size is taken to have. */
  static Stream<Arguments> fingers() {
    return Stream.of(
        Arguments.of("slim, PCL", Fingers.slim(), PCL, 10.0),
        Arguments.of("ring, PA12", Fingers.ring(), WornFingers.PA12, 20.0));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("fingers")
  void agreesWithSolidsInContact(
      String name, Measurements measured, Isotropic plastic, double moment)
      throws DesignRefused, NotComputable, IOException, InterruptedException {
    HeldFinger finger = InSolids.finger(measured, plastic);
    InSolids solids = InSolids.of(finger, moment, true, directory);
    JointAnswer found = solids.found(finger);
    System.out.println(name + ": " + solids.line(found));
    Percentage three = Percentage.withPercentage(3);
    assertThat(found.angle()).isCloseTo(solids.angle(), Percentage.withPercentage(5));
    assertThat(found.squareCentimetre().pressure())
        .isCloseTo(solids.peak(), Percentage.withPercentage(10));
    assertThat(found.resultants().proximal().force())
        .isCloseTo(solids.resultants().proximal().force(), three);
    assertThat(found.resultants().middle().force())
        .isCloseTo(solids.resultants().middle().force(), three);
    assertThat(found.resultants().distal().force())
        .isCloseTo(solids.resultants().distal().force(), three);
  }
}
