package org.midlateral.recipe.refit;

import java.util.List;
import org.midlateral.json.RecordJson;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.Report;

/**
 * The report of a refit. Lengths in mm.
 *
 * @param reference of the order the pieces were made from
 * @param against reference of the later measurements
 */
public record RefitReport(
    String reference,
    String against,
    boolean ok,
    List<Report.ReportLine> findings,
    List<Refit> pieces) {

  public RefitReport {
    findings = List.copyOf(findings);
    pieces = List.copyOf(pieces);
  }

  /** The report of pieces laid on a later finger. */
  public static RefitReport of(
      Order made, Order later, List<Refit> pieces, List<Finding> findings) {
    return new RefitReport(
        made.measurements().reference(),
        later.measurements().reference(),
        findings.stream().noneMatch(f -> f.severity() == Finding.Severity.REFUSAL),
        findings.stream().map(Report.ReportLine::of).toList(),
        pieces);
  }

  /** The report as it is written: JSON, ending with a line feed. */
  public String json() {
    return RecordJson.ROUNDED.text(this);
  }
}
