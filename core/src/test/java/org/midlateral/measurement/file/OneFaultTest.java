package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.InputError;

/** One fault is told once, and where it is. */
class OneFaultTest {
  private static final List<String> PLAIN =
      List.of(
          "reference: demo-7",
          "hand: right",
          "digit: ring",
          "unit: mm",
          "circumference:",
          "  proximal-phalanx: 62",
          "  pip: 66",
          "  middle-phalanx: 56",
          "  tip: 48",
          "# lengths follow",
          "length: {palmar-crease-to-web: 21, web-to-pip: 24, pip-to-dip: 23, dip-to-tip: 24}");

  private static List<InputError> errors(int line, String instead) {
    List<String> lines = new ArrayList<>(PLAIN);
    lines.set(line - 1, instead);
    return Orders.parse(String.join("\n", lines) + "\n", "file", List.of()).errors();
  }

  @Test
  void thePlainFileIsInOrder() {
    assertThat(errors(1, PLAIN.get(0))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 reference demo-7",
        "2 hand right",
        "3 digit: \"ring",
        "3 digit: 'ring",
        "5 circumference",
        "6   proximal-phalanx 62",
        "7   pip: 66: 67",
        "8   middle-phalanx: [56",
        "9   tip: {48",
        "11 length: {palmar-crease-to-web: 21, web-to-pip: 24",
      })
  void aFaultOfTheFormIsToldAtItsLine(String fault) {
    int line = Integer.parseInt(fault.substring(0, fault.indexOf(' ')));
    List<InputError> errors = errors(line, fault.substring(fault.indexOf(' ') + 1));
    assertThat(errors)
        .filteredOn(e -> e.text().contains("not YAML"))
        .extracting(InputError::line)
        .containsExactly(line);
  }

  /** In JSON a comma is missed where the line ends. */
  @Test
  void aMissingCommaIsToldAtTheEndOfItsLine() {
    String text = "{\n  \"hand\": \"right\",\n  \"digit\": \"ring\"\n  \"unit\": \"mm\"\n}\n";
    assertThat(Orders.parse(text, "file", List.of()).errors())
        .filteredOn(e -> e.text().contains("not YAML"))
        .extracting(InputError::line)
        .containsExactly(3);
  }

  /** Lengths that do not fit it are not told one by one. */
  @ParameterizedTest
  @ValueSource(strings = {"unit: cm", "unit: in", "unit: metres"})
  void aWrongUnitIsToldOnce(String unit) {
    assertThat(errors(4, unit)).singleElement().extracting(InputError::key).isEqualTo("unit");
  }

  /** What else is wrong comes after it, though it stands above. */
  @Test
  void aWrongUnitIsToldFirst() {
    List<String> lines = new ArrayList<>(PLAIN);
    lines.set(1, "hand: both");
    lines.set(3, "unit: cm");
    List<InputError> errors =
        Orders.parse(String.join("\n", lines) + "\n", "file", List.of()).errors();
    assertThat(errors).extracting(InputError::key).containsExactly("unit", "hand");
  }
}
