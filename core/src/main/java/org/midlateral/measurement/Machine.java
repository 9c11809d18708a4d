package org.midlateral.measurement;

import java.util.LinkedHashMap;
import java.util.Map;
import org.midlateral.measurement.Design.ProcessDesign;

/**
 * A laboratory's own machine: what it holds, instead of what a usual machine of its process does.
 *
 * @param name a code for it
 * @param process it works by
 * @param limits of wall, gap, overhang and poses
 * @param bed room it builds in
 * @param margin kept free at the bed's edges (mm)
 * @param spacing kept free between two parts (mm)
 * @param nozzle diameter of its nozzle (mm); 0 where it has none
 * @param layer height of a layer (mm); 0 where it is not stated
 * @param shrinkage by which a part comes out smaller than its file, as a share
 */
public record Machine(
    String name,
    ProcessDesign process,
    PrintProcess limits,
    Bed bed,
    double margin,
    double spacing,
    double nozzle,
    double layer,
    double shrinkage) {
  /** The room a machine builds in (mm). */
  public record Bed(double width, double depth, double height) {
    /** Whether a box stands in it, turned about the upright as it needs to be. */
    boolean holds(double x, double y, double z, double margin) {
      double least = Math.min(width, depth) - 2 * margin;
      double most = Math.max(width, depth) - 2 * margin;
      return Math.min(x, y) <= least && Math.max(x, y) <= most && z <= height;
    }
  }

  /** Whether a part with a box as large as this can be built (mm). */
  public boolean holds(double x, double y, double z) {
    return bed.holds(x, y, z, margin);
  }

  /** How much larger than the part its file must be. */
  public double enlargement() {
    return 1 / (1 - shrinkage);
  }

  /** Everything it says, by key, as its file has it; for the record of making. */
  public Map<String, String> settings() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("machine.name", name);
    all.put("machine.process", limits.name());
    all.put("machine.bed.width", "" + bed.width());
    all.put("machine.bed.depth", "" + bed.depth());
    all.put("machine.bed.height", "" + bed.height());
    all.put("machine.margin", "" + margin);
    all.put("machine.spacing", "" + spacing);
    all.put("machine.nozzle", "" + nozzle);
    all.put("machine.layer", "" + layer);
    all.put("machine.least-wall", "" + limits.leastWall());
    all.put("machine.least-gap", "" + limits.leastGap());
    all.put("machine.overhang", "" + limits.overhang());
    all.put("machine.supports", limits.supports() ? "yes" : "no");
    all.put("machine.upright", "" + limits.upright());
    all.put("machine.shrinkage", "" + 100 * shrinkage);
    return all;
  }
}
