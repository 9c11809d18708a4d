package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;

/** Every kind of error, with its line. */
class InputErrorsTest {

  @TempDir Path directory;

  /** The plain file with one line replaced. */
  private static String with(String line, String replacement) {
    assertThat(OrdersReadTest.PLAIN).contains(line + "\n");
    return OrdersReadTest.PLAIN.replace(
        line + "\n", replacement.isEmpty() ? "" : replacement + "\n");
  }

  private static List<InputError> errors(String yaml, String... overrides) {
    Orders.Result result = Orders.parse(yaml, "demo.yaml", Arrays.asList(overrides));
    assertThat(result.ok()).isEqualTo(result.errors().isEmpty());
    return result.errors();
  }

  private static InputError only(String yaml, String... overrides) {
    List<InputError> errors = errors(yaml, overrides);
    assertThat(errors).hasSize(1);
    return errors.get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "hand: right|hand: rigth|2: hand: rigth is not known; allowed: right or left",
        "digit: ring|digit: thumb|3: digit: thumb has no PIP joint; allowed: index, middle, ring or little",
        "unit: mm|unit: ft|4: unit: ft is not known; allowed: mm, cm or in",
        "  pip: 66|  pip: 660|7: circumference.pip: 660 mm is out of range; allowed: 25 to 120 mm",
        "  pip: 66|  pip: 26 in|7: circumference.pip: 26 in is out of range; allowed: 25 to 120 mm",
        "  pip: 66|  pip: .nan|7: circumference.pip: .nan is not a finite number; allowed: 25 to 120 mm",
        "  pip: 66|  pip: -.INF|7: circumference.pip: -.INF is not a finite number; allowed: 25 to 120 mm",
        "  pip: 66|  pip: 1e999|7: circumference.pip: 1e999 is not a finite number; allowed: 25 to 120 mm",
        "  pip: 66|  pip: 66,5|7: circumference.pip: 66,5 has a comma; write a point; allowed: 25 to 120 mm",
        "  pip: 66|  pip: 3 ells|7: circumference.pip: 3 ells has a unit that is not known; allowed: 25 to 120 mm",
        "  pip: 66|  pip: 2 1/2|7: circumference.pip: 2 1/2 is a fraction, which is for inches; allowed: 25 to 120 mm",
        "  pip: 66|  pip:|7: circumference.pip: has no value; allowed: 25 to 120 mm",
        "  pip: 66|  pip: [66]|7: circumference.pip: is a list, not a length; allowed: 25 to 120 mm",
        "  pip: 66|  pip: {a: 1}|7: circumference.pip: is a section, not a length; allowed: 25 to 120 mm",
        "width: {}|width: 18|15: width: is not a section; allowed under it: web, proximal-phalanx, pip, middle-phalanx, dip, tip",
        "width: {}|wall: 2|15: wall: is not a key; did you mean trough.wall? Allowed here: making, reference, note, hand, digit, unit, circumference, length, width, angle, axis, station, ...",
        "width: {}|trough: {vents: {diametre: 3}}|15: trough.vents.diametre: is not a key; did you mean trough.vents.diameter? Allowed here: diameter, spacing",
        "width: {}|trough.wall: 2|15: trough.wall: is not a key's name; write sections as sections, one level under the other",
        "width: {}|trough: {wrap: half}|15: trough.wrap: half is not a share; allowed: 0.2 to 0.6",
        "width: {}|trough: {wrap: \"0.5\"}|15: trough.wrap: 0.5 is a text in quotes, not a share; allowed: 0.2 to 0.6",
        "width: {}|trough: {wrap: 0.7}|15: trough.wrap: 0.7 is out of range; allowed: 0.2 to 0.6",
        "width: {}|trough: {vents: {diameter: 1}}|15: trough.vents.diameter: 1 mm is out of range; allowed: 0, or 2 to 6 mm",
        "width: {}|trough: {vents: {diameter: 6, spacing: 7}}|15: trough.vents.spacing: 7 mm"
            + " would let the vents run into each other; allowed: a spacing of the diameter"
            + " and 2 mm at least",
        "width: {}|closure: {layers: 2.5}|15: closure.layers: 2.5 is not a whole number; allowed: 1 to 6",
        "width: {}|print: {label: perhaps}|15: print.label: perhaps is neither yes nor no; allowed: yes or no",
        "width: {}|relief: {bubbles: 3}|15: relief.bubbles: 3 is not a list; allowed: a list of 0 to 12 items",
        "width: {}|relief: {bubbles: [3]}|15: relief.bubbles[0]: is not a section; allowed under it: station, girth, height, length, width",
        "width: {}|relief: {bubbles: [{station: 20, girth: 2}]}|15: relief.bubbles[0].height: is missing; allowed: 0 to 3 mm",
        "width: {}|width: {pip: &a 20}|15: width.pip: has an anchor; write plain values only",
        "width: {}|width: {pip: !!int 20}|15: width.pip: has a tag; write plain values only",
        "  pip-extension-deficit: 15|  pip-extension-deficit: 75|17: angle.pip-extension-deficit: 75° is out of range; allowed: 0 to 60°",
        "  tip: 48|  tip: 30|9: circumference.tip: 30 mm beside 56 mm at circumference.middle-phalanx looks like a mix-up; allowed: circumferences of neighbours within 1.6 of each other",
        "  web-to-pip: 24||10: length.web-to-pip: is missing; allowed: 8 to 60 mm",
        "hand: right||0: hand: is missing; allowed: right or left",
        "hand: right|hand: right\\nhand: left|3: hand: is in the file twice, first in line 2;"
            + " allowed: once",
      })
  void namesLineKeyValueAndWhatIsAllowed(String line, String replacement, String expected) {
    // A line's indentation is part of it, and the table above trims.
    String indented = OrdersReadTest.PLAIN.contains("\n  " + line + "\n") ? "  " : "";
    String put = replacement == null ? "" : indented + replacement.replace("\\n", "\n");

    InputError error = only(with(indented + line, put));

    assertThat(error.line() + ": " + error.key() + ": " + error.text()).isEqualTo(expected);
    String place = error.line() == 0 ? "demo.yaml: " : "demo.yaml:" + error.line() + ": ";
    assertThat(error.message()).isEqualTo(place + error.key() + ": " + error.text());
  }

  @Test
  void listsAllErrorsAtOnceInTheOrderOfTheFile() {
    String yaml =
        """
        reference: jane doe
        hand: rigth
        digit: ring
        circumference: {proximal-phalanx: 6, pip: 66, midle-phalanx: 56, tip: 48}
        length: {palmar-crease-to-web: 21, web-to-pip: x, pip-to-dip: 23, dip-to-tip: 24}
        """;

    assertThat(errors(yaml, "trough.wrap=2", "trough=1", "wrap"))
        .extracting(error -> error.file() + ":" + error.line() + " " + error.key())
        .containsExactly(
            "--set:0 trough",
            "--set:0 ",
            "--set:0 trough.wrap",
            "demo.yaml:1 reference",
            "demo.yaml:2 hand",
            "demo.yaml:4 circumference.proximal-phalanx",
            "demo.yaml:4 circumference.midle-phalanx",
            "demo.yaml:4 circumference.middle-phalanx",
            "demo.yaml:5 length.web-to-pip");
  }

  @Test
  void namesAnOverrideInsteadOfALine() {
    assertThat(only(OrdersReadTest.PLAIN, "circumference.pip=660").message())
        .isEqualTo("--set: circumference.pip: 660 mm is out of range; allowed: 25 to 120 mm");
    assertThat(only(OrdersReadTest.PLAIN, "trough.wral=1").message())
        .isEqualTo("--set: trough.wral: is not a key; did you mean trough.wrap?");
    assertThat(only(OrdersReadTest.PLAIN, "relief.bubbles=[").file()).isEqualTo("--set");
  }

  @Test
  void anOverrideMendsWhatTheFileHasWrong() {
    assertThat(errors(with("  pip: 66", "  pip: 660"), "circumference.pip=66")).isEmpty();
  }

  @Test
  void stopsAtWhatIsNotYamlAndNamesTheLine() {
    InputError error = only(with("  pip: 66", "  pip: 66: 7"));

    assertThat(error.line()).isEqualTo(7);
    assertThat(error.text())
        .startsWith("is not YAML from here on: ")
        .endsWith("or lacks the space after its colon");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a: [", "a: {b", "- 1\n- 2", "just words", "42", "[[[[[[[[[[[["})
  void refusesWhatIsNoMapping(String text) {
    assertThat(errors(text)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   \n\n", "# a comment only\n", "---\n...\n"})
  void refusesAnEmptyFile(String text) {
    assertThat(errors(text)).isNotEmpty();
    assertThat(errors(text).get(0).text()).containsAnyOf("empty", "is not a measurement file");
  }

  @Test
  void refusesASecondDocument() {
    assertThat(only(OrdersReadTest.PLAIN + "---\nhand: left\n").text())
        .isEqualTo("holds more than one document; allowed: one");
  }

  @Test
  void refusesAliases() {
    String yaml = with("width: {}", "width: &w {pip: 20}") + "station: *w\n";

    assertThat(errors(yaml)).extracting(InputError::line).contains(15, 18);
  }

  @Test
  void noticesAnotherUnit() {
    String inCentimetres =
        OrdersReadTest.PLAIN
            .replace("62", "6.2")
            .replace("66", "6.6")
            .replace("56", "5.6")
            .replace("48", "4.8");

    assertThat(errors(inCentimetres))
        .extracting(InputError::message)
        .contains(
            "demo.yaml:4: unit: mm does not fit: the circumferences look like cm; "
                + "write unit: cm, or each value with its own unit");
    String inInches = OrdersReadTest.PLAIN.replace("unit: mm", "unit: in");
    assertThat(errors(inInches))
        .filteredOn(error -> error.key().equals("unit"))
        .extracting(InputError::allowed)
        .containsExactly("mm");
  }

  @Test
  void saysRangesInTheUnitOfTheFile() {
    assertThat(errors(Template.text(LengthUnit.IN), "circumference.pip=9").get(0).message())
        .isEqualTo(
            "--set: circumference.pip: 9 in is out of range; "
                + "allowed: 0.984 to 4.72 in (25 to 120 mm)");
  }

  @Test
  void saysWhatAFileIsThatIsNoText() throws Exception {
    Path file = directory.resolve("demo.yaml");
    byte[] plain = OrdersReadTest.PLAIN.getBytes(StandardCharsets.UTF_8);

    Files.write(file, OrdersReadTest.PLAIN.getBytes(StandardCharsets.UTF_16));
    assertThat(read(file)).isEqualTo(":1: is written in UTF-16 or UTF-32; allowed: UTF-8");
    Files.writeString(file, with("hand: right", "hand: right # é"), StandardCharsets.ISO_8859_1);
    assertThat(read(file))
        .isEqualTo(":2: the byte 0xE9 is not UTF-8; allowed: a text saved as UTF-8");
    Files.write(file, Arrays.copyOf(plain, plain.length + 1));
    assertThat(read(file)).contains("the character U+0000 is not allowed in YAML");
    Files.write(file, Arrays.copyOf(plain, (1 << 20) + 1));
    assertThat(read(file)).isEqualTo(": is too large; allowed: at most 1 MiB");
    assertThat(read(directory)).isEqualTo(": is not a file");
    assertThat(read(directory.resolve("none.yaml"))).isEqualTo(": there is no such file");
  }

  @Test
  void takesAByteOrderMarkOfUtf8() throws Exception {
    Path file = directory.resolve("demo.yaml");
    Files.writeString(file, "\uFEFF" + OrdersReadTest.PLAIN);

    assertThat(Orders.read(file, List.of()).errors()).isEmpty();
  }

  private static String read(Path file) {
    List<InputError> errors = Orders.read(file, List.of()).errors();
    assertThat(errors).hasSize(1);
    return errors.get(0).message().substring(file.toString().length());
  }
}
