package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.MessageGuide;
import org.midlateral.measurement.MessageGuide.GuideSection;

/** Each message says where it is explained, and is explained there. */
class ExplainCommandTest {
  private static final Path ROOT = Path.of("..");

  /** Where a finding is made, its code in quotes. */
  private static final Pattern MADE =
      Pattern.compile("\\b(?:note|caution|refusal)\\(\\s*\"([a-z][a-z-]*)\",");

  /** Codes of all findings that the sources make; {@code input} is that of an input's errors. */
  private static Set<String> made() throws IOException {
    Set<String> codes = new TreeSet<>(List.of(MessageGuide.INPUT));
    for (String module : List.of("core", "cli", "viewer")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          MADE.matcher(Files.readString(file)).results().forEach(m -> codes.add(m.group(1)));
        }
      }
    }
    return codes;
  }

  @Test
  void everyCodeHasOneSectionAndNoSectionACodeThatIsNotMade() throws IOException {
    List<String> explained =
        MessageGuide.sections().stream().flatMap(section -> section.codes().stream()).toList();

    assertThat(made()).hasSizeGreaterThan(50);
    assertThat(explained).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(made());
    for (GuideSection section : MessageGuide.sections()) {
      assertThat(String.join(" ", section.paragraphs())).as(section.title()).hasSizeGreaterThan(80);
    }
  }

  /** The page that is read and the page that is asked are one. */
  @Test
  void eachSectionIsAHeadingOfThePage() throws IOException {
    String page = Files.readString(ROOT.resolve("samples/walk-through/messages.md"));
    for (GuideSection section : MessageGuide.sections()) {
      assertThat(page).contains("\n## " + section.title() + "\n");
    }
  }

  @Test
  void aSectionIsToldWithinATerminal() {
    for (String code : MessageGuide.sections().stream().flatMap(s -> s.codes().stream()).toList()) {
      Run run = Run.of("explain", code);
      assertThat(run.status()).isZero();
      assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
      assertThat(run.out()).startsWith(MessageGuide.of(code).orElseThrow().title() + "\n\n");
      assertThat(run.out()).doesNotContain("](", "Codes:");
    }
  }

  @Test
  void withoutACodeAllAreListed() throws IOException {
    Run run = Run.of("explain");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains(made());
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void aCodeThatNoMessageHasIsRefused() {
    Run run = Run.of("explain", "presure");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("no message has the code presure; allowed: ");
  }

  @Test
  void eachMessageEndsWithWhereItIsExplained() {
    String sample = ROOT.resolve("samples/bulbous-ring.yaml").toString();
    Run refused = Run.of("check", sample, "--set", "trough.proximal-margin=15");
    assertThat(refused.err().lines().filter(line -> line.matches("(note|caution|refusal): .*")))
        .isNotEmpty()
        .allMatch(line -> line.matches(".*\\. \\(midlateral explain [a-z-]+\\)"));

    Run wrong = Run.of("check", sample, "--set", "circumference.pip=660");
    assertThat(wrong.err().lines().toList())
        .last()
        .isEqualTo("To read more: midlateral explain input");
  }
}
