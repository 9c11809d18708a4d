package org.midlateral.mechanics.held;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.finite.DegreeOfFreedom;
import org.midlateral.mechanics.finite.MechanismException;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.SolidComparisonTest;
import org.midlateral.mechanics.finite.SurfacePoint;
import org.midlateral.mechanics.finite.Tube;
import org.midlateral.piece.Piece;

/**
 * Real pieces beside CalculiX's quadratic solids on the same triangles, with the rims' own round
 * section. Skipped where the program (Debian package calculix-ccx) is missing, but not on a build
 * server.
 */
class RealPieceComparisonTest {
  private static final double FACTOR = 1.1;

  @TempDir Path directory;

  @BeforeAll
  static void needsTheProgram() {
    SolidComparisonTest.needsTheProgram();
  }

  static Stream<Arguments> pieces() {
    return Stream.of(
        Arguments.of("slim, wrap 0.25", RealPieces.slim(), 0.25, false),
        Arguments.of("slim, wrap 0.35", RealPieces.slim(), 0.35, false),
        Arguments.of("slim, wrap 0.5", RealPieces.slim(), 0.5, false),
        Arguments.of("bulbous, wrap 0.4", RealPieces.bulbous(), 0.4, false),
        Arguments.of("bulbous, wrap 0.5", RealPieces.bulbous(), 0.5, false),
        Arguments.of("bent by 25 degrees", RealPieces.bent(), 0.5, false),
        Arguments.of("bulbous, closed", RealPieces.bulbous(), 0.5, true));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void shellAgreesWithSolids(String name, Measurements measured, double wrap, boolean closed)
      throws DesignRefused, IOException, InterruptedException, NotComputable {
    Piece trough = RealPieces.trough(measured, wrap);
    FingerShell shell =
        closed
            ? FingerShell.bonded(
                FingerShell.mesh(trough, FACTOR),
                FingerShell.mesh(RealPieces.dorsal(measured), FACTOR),
                RealPieces.MATERIAL)
            : FingerShell.of(FingerShell.mesh(trough, FACTOR), RealPieces.MATERIAL);
    HeldJoint joint = HeldShellTest.joint(trough);
    HeldAnswer found = HeldShell.solve(shell, joint).answer();
    SurfacePoint.Motion motion = PieceDeck.solve(shell, new BalancedLoad(shell, joint), directory);
    HeldShell.Measures want = HeldShell.measures(shell, joint, motion);
    System.out.printf(
        "%s: deflection %.5f, solids %.5f (%+.1f %%); extension lost %.4f, solids %.4f (%+.1f %%);"
            + " opening %.4f, solids %.4f%n",
        name,
        found.deflectionAtPip(),
        want.deflection(),
        100 * (found.deflectionAtPip() / want.deflection() - 1),
        found.extensionLost(),
        want.lost(),
        100 * (found.extensionLost() / want.lost() - 1),
        found.opening().pip(),
        want.opening().pip());
    Percentage three = Percentage.withPercentage(3);
    assertThat(found.deflectionAtPip()).isCloseTo(want.deflection(), three);
    assertThat(found.extensionLost()).isCloseTo(want.lost(), three);
    double largest =
        Math.max(
            Math.abs(want.opening().pip()),
            Math.max(Math.abs(want.opening().proximal()), Math.abs(want.opening().distal())));
    // A rim's own movement is smaller than the rest and more local.
    assertThat(found.opening().pip()).isCloseTo(want.opening().pip(), within(0.05 * largest));
    assertThat(found.opening().proximal())
        .isCloseTo(want.opening().proximal(), within(0.05 * largest));
    assertThat(found.opening().distal()).isCloseTo(want.opening().distal(), within(0.05 * largest));
  }

  /** Both at 60,000 unknowns, from the mesh to the answer, in turn; the second of two runs each. */
  @Test
  void isFasterThanSolidsOfAsManyUnknowns()
      throws IOException, InterruptedException, MechanismException {
    Tube fine = new Tube(x -> 9, 1.6, 75, 37, 90, 0.475);
    Tube coarse = new Tube(x -> 9, 1.6, 75, 37, 90, 1.05);
    double shell = 0;
    double solid = 0;
    for (int k = 0; k < 2; k++) {
      long start = System.nanoTime();
      fine.solve();
      long middle = System.nanoTime();
      coarse.solveAsSolid(directory);
      shell = (middle - start) * 1e-9;
      solid = (System.nanoTime() - middle) * 1e-9;
    }
    int unknowns = DegreeOfFreedom.COUNT * fine.model().nodeCount();
    ShellModel wedges = coarse.model();
    int edges = wedges.nodeCount() + wedges.triangleCount() - 1;
    int solidUnknowns = 3 * (3 * wedges.nodeCount() + 2 * edges);
    System.out.printf(
        "shell: %d unknowns in %.2f s; solids in CalculiX: %d unknowns in %.2f s%n",
        unknowns, shell, solidUnknowns, solid);
    assertThat(unknowns).isBetween(57_000, 66_000);
    assertThat(solidUnknowns).isBetween(54_000, 66_000);
    assertThat(shell).isLessThan(solid);
  }
}
