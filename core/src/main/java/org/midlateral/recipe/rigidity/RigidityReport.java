package org.midlateral.recipe.rigidity;

import java.util.List;
import org.midlateral.json.RecordJson;
import org.midlateral.json.ReportPart;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.JointBlock;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.joint.JointReport;

/**
 * The report of the mechanics alone, in the form of the whole report.
 *
 * @param joint null where it has no answer
 * @param advice null where none was asked for
 * @param bands null where no samples were drawn
 */
public record RigidityReport(
    String reference,
    boolean ok,
    List<Report.ReportLine> findings,
    JointBlock joint,
    Adviser.DesignAdvice advice,
    RigidityBlock rigidity,
    SupportBlock support,
    Bands bands)
    implements ReportPart {

  public RigidityReport {
    findings = List.copyOf(findings);
  }

  /**
   * The report of a computation.
   *
   * @param findings on the input and on the design
   * @param advice or null
   * @param bands or null
   */
  public static RigidityReport of(
      Rigidity rigidity, List<Finding> findings, Adviser.DesignAdvice advice, Bands bands) {
    return new RigidityReport(
        rigidity.orthosis().order().measurements().reference(),
        findings.stream().noneMatch(f -> f.severity() == Finding.Severity.REFUSAL),
        findings.stream().map(Report.ReportLine::of).toList(),
        rigidity.joint().map(JointReport::of).orElse(null),
        advice,
        rigidity.rigidity(),
        rigidity.forces(),
        bands);
  }

  /** The report as it is written: JSON, ending with a line feed. */
  public String json() {
    return RecordJson.ROUNDED.text(this);
  }
}
