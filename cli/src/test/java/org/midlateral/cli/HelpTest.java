package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.WrongCommandLine;

/** What stands in the help can be typed as it stands. */
class HelpTest {
  /** Columns of the narrowest usual terminal. */
  private static final int WIDTH = 80;

  /** A row of the help that begins with an option. */
  private static final Pattern OPTION = Pattern.compile("^  (?:-\\w,|   ) (--[a-z-]+)");

  static Stream<String> commands() {
    return KnownCommand.forms().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void eachCommandEndsWithTwoExamplesThatParse(String command) throws WrongCommandLine {
    String help = Run.of(command, "--help").out();
    List<String> examples =
        help.substring(help.indexOf("Examples:"))
            .lines()
            .skip(1)
            .map(String::strip)
            .filter(example -> !example.isEmpty())
            .toList();
    assertThat(examples).hasSize(2).allMatch(e -> e.startsWith("midlateral " + command));
    for (String example : examples) {
      String[] words = example.replaceFirst(" [|>] .*", "").split(" ");
      assertThat(Run.read(Arrays.copyOfRange(words, 1, words.length)).word()).isEqualTo(command);
    }
  }

  /** The help names each command, and only by its name it is asked for. */
  @ParameterizedTest
  @MethodSource("commands")
  void eachCommandIsMadeByItsOwnName(String command) {
    assertThat(Run.of("--help").out()).contains("\n  " + command + " ");
    assertThat(Run.of(command, "--help").out()).startsWith("Usage: midlateral " + command + " [");
    assertThat(Run.of(command.toUpperCase(Locale.ROOT)).err())
        .startsWith("midlateral: there is no command '");
  }

  /** Each option of a command is told in its help, once, in the order of the alphabet. */
  @ParameterizedTest
  @MethodSource("commands")
  void theHelpTellsEachOption(String command) {
    List<String> told =
        Run.of(command, "--help")
            .out()
            .lines()
            .map(OPTION::matcher)
            .filter(Matcher::find)
            .map(found -> found.group(1))
            .toList();
    List<String> declared =
        KnownCommand.forms().get(command).parameters().stream()
            .filter(Parameter::isOption)
            .map(Parameter::name)
            .sorted()
            .toList();
    assertThat(told).isEqualTo(declared).contains("--help", "--version");
    assertThat(Run.of(command, "--help").out()).doesNotContain(Parameter.WORDS);
  }

  /** No line is broken by hand within a sentence, and none is wider than the terminal. */
  @ParameterizedTest
  @MethodSource("commands")
  void theHelpFitsATerminal(String command) {
    assertThat(Run.of(command, "--help").out().lines()).allMatch(l -> l.length() <= WIDTH);
    List<String> told = KnownCommand.forms().get(command).told();
    assertThat(told)
        .isNotEmpty()
        .allMatch(paragraph -> paragraph.endsWith(".") || paragraph.contains("<("));
    assertThat(told.get(0).length()).isLessThan(WIDTH);
  }

  @Test
  void helpMayStandBeforeACommand() {
    assertThat(Run.of("help", "make")).isEqualTo(Run.of("make", "--help"));
    assertThat(Run.of("help").out()).isEqualTo(Run.of("--help").out()).contains("explain");
    assertThat(Run.of("help", "mkae")).isEqualTo(Run.of("--help"));
    assertThat(Run.of("--help").out().lines()).allMatch(l -> l.length() <= WIDTH);
  }

  /** What is wrong in the line, and which help to ask for. */
  @ParameterizedTest
  @CsvSource({
    "mkae finger.yaml, midlateral, there is no command 'mkae'",
    "mkae make, midlateral, there is no command 'mkae'",
    "--make, midlateral, there is no option '--make'",
    "make, midlateral make, FILE and --out DIR must be given",
    "make finger.yaml --out, midlateral make, --out DIR must be given",
    "make finger.yaml --out out --unit, midlateral make, there is no option '--unit'",
    "check my finger.yaml, midlateral check, 'finger.yaml' is one word too many",
    "rigidity a --samples x, midlateral rigidity, --samples: 'x' is not a whole number",
    "rigidity a --samples 99999999999, midlateral rigidity, --samples: '99999999999' is too large",
    "rigidity a --within x, midlateral rigidity, --within: 'x' is not a number",
    "rigidity a --wrap 0.3:x, midlateral rigidity, --wrap: '0.3:x' is not a number",
    "template --out a --unit ell, midlateral template, '--unit: ''ell'' is none of mm, cm, in'",
    "make a --out b --format pdf, midlateral make, --format: 'pdf' is no format",
    "make a --out b --force=no, midlateral make, '--force takes no value, and ''no'' is one'",
  })
  void aWrongLineIsToldInPlainWords(String line, String command, String said) {
    Run run = Run.of(line.split(" "));
    assertThat(run.status()).isEqualTo(ExitStatus.WRONG_INPUT.code());
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith(command + ": " + said)
        .endsWith("Try: " + command + " --help\n");
    assertThat(run.err().lines()).hasSize(2);
  }

  @Test
  void aloneItGreetsAndTellsTheNextStep() throws WrongCommandLine {
    Run run = Run.of();
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    List<String> steps =
        run.out().lines().filter(l -> l.startsWith("  midlateral ")).map(String::strip).toList();
    assertThat(steps).hasSize(4);
    for (String step : steps) {
      String[] words = step.split(" {2,}")[0].split(" ");
      assertThat(step).contains(Run.read(Arrays.copyOfRange(words, 1, words.length)).word());
    }
  }
}
