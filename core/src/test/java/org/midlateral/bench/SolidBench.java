package org.midlateral.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.SolidSet;
import org.midlateral.document.format.StlFile;
import org.midlateral.document.format.ThreeMfFile;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.Gap;
import org.midlateral.mesh.query.MeshAudit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What every product passes on its way out: the audit of a solid of 20,160 triangles, the gap
 * between two surfaces of 7,896 that are everywhere a wall apart, and the two solid files. The
 * first shot of a fresh process tells what one run of the program pays, the average what a batch
 * does.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SolidBench {
  private final TriangleMesh solid = Meshes.torus(20, 6, 140, 72);
  private final TriangleMesh inner = Meshes.halfTube(8, 75, 94, 42, -1);
  private final TriangleMesh outer = Meshes.halfTube(9.6, 75, 94, 42, 1);

  @Benchmark
  public MeshAudit audit() {
    return MeshAudit.of(solid);
  }

  @Benchmark
  public BoundingVolumeHierarchy tree() {
    return BoundingVolumeHierarchy.of(solid);
  }

  @Benchmark
  public Gap gap() {
    return BoundingVolumeHierarchy.of(inner).gap(BoundingVolumeHierarchy.of(outer));
  }

  @Benchmark
  public byte[] stl() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new StlFile(new NamedSolid("solid", solid, AffineTransformMatrix3D.identity())).writeTo(out);
    return out.toByteArray();
  }

  @Benchmark
  public byte[] threeMf() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new ThreeMfFile(
            new SolidSet(
                "bench",
                "bench",
                "PA12",
                List.of(new NamedSolid("solid", solid, AffineTransformMatrix3D.identity()))))
        .writeTo(out);
    return out.toByteArray();
  }
}
