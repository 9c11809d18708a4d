package org.midlateral.recipe.rigidity;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.recipe.Report;

/**
 * The report of the mechanics alone, in the form of the whole report.
 *
 * @param bands null where no samples were drawn
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RigidityReport(
    String reference,
    boolean ok,
    List<Report.ReportLine> findings,
    RigidityBlock rigidity,
    SupportBlock support,
    Bands bands) {

  public RigidityReport {
    findings = List.copyOf(findings);
  }

  /**
   * The report of a computation.
   *
   * @param findings on the input and on the design
   * @param bands or null
   */
  public static RigidityReport of(Rigidity rigidity, List<Finding> findings, Bands bands) {
    return new RigidityReport(
        rigidity.orthosis().order().measurements().reference(),
        findings.stream().noneMatch(f -> f.severity() == Finding.Severity.REFUSAL),
        findings.stream().map(Report.ReportLine::of).toList(),
        rigidity.rigidity(),
        rigidity.forces(),
        bands);
  }

  /** The report as it is written: JSON, ending with a line feed. */
  public String json() {
    return Report.text(this);
  }
}
