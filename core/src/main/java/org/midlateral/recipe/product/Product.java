package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PrintCheck;
import org.midlateral.recipe.Report;

/**
 * One order, made and inspected: what {@link ProductRecipe} gives, {@link ProductReport} tells and
 * {@link ProductWriter} writes.
 *
 * @param order what was asked for
 * @param orthosis what was made; empty where the design has no room on the finger
 * @param inspection what was measured on it
 * @param print whether it suits the process it is printed by, and how it lies on the bed
 * @param documents mechanics and bench documents; empty where they were not asked for
 * @param findings cautions about the input, then what making and inspecting found
 * @param timing where the time went so far
 */
public record Product(
    Order order,
    Optional<Orthosis> orthosis,
    Optional<Inspection> inspection,
    Optional<PrintCheck> print,
    Optional<Documents> documents,
    List<Finding> findings,
    Report.Timing timing) {

  public Product {
    findings = List.copyOf(findings);
  }

  /** Whether all that was asked for is made. */
  public boolean ok() {
    return findings.stream().noneMatch(f -> f.severity() == Finding.Severity.REFUSAL);
  }

  /**
   * Whether there is something to write: all of it, or all but a dorsal shell that cannot be made.
   */
  public boolean isMade() {
    return inspection.map(Inspection::ok).orElse(false);
  }

  /** The same product with its documents, and with what they found. */
  Product withDocuments(Documents drawn) {
    Product told = withFindings(drawn.findings());
    return new Product(
        order, orthosis, inspection, print, Optional.of(drawn), told.findings, timing);
  }

  /** The same product with what more was found about it. */
  Product withFindings(List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return new Product(order, orthosis, inspection, print, documents, all, timing);
  }

  /** The same product with what more has taken time. */
  Product withTiming(Report.Timing other) {
    return new Product(order, orthosis, inspection, print, documents, findings, other);
  }
}
