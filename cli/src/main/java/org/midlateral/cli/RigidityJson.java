package org.midlateral.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.recipe.Bands;
import org.midlateral.recipe.Rigidity;

/** Rigidity as JSON: the blocks of the report, and the bands where samples were drawn. */
final class RigidityJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private RigidityJson() {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record Report(
      String reference,
      boolean ok,
      List<Said> findings,
      RigidityBlock rigidity,
      SupportBlock support,
      Bands bands) {}

  /** A finding as the report has it; figures that are not there are left out. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record Said(
      String level, String code, String key, String text, Double value, Double limit) {
    static Said of(Finding finding) {
      return new Said(
          FindingsJson.level(finding.severity()),
          finding.code(),
          finding.key(),
          finding.text(),
          finite(finding.value()),
          finite(finding.limit()));
    }

    private static Double finite(double value) {
      return Double.isFinite(value) ? (Double) value : null;
    }
  }

  /** The JSON text, ending with a line feed. */
  static String text(Rigidity rigidity, Bands bands, List<Finding> findings)
      throws JsonProcessingException {
    Report report =
        new Report(
            rigidity.orthosis().order().measurements().reference(),
            true,
            findings.stream().map(Said::of).toList(),
            rigidity.rigidity(),
            rigidity.forces(),
            bands);
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(report) + "\n";
  }
}
