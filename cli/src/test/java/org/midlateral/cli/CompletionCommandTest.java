package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.cli.line.Parameter;

/** The outside check: bash itself completes what is typed. Left out without bash, save in CI. */
class CompletionCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void writeTheScript() throws IOException {
    Run run = Run.of("completion");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    Files.writeString(folder.resolve("completion.sh"), run.out());
  }

  @Test
  void theShellIsToldWhatToCall() {
    assertThat(Run.of("completion").out())
        .contains("complete -F _complete_midlateral midlateral\n")
        .doesNotContain("{program}", "{cases}");
  }

  /** Typed up to the cursor, word by word; words that are offered. */
  @ParameterizedTest
  @CsvSource({
    "make --set trough.wr, trough.wrap=",
    "batch o --set trough.wr, trough.wrap=",
    "b, batch",
    "help fol, follow-up",
    "make --fo, --force --format",
    "make a.yaml --out b --pa, --parts-only",
    "make --format stl, stl stl-ascii",
    "make --format=stl-, stl-ascii",
    "template --unit '', mm cm in",
    "template --making h, hand",
    "explain pressure-h, pressure-high",
    "make fin, finger one.yaml|finger.yaml",
    "make --out fin, finger one.yaml|finger.yaml",
    "make --out=fin, finger one.yaml|finger.yaml",
    "rigidity --samples '', ''",
    "nothing x, ''",
  })
  void bashCompletesAWord(String typed, String offered) throws Exception {
    Files.writeString(folder.resolve("finger one.yaml"), "");
    Files.writeString(folder.resolve("finger.yaml"), "");
    String apart = offered.contains("|") ? "\\|" : " ";
    assertThat(completed(typed.replace("''", "").split(" ", -1)))
        .containsExactlyInAnyOrder(
            Stream.of(offered.split(apart)).filter(w -> !w.isEmpty()).toArray(String[]::new));
  }

  @Test
  void bashOffersEachCommandAndItsOptions() throws Exception {
    List<String> first = new ArrayList<>(KnownCommand.forms().keySet());
    first.addAll(List.of("help", "--help", "--version"));
    assertThat(completed("")).containsExactlyInAnyOrderElementsOf(first);
    for (KnownCommand command : KnownCommand.values()) {
      List<String> options =
          command.form().parameters().stream()
              .filter(Parameter::isOption)
              .map(Parameter::name)
              .toList();
      assertThat(completed(command.word(), "--")).containsExactlyInAnyOrderElementsOf(options);
    }
  }

  /**
   * What bash offers for the last of these words; it takes them apart at every sign of equality.
   */
  private List<String> completed(String... words) throws IOException, InterruptedException {
    if (System.getenv("CI") == null) {
      assumeTrue(hasBash(), "bash is not installed: this outside check is left out");
    }
    assertThat(hasBash()).as("bash is installed").isTrue();
    List<String> typed = new ArrayList<>(List.of("midlateral"));
    for (String word : words) {
      int equals = word.startsWith("--") ? word.indexOf('=') : -1;
      if (equals < 0) {
        typed.add(word);
      } else {
        typed.addAll(List.of(word.substring(0, equals), "=", word.substring(equals + 1)));
      }
    }
    List<String> line =
        new ArrayList<>(
            List.of(
                "bash",
                "-c",
                "source ./completion.sh || exit 1; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1));"
                    + " _complete_midlateral; printf '%s\\n' \"${COMPREPLY[@]}\"",
                "bash"));
    line.addAll(typed);
    Path said = folder.resolve("said.txt");
    int status =
        new ProcessBuilder(line)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start()
            .waitFor();
    assertThat(status).isZero();
    return Files.readAllLines(said).stream().filter(one -> !one.isEmpty()).toList();
  }

  private static boolean hasBash() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(place -> Files.isExecutable(Path.of(place, "bash")));
  }
}
