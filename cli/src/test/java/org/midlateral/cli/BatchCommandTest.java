package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchCommandTest {
  private static final String HEADER =
      "reference,hand,digit,circumference.proximal-phalanx,circumference.pip,"
          + "circumference.middle-phalanx,circumference.tip,length.palmar-crease-to-web,"
          + "length.web-to-pip,length.pip-to-dip,length.dip-to-tip\n";
  private static final String ROW = "inv-a,right,ring,56,58,50,43,21,24,23,24\n";
  private static final String[] FAST = {
    "--set", "dorsal-shell.make=no", "--set", "print.edge-length=1.2 mm"
  };

  @TempDir Path folder;

  @Test
  void ordersAreMadeInTheFormatsAskedFor() throws IOException {
    Run run = batch(HEADER + ROW, "--format", "glb", "--format", "ply");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).contains("made: 1");
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("out/inv-a/orthosis.glb")).exists();
    assertThat(folder.resolve("out/inv-a/trough.ply")).exists();
    assertThat(folder.resolve("out/inv-a/trough.stl")).doesNotExist();
    assertThat(batch(HEADER + ROW, "--format", "glb", "--format", "ply").err())
        .contains("unchanged: 1");
  }

  @Test
  void aRefusedOrderGivesStatusThree() throws IOException {
    Run run = batch(HEADER + ROW + ROW.replace("inv-a", "inv-b").replace("58", "580"));
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("orders.csv:3: circumference.pip").contains("made: 1, wrong: 1");
  }

  /** What is wrong for every order is told once, before the first is made. */
  @ParameterizedTest
  @CsvSource({
    "foo=1, foo: is not a key",
    "material.name=wood, material.name: wood",
    "trough.wall=999 mm, trough.wall: 999",
    "trough.wall, KEY=VALUE",
    "relief.height=thick, relief.height"
  })
  void aWrongOverrideIsToldOnceAndNothingIsMade(String override, String told) throws IOException {
    Run run = batch(HEADER + ROW + ROW.replace("inv-a", "inv-b"), "--set", override);
    assertThat(run.status()).as(run.err()).isEqualTo(2);
    assertThat(run.err()).containsOnlyOnce(told).contains("--set");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  /** 0.06 is a thickness in inches, which the rows state, and none in millimetres. */
  @Test
  void aLengthInAnOverrideIsInTheUnitOfItsRow() throws IOException {
    String inches = "inv-a,right,ring,in,2.2,2.28,1.97,1.69,0.83,0.94,0.9,0.94\n";
    String header = HEADER.replace("digit,", "digit,unit,");
    Run run = batch(header + inches, "--set", "trough.wall=0.06");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(batch(HEADER + ROW, "--set", "trough.wall=0.06").status()).isEqualTo(3);
  }

  @Test
  void whatBecameOfEachOrderIsJsonToo() throws IOException {
    String broken = ROW.replace("inv-a", "inv-b").replace("58", "580");
    Run run = batch(HEADER + ROW + broken, "--json");
    assertThat(run.status()).isEqualTo(3);
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json.get("orders")).hasSize(2);
    assertThat(json.at("/orders/0/folder").asText()).isEqualTo("inv-a");
    assertThat(json.at("/orders/1/reference").asText()).isEqualTo("inv-b");
    assertThat(json.at("/orders/1/text").asText()).contains("circumference.pip");
    assertThat(json.at("/counts/made").asInt()).isEqualTo(1);
    assertThat(json.get("ok").asBoolean()).isFalse();
    JsonNode wrong =
        new ObjectMapper().readTree(batch(HEADER + ROW, "--json", "--set", "foo=1").out());
    assertThat(wrong.get("ok").asBoolean()).isFalse();
  }

  @Test
  void cautionsAreToldWithThePlaceToReadThem() throws IOException {
    Run run = batch(HEADER + ROW + ROW.replace("inv-a", "inv-b"), "--set", "trough.wrap=0.36");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).contains("with cautions: 2").contains("batch-report.csv");
    assertThat(batch(HEADER + ROW).err()).doesNotContain("with cautions");
  }

  /** Its process goes before the default; a slip in it is told before anything is made. */
  @Test
  void aMachinesProfileIsForAllOrders() throws IOException {
    Path profile = folder.resolve("machine.yaml");
    Files.writeString(
        profile, "name: one\nprocess: filament\nbed: {width: 90, depth: 90, height: 20}\n");
    String[] more = {"--machine", profile.toString(), "--set", "material.name=petg"};
    assertThat(batch(HEADER + ROW, more).status()).isZero();
    String record = Files.readString(folder.resolve("out/inv-a/record.json"));
    assertThat(record)
        .contains("\"machine.name\" : \"one\"", "\"print.process\" : \"filament\"", "has room for");
    Files.writeString(profile, "name: one\nprocess: filamnt\n");
    Run wrong = batch(HEADER + ROW, more);
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("machine.yaml:2: process: filamnt is not allowed");
  }

  /** Stopped, it ends as done; what it watches for is {@code SourceWatch}'s. */
  @Test
  void aWatchGoesOnUntilItIsStopped() throws Exception {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, HEADER + ROW);
    Run[] run = new Run[1];
    Thread watching =
        new Thread(
            () ->
                run[0] =
                    Run.of(
                        "batch",
                        file.toString(),
                        "--out",
                        folder.resolve("out").toString(),
                        "--watch",
                        "--set",
                        "dorsal-shell.make=no"));
    watching.start();
    while (!Files.exists(folder.resolve("out/batch-report.csv"))) {
      Thread.sleep(50);
    }
    Thread.sleep(200);
    watching.interrupt();
    watching.join();
    assertThat(run[0].status()).as(run[0].err()).isZero();
    assertThat(run[0].err()).contains("made: 1", "watching " + file);
    assertThat(Run.of("batch", file.toString(), "--out", "o", "--watch", "--json").status())
        .isEqualTo(2);
  }

  @Test
  void anUnreadableSourceGivesStatusTwo() throws IOException {
    assertThat(batch("reference,hnad\n").err()).contains("\"hnad\" is not a key", "hand");
    assertThat(batch("reference,hnad\n").status()).isEqualTo(2);
    Run missing = Run.of("batch", "none.csv", "--out", folder.toString());
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err()).contains("none.csv");
    assertThat(batch(HEADER + ROW, "--format", "step").status()).isEqualTo(2);
    assertThat(batch(HEADER + ROW, "--format", "step").err()).contains("stl-ascii");
  }

  @Test
  void aFileInPlaceOfTheFolderGivesStatusTwo() throws IOException {
    Files.writeString(folder.resolve("out"), "");
    Run run = batch(HEADER + ROW);
    assertThat(run.status()).as(run.err()).isEqualTo(2);
    assertThat(run.err()).contains("out");
  }

  private Run batch(String table, String... more) throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, table);
    String[] arguments = new String[4 + FAST.length + more.length];
    arguments[0] = "batch";
    arguments[1] = file.toString();
    arguments[2] = "--out";
    arguments[3] = folder.resolve("out").toString();
    System.arraycopy(FAST, 0, arguments, 4, FAST.length);
    System.arraycopy(more, 0, arguments, 4 + FAST.length, more.length);
    return Run.of(arguments);
  }
}
