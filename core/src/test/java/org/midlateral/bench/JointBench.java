package org.midlateral.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.WornOrthosis;
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

/** A joint in its pieces, warm: what meshing and factoring cost, and what one question after it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class JointBench {
  @Param({"bulbous-ring", "covered-tip"})
  private String sample;

  /** Whether the trough is worn with its dorsal shell. */
  @Param({"no", "yes"})
  private String shell;

  private Orthosis made;
  private WornOrthosis worn;

  @Setup(Level.Trial)
  public void make() throws DesignRefused, NotComputable {
    Path file = Path.of("../samples", sample + ".yaml");
    made = Orthosis.make(Orders.read(file, List.of("dorsal-shell.make=" + shell)).order());
    worn = WornOrthosis.of(made);
  }

  /** Meshes, factors and condenses. */
  @Benchmark
  public WornOrthosis factor() throws DesignRefused, NotComputable {
    return WornOrthosis.of(made);
  }

  /** Lays the closure and finds where the joint rests (degrees). */
  @Benchmark
  public double solve() throws NotComputable {
    return worn.finger().angle(worn.fastening(), worn.moment());
  }
}
