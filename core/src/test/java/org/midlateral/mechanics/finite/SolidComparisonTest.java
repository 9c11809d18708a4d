package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Troughs and a closed tube beside CalculiX's quadratic solids, run on the spot. Skipped where the
 * program (Debian package calculix-ccx) is missing, but not on a build server.
 */
public class SolidComparisonTest {
  private static final double JOINT = 37;
  private static final double LENGTH = 75;
  private static final DoubleUnaryOperator STRAIGHT = x -> 9;
  private static final DoubleUnaryOperator TAPERED = x -> 10 - 3 * x / LENGTH;
  private static final DoubleUnaryOperator BULGED =
      x -> 9 + 1.5 * Math.exp(-Math.pow((x - JOINT) / 8, 2));

  @TempDir Path directory;

  public @BeforeAll static void needsTheProgram() {
    boolean present =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
            .anyMatch(p -> Files.isExecutable(Path.of(p, "ccx")));
    if (!present && System.getenv("CI") != null) {
      throw new IllegalStateException("ccx is missing on the build server: install calculix-ccx");
    }
    Assumptions.assumeTrue(present, "ccx is missing: the comparison with solids is skipped");
  }

  static Stream<Arguments> tubes() {
    return Stream.of(
        Arguments.of("half", STRAIGHT, 1.6, 90),
        Arguments.of("shallow", STRAIGHT, 1.6, 60),
        Arguments.of("deep", STRAIGHT, 1.6, 120),
        Arguments.of("closed", STRAIGHT, 1.6, 180),
        Arguments.of("bulged at the joint", BULGED, 1.6, 90),
        Arguments.of("tapered", TAPERED, 2.4, 90),
        Arguments.of("bulged, thick", BULGED, 3.2, 90));
  }

  /** Three percent each; an opening, which may nearly cancel, three percent of the largest one. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("tubes")
  void shellAgreesWithSolids(String name, DoubleUnaryOperator radius, double wall, double half)
      throws IOException, InterruptedException, MechanismException {
    Tube tube = new Tube(radius, wall, LENGTH, JOINT, half, 2);
    Vector3D[] solid = tube.solveAsSolid(directory);
    Tube.Measures want = tube.measures(i -> solid[i]);
    Tube.Measures found = tube.measures(tube.solve()::displacement);
    assertThat(found.rise()).isCloseTo(want.rise(), Percentage.withPercentage(3));
    assertThat(found.lost()).isCloseTo(want.lost(), Percentage.withPercentage(3));
    double largest = Arrays.stream(want.openings()).map(Math::abs).max().orElseThrow();
    for (int k = 0; k < 3; k++) {
      assertThat(found.openings()[k]).isCloseTo(want.openings()[k], within(0.03 * largest));
    }
  }
}
