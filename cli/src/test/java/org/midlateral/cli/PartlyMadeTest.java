package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The trough is not withheld for a shell that cannot be made, and all commands say the same. */
class PartlyMadeTest {
  private static final String SAMPLE = Path.of("..", "samples", "slim-little.yaml").toString();

  /** Longer than there is room for. */
  private static final String[] TOO_LONG = {
    "--set", "dorsal-shell.length=60", "--set", "print.edge-length=1.2 mm"
  };

  private static final String MISSING =
      "The dorsal shell is missing. The trough is made without it, and the elastic wrap closes"
          + " it.";

  @TempDir Path folder;

  private static Run run(String command, List<String> more) {
    List<String> all = new ArrayList<>(List.of(command, SAMPLE));
    all.addAll(more);
    all.addAll(List.of(TOO_LONG));
    return Run.of(all.toArray(String[]::new));
  }

  private Run make(String to, String... more) {
    List<String> all = new ArrayList<>(List.of("--out", folder.resolve(to).toString()));
    all.addAll(List.of(more));
    return run("make", all);
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  private List<String> names(String in) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(in))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void allButTheShellIsWritten() throws IOException {
    Run run = make("part");

    assertThat(run.status()).as(run.err()).isEqualTo(3);
    assertThat(run.err()).startsWith("refusal: " + MISSING);
    assertThat(run.err()).endsWith("part: written, without the dorsal shell\n");
    assertThat(names("part"))
        .containsExactly(
            "bench-sheet.pdf",
            "orthosis.3mf",
            "patient-page.pdf",
            "pattern-2.svg",
            "pattern.dxf",
            "pattern.pdf",
            "pattern.svg",
            "record.json",
            "record.pdf",
            "report.json",
            "rigidity.svg",
            "trough.stl");
    JsonNode report = json(Files.readString(folder.resolve("part/report.json")));
    assertThat(report.get("ok").booleanValue()).isFalse();
    assertThat(report.at("/findings/0/level").textValue()).isEqualTo("refusal");
    assertThat(report.at("/findings/0/code").textValue()).isEqualTo("dorsal-shell-length");
    assertThat(report.at("/findings/0/text").textValue()).startsWith(MISSING);
    assertThat(report.get("parts").fieldNames()).toIterable().containsExactly("trough");
    assertThat(report.at("/support/moment").doubleValue()).isPositive();
    assertThat(report.at("/closure/kind").textValue()).isEqualTo("wrap");
  }

  /** But for the finding it is the order of a trough alone, to the byte. */
  @Test
  void itIsTheTroughAlone() throws IOException {
    make("part", "--reproducible");
    Run alone =
        Run.of(
            "make",
            SAMPLE,
            "--reproducible",
            "--out",
            folder.resolve("alone").toString(),
            "--set",
            "dorsal-shell.make=no",
            "--set",
            "print.edge-length=1.2 mm");

    assertThat(alone.status()).as(alone.err()).isZero();
    assertThat(names("part")).isEqualTo(names("alone"));
    for (String name : List.of("trough.stl", "orthosis.3mf", "pattern.dxf", "rigidity.svg")) {
      assertThat(folder.resolve("part/" + name))
          .hasSameBinaryContentAs(folder.resolve("alone/" + name));
    }
  }

  @Test
  void checkMakeRigidityAndBatchSayTheSame() throws IOException {
    Run made = make("part", "--parts-only", "--json");
    String told = json(made.out()).at("/findings/0/text").textValue();
    Run checked = run("check", List.of("--json"));
    Run compared = run("rigidity", List.of("--json"));
    Files.copy(Path.of(SAMPLE), Files.createDirectory(folder.resolve("in")).resolve("a.yaml"));
    List<String> batch = new ArrayList<>();
    batch.addAll(List.of("batch", folder.resolve("in").toString(), "--json"));
    batch.addAll(List.of("--out", folder.resolve("all").toString()));
    batch.addAll(List.of(TOO_LONG));
    Run many = Run.of(batch.toArray(String[]::new));

    assertThat(made.status()).isEqualTo(3);
    assertThat(checked.status()).isEqualTo(3);
    assertThat(json(checked.out()).get("ok").booleanValue()).isFalse();
    assertThat(json(checked.out()).at("/findings/0/text").textValue()).isEqualTo(told);
    assertThat(json(checked.out()).at("/findings/0/remedies"))
        .isEqualTo(json(made.out()).at("/findings/0/remedies"));
    assertThat(compared.status()).isEqualTo(3);
    assertThat(json(compared.out()).get("ok").booleanValue()).isFalse();
    assertThat(json(compared.out()).at("/findings/0/text").textValue()).startsWith(MISSING);
    assertThat(json(compared.out()).at("/support/moment").doubleValue()).isPositive();
    assertThat(many.status()).isEqualTo(3);
    assertThat(json(many.out()).at("/orders/0/state").textValue()).isEqualTo("partly");
    assertThat(json(many.out()).at("/orders/0/text").textValue()).startsWith(told);
    assertThat(json(many.out()).get("ok").booleanValue()).isFalse();
  }

  /** A shell of an earlier making would pass for the one that is missing. */
  @Test
  void aShellOfAnEarlierRunIsTold() throws IOException {
    Path stale = Files.createDirectories(folder.resolve("part")).resolve("dorsal-shell.stl");
    Files.writeString(stale, "of another finger");

    assertThat(make("part", "--parts-only", "--quiet").err())
        .endsWith("caution: " + stale + " is left from another run; delete it or move it away.\n");
  }

  /** What is advised is tried: the file with it is made. */
  @Test
  void whatIsAdvisedPasses() throws IOException {
    JsonNode remedies = json(run("check", List.of("--json")).out()).at("/findings/0/remedies");

    assertThat(remedies).hasSizeBetween(2, 3);
    for (JsonNode remedy : remedies) {
      String set = remedy.get("key").textValue() + "=" + remedy.get("value").textValue();
      List<String> changed = new ArrayList<>(List.of("check", SAMPLE));
      for (String entry : List.of(TOO_LONG)) {
        String sameKey = remedy.get("key").textValue() + "=";
        changed.add(entry.startsWith(sameKey) ? set : entry);
      }
      if (!changed.contains(set)) {
        changed.addAll(List.of("--set", set));
      }
      assertThat(Run.of(changed.toArray(String[]::new)).status()).as(set).isZero();
    }
    assertThat(remedies.get(0).get("key").textValue()).isEqualTo("dorsal-shell.length");
  }
}
