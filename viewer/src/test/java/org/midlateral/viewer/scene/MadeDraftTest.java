package org.midlateral.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;

class MadeDraftTest {
  @Test
  void aDefectIsAFindingThatNamesItsFile() throws Exception {
    Order order =
        Orders.read(Path.of("../samples/slim-little.yaml"), List.of("reference=inv-a")).order();

    Finding finding = MadeDraft.defect(new IllegalStateException("for inv-a"), order);

    assertThat(finding.severity()).isEqualTo(Finding.Severity.REFUSAL);
    assertThat(finding.text())
        .startsWith("This design met a defect of the program (java.lang.IllegalStateException:");
    Path file = Path.of(finding.text().replaceAll(".*please report it with (.*)\\.", "$1"));
    assertThat(Files.readString(file))
        .contains("at org.midlateral.viewer.scene.MadeDraftTest.", "# Command: midlateral view\n")
        .contains("circumference:\n  proximal-phalanx:")
        .doesNotContain("inv-a");
    Files.delete(file);
  }
}
