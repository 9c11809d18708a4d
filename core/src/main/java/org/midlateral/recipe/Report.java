package org.midlateral.recipe;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.document.bench.BenchBlocks.BlankBlock;
import org.midlateral.document.bench.BenchBlocks.ClosureBlock;
import org.midlateral.inspection.Spread;
import org.midlateral.json.RecordJson;
import org.midlateral.json.ReportPart;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Remedy;
import org.midlateral.mechanics.JointBlock;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;

/**
 * The report of one order: report.json. Lengths in mm, forces in N, stresses in MPa, masses in g,
 * angles in degrees.
 */
public record Report(
    Tool tool,
    String reference,
    String note,
    String caution,
    boolean ok,
    List<ReportLine> findings,
    List<LevelLine> levels,
    Map<String, PartLine> parts,
    Clearance clearance,
    Assembly assembly,
    JointBlock joint,
    RigidityBlock rigidity,
    SupportBlock support,
    ClosureBlock closure,
    BlankBlock blank,
    Print print,
    Timing timing)
    implements ReportPart {
  /** What holds for every figure in it, whatever was computed. */
  public static final String CAUTION = "Estimate, for comparison; does not clear a piece for use.";

  /** Who made the report. */
  public record Tool(String name, String version) {}

  /**
   * One finding.
   *
   * @param remedies that pass; left out where there are none
   */
  public record ReportLine(
      String level,
      String code,
      String key,
      String text,
      Double value,
      Double limit,
      List<Remedy> remedies)
      implements ReportPart {
    public static ReportLine of(Finding finding) {
      return new ReportLine(
          finding.severity().name().toLowerCase(Locale.ROOT),
          finding.code(),
          finding.key(),
          finding.text(),
          finite(finding.value()),
          finite(finding.limit()),
          finding.remedies().isEmpty() ? null : finding.remedies());
    }

    private static Double finite(double value) {
      return Double.isFinite(value) ? value : null;
    }
  }

  /**
   * One level of the finger.
   *
   * @param midlateralGirth from the volar midline to the mid-lateral mark, on the skin
   */
  public record LevelLine(
      String level,
      double station,
      double circumference,
      double width,
      double depth,
      double midlateralGirth) {}

  /**
   * One part.
   *
   * @param file that holds it; none where nothing is written
   */
  public record PartLine(
      String file,
      int triangles,
      int vertices,
      double volume,
      double mass,
      double area,
      boolean watertight,
      int shells,
      int holes,
      double minWall,
      double minAngle,
      double chordError,
      Bounds bounds)
      implements ReportPart {}

  /** The box round a part. */
  public record Bounds(List<Double> min, List<Double> max) {}

  /**
   * Gaps, to the skin and between the pieces.
   *
   * @param dorsum of the dorsal shell, where there is one
   * @param bridges where a piece stands off the skin further than its clearance, over a waist
   */
  public record Clearance(
      TroughClearance trough, DorsumClearance dorsum, Spread fitGap, List<BridgeLine> bridges)
      implements ReportPart {
    public Clearance {
      bridges = List.copyOf(bridges);
    }
  }

  /**
   * Gap between the dorsal shell and the skin along the dorsal midline.
   *
   * @param asked the clearance of the design (mm)
   * @param min least that was made (mm); more where the step over the trough's rims has no room
   * @param max largest, reliefs and bridges included (mm)
   */
  public record DorsumClearance(double asked, double min, double max) {}

  /**
   * One stretch that a piece bridges.
   *
   * @param part which piece
   * @param from station of its proximal end (mm)
   * @param to station of its distal end (mm)
   * @param rise at most, beyond the gap the piece would have there (mm)
   * @param station of that place (mm)
   * @param girth of that place from the volar midline, on either side (mm)
   */
  public record BridgeLine(
      String part, double from, double to, double rise, double station, double girth) {}

  /** Gap between trough and skin; at the relief's centre only where the trough covers one. */
  public record TroughClearance(double min, double mean, double max, Double atReliefCentre)
      implements ReportPart {}

  /** What pushing the dorsal shell on asks of it; strains as shares. */
  public record Assembly(
      double mouth, double widest, double spread, double strain, double allowable) {}

  /**
   * Readiness for printing.
   *
   * @param gap smallest gap between the pieces; only where there are two
   */
  public record Print(
      String process,
      String material,
      String criterion,
      PrintLimits limits,
      Double gap,
      Map<String, PrintPart> parts)
      implements ReportPart {}

  /** What the process holds, and where each figure comes from. */
  public record PrintLimits(
      double wall, double gap, double overhang, Map<String, String> sources) {}

  /**
   * One part on the bed.
   *
   * @param overhang area that needs support in the pose, and the skin side's share of it
   * @param footing area of the section just above the bed, on which it stands (mm²)
   * @param upright how far the finger's length is from lying down (degrees)
   * @param pose rows of the matrix that turns the part from the finger's frame to the bed's
   */
  public record PrintPart(
      double minWall,
      double mass,
      double overhang,
      double skinOverhang,
      double height,
      double footing,
      double upright,
      List<Double> pose) {}

  /** Where the time went: meshing, inspecting, mechanics and documents, writing (ms). */
  public record Timing(double geometry, double checks, double documents, double write)
      implements ReportPart {

    @Override
    public String jsonName(String component) {
      return component + "Ms";
    }

    public Timing withDocuments(double ms) {
      return new Timing(geometry, checks, ms, write);
    }

    public Timing withWrite(double ms) {
      return new Timing(geometry, checks, documents, ms);
    }
  }

  /** The same with its timing. */
  public Report withTiming(Timing spent) {
    return new Report(
        tool, reference, note, caution, ok, findings, levels, parts, clearance, assembly, joint,
        rigidity, support, closure, blank, print, spent);
  }

  /** The report as it is written: JSON, ending with a line feed. */
  public String json() {
    return RecordJson.ROUNDED.text(this);
  }
}
