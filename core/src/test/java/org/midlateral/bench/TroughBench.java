package org.midlateral.bench;

import java.util.concurrent.TimeUnit;
import org.midlateral.Fingers;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;
import org.midlateral.trough.Trough;
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
 * The trough made anew from measurements, warm, one thread: digit surface, outline, gap and mesh,
 * at about 20,000, 60,000 and 600,000 triangles. What a viewer pays at each turn of a dial.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class TroughBench {
  /** Triangles asked for; the edge length that gives them is found first. */
  @Param({"20000", "60000", "600000"})
  private int triangles;

  private final Measurements finger = Fingers.slim();
  private final Design design = Fingers.design();
  private double edgeLength;

  @Setup(Level.Trial)
  public void findEdgeLength() throws DesignRefused {
    edgeLength = 0.8;
    for (int i = 0; i < 8; i++) {
      edgeLength *= Math.sqrt((double) make().mesh().triangleCount() / triangles);
      edgeLength = Math.min(0.9, edgeLength);
    }
    System.out.printf("%d triangles at %.3f mm%n", make().mesh().triangleCount(), edgeLength);
  }

  @Benchmark
  public Solid make() throws DesignRefused {
    DigitSurface digit = TapedDigit.of(finger);
    Piece bare =
        Trough.of(design.trough(), digit, MidlateralCut.of(finger, design.trough(), digit));
    Piece piece = Relief.of(finger, design.relief(), digit).over(bare);
    return SolidMesher.mesh(piece, edgeLength);
  }
}
