package org.midlateral.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;

class DefectLineTest {
  @Test
  void whatNobodyCaughtIsToldInALineThatNamesAFile() throws Exception {
    Order shown = Orders.read(Path.of("../samples/slim-little.yaml"), List.of()).order();
    ByteArrayOutputStream said = new ByteArrayOutputStream();

    Viewer.defect(
        new StackOverflowError(),
        Optional.of(shown),
        new PrintStream(said, true, StandardCharsets.UTF_8));

    String line = said.toString(StandardCharsets.UTF_8);
    assertThat(line.lines()).hasSize(1);
    assertThat(line)
        .startsWith("midlateral: a defect of this program, please report it with ")
        .contains(": StackOverflowError at org.midlateral.viewer.DefectLineTest.");
    Path file = Path.of(line.replaceAll("(?s).*report it with (.*\\.txt): .*", "$1"));
    assertThat(Files.readString(file))
        .contains("# java.lang.StackOverflowError\n", "circumference:")
        .doesNotContain(shown.measurements().reference());
    Files.delete(file);
  }
}
