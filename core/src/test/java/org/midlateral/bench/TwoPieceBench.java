package org.midlateral.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.Gap;
import org.midlateral.recipe.Orthosis;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
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
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class TwoPieceBench {
  @Param({"middle-inches", "bulbous-ring", "slim-little", "left-deficit", "covered-tip"})
  private String sample;

  private Order both;
  private Order alone;
  private TriangleMesh trough;
  private TriangleMesh shell;

  @Setup(Level.Trial)
  public void makeBoth() throws DesignRefused {
    both = order("yes");
    alone = order("no");
    Orthosis made = Orthosis.make(both);
    trough = made.trough().mesh();
    shell = made.dorsalShell().orElseThrow().mesh();
    System.out.printf(
        "trough %d, shell %d triangles%n", trough.triangleCount(), shell.triangleCount());
  }

  private Order order(String shell) {
    Path file = Path.of("../samples", sample + ".yaml");
    return Orders.read(file, List.of("dorsal-shell.make=" + shell)).order();
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
    return BoundingVolumeHierarchy.of(trough).intersections(BoundingVolumeHierarchy.of(shell), 1);
  }

  /** Trees built, smallest gap found. */
  @Benchmark
  public Gap gap() {
    return BoundingVolumeHierarchy.of(trough).gap(BoundingVolumeHierarchy.of(shell));
  }
}
