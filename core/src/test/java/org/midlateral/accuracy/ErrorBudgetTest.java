package org.midlateral.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The numbers beside G1 to G12 in the developers' notes, and the shares among themselves. */
class ErrorBudgetTest {
  private static final Pattern NUMBER =
      Pattern.compile("`([A-Z_]+)` (\\d+(?:\\.\\d+)?(?:e-\\d+)?)");

  @Test
  void theNotesGiveEveryNumberAsItIs() throws Exception {
    String notes = Files.readString(Path.of("../DEVELOPERS.md"));
    String checks = notes.split("## The checks\n")[1].split("\n## ")[0];
    Map<String, Double> told = new TreeMap<>();
    for (MatchResult number : NUMBER.matcher(checks).results().toList()) {
      double value = Double.parseDouble(number.group(2));
      assertThat(told.put(number.group(1), value)).as(number.group(1)).isNull();
    }
    Map<String, Double> numbers = new TreeMap<>();
    for (Field field : ErrorBudget.class.getFields()) {
      numbers.put(field.getName(), field.getDouble(null));
    }

    assertThat(told).isEqualTo(numbers);
  }

  @Test
  void everyInvariantHasItsLineInTheNotes() throws Exception {
    String notes = Files.readString(Path.of("../DEVELOPERS.md"));

    for (int i = 1; i <= 12; i++) {
      assertThat(notes.split("\n\\| G" + i + " \\|", -1)).as("G%d", i).hasSize(2);
    }
  }

  @Test
  void everyShareIsLessThanTheWhole() {
    assertThat(
            Stream.of(
                ErrorBudget.CHORD_OF_FACES,
                ErrorBudget.CHORD_OF_EVEN_TRIANGLES,
                ErrorBudget.CHORD_OF_EDGES,
                ErrorBudget.CHORD_ALONG_RIM,
                ErrorBudget.CHORD_ROUND_RIM))
        .allMatch(share -> share < ErrorBudget.CHORD);
    assertThat(ErrorBudget.CHORD_OF_EDGES_AT_FIRST).isLessThan(ErrorBudget.CHORD_OF_EDGES);
  }
}
