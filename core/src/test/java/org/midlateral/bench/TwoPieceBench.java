package org.midlateral.bench;

import java.util.concurrent.TimeUnit;
import org.midlateral.Fingers;
import org.midlateral.cut.DesignRefused;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Gap;
import org.midlateral.solid.MeshTree;
import org.midlateral.solid.TriangleMesh;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Both pieces beside the trough alone, which should not take more than 2.2 times as long, and the
 * exact check of the two against each other at about 20,000 triangles each, which should take 60 ms
 * at most. Warm, one thread.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class TwoPieceBench {
  private final Order both = new Order(Fingers.ring(), Fingers.design());
  private final Order alone = new Order(Fingers.ring(), trough());
  private TriangleMesh trough;
  private TriangleMesh shell;

  private static Design trough() {
    Design design = Fingers.design();
    Design.DorsalShellDesign d = design.dorsalShell();
    return design.withDorsalShell(
        new Design.DorsalShellDesign(
            false, d.length(), d.overlap(), d.fitGap(), d.clearance(), d.wall(), d.vents()));
  }

  @Setup(Level.Trial)
  public void makeBoth() throws DesignRefused {
    Orthosis made = Orthosis.make(both);
    trough = made.trough().mesh();
    shell = made.dorsalShell().orElseThrow().mesh();
    System.out.printf(
        "trough %d, shell %d triangles%n", trough.triangleCount(), shell.triangleCount());
  }

  @Benchmark
  public Orthosis troughAlone() throws DesignRefused {
    return Orthosis.make(alone);
  }

  @Benchmark
  public Orthosis bothPieces() throws DesignRefused {
    return Orthosis.make(both);
  }

  /** Trees built, exact meetings sought. */
  @Benchmark
  public int[] meetings() {
    return MeshTree.of(trough).meetings(MeshTree.of(shell), 1);
  }

  /** Trees built, smallest gap found. */
  @Benchmark
  public Gap gap() {
    return MeshTree.of(trough).gap(MeshTree.of(shell));
  }
}
