package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What stands in the help can be typed as it stands. */
class HelpTest {
  /** Columns of the narrowest usual terminal. */
  private static final int WIDTH = 80;

  private static CommandLine line() {
    return Main.line(StandardStreams.ofProcess());
  }

  static Stream<String> commands() {
    return line().getSubcommands().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void eachCommandEndsWithTwoExamplesThatParse(String command) {
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
      CommandLine.ParseResult parsed = line().parseArgs(Arrays.copyOfRange(words, 1, words.length));
      assertThat(parsed.subcommand().commandSpec().name()).isEqualTo(command);
    }
  }

  /** Where a word is a command it alone is made; it must be the one that is meant. */
  @Test
  void eachCommandIsMadeByItsOwnName() {
    Main.commands(StandardStreams.ofProcess())
        .forEach(
            (name, maker) ->
                assertThat(new CommandLine(maker.get()).getCommandName()).isEqualTo(name));
  }

  /** No line is broken by hand within a sentence, and none is wider than the terminal. */
  @ParameterizedTest
  @MethodSource("commands")
  void theHelpFitsATerminal(String command) {
    assertThat(Run.of(command, "--help").out().lines()).allMatch(l -> l.length() <= WIDTH);
    String[] told =
        line().getSubcommands().get(command).getCommandSpec().usageMessage().description();
    assertThat(told).allMatch(paragraph -> paragraph.endsWith(".") || paragraph.contains("<("));
    assertThat(told[0].length()).isLessThan(WIDTH);
  }

  @Test
  void helpMayStandBeforeACommand() {
    assertThat(Run.of("help", "make")).isEqualTo(Run.of("make", "--help"));
    assertThat(Run.of("help").out()).isEqualTo(Run.of("--help").out()).contains("explain");
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
  void aloneItGreetsAndTellsTheNextStep() {
    Run run = Run.of();
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    List<String> steps =
        run.out().lines().filter(l -> l.startsWith("  midlateral ")).map(String::strip).toList();
    assertThat(steps).hasSize(4);
    for (String step : steps) {
      String[] words = step.split(" {2,}")[0].split(" ");
      assertThat(line().parseArgs(Arrays.copyOfRange(words, 1, words.length)).hasSubcommand())
          .isTrue();
    }
  }
}
