package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.PrintProcess;

class MachineFileTest {
  private static final Path SAMPLE = Path.of("..", "samples", "machines", "filament-220.yaml");
  private static final String LEAST =
      "name: one\nprocess: resin\nbed: {width: 120, depth: 70, height: 150}\n";

  @TempDir Path folder;

  private MachineFile.ReadMachine read(String text) throws IOException {
    return MachineFile.read(Files.writeString(folder.resolve("machine.yaml"), text));
  }

  @Test
  void theSampleIsRead() {
    Machine machine = MachineFile.read(SAMPLE).machine().orElseThrow();
    assertThat(machine.name()).isEqualTo("filament-220");
    assertThat(machine.limits().leastGap()).isEqualTo(0.25);
    assertThat(machine.limits().sources())
        .containsEntry("least-gap", "the profile of filament-220");
    assertThat(machine.bed()).isEqualTo(new Machine.Bed(220, 220, 250));
    // A part of 100 mm that shrinks by 0.2 % is 100.2004 mm in its file.
    assertThat(100 * machine.enlargement()).isCloseTo(100.2004, within(1e-4));
  }

  @Test
  void whatItLeavesOutIsTheProcesssOwn() throws IOException {
    Machine machine = read(LEAST).machine().orElseThrow();
    PrintProcess resin =
        PrintProcess.all().stream().filter(p -> p.name().equals("resin")).findFirst().orElseThrow();
    assertThat(machine.limits()).isEqualTo(withSources(machine, resin));
    assertThat(machine.limits().upright()).isEqualTo(PrintProcess.ANY_POSE);
    assertThat(read(LEAST + "poses: lying\n").machine().orElseThrow().limits().upright())
        .isLessThan(45);
  }

  private static PrintProcess withSources(Machine machine, PrintProcess usual) {
    return new PrintProcess(
        usual.name(),
        usual.title(),
        usual.leastWall(),
        usual.leastGap(),
        usual.usualGap(),
        usual.overhang(),
        usual.supports(),
        usual.stands(),
        usual.upright(),
        machine.limits().sources());
  }

  @Test
  void aPartIsHeldEitherWayRound() throws IOException {
    Machine machine = read(LEAST + "margin: 5\n").machine().orElseThrow();
    assertThat(machine.holds(60, 110, 150)).isTrue();
    assertThat(machine.holds(110, 60, 150)).isTrue();
    assertThat(machine.holds(61, 61, 10)).isFalse();
    assertThat(machine.holds(10, 10, 151)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "'nozle: 0.4', nozle, is not a key",
    "'nozzle: 9', nozzle, '0.1 to 2 mm'",
    "'nozzle: thin', nozzle, '0.1 to 2 mm'",
    "'supports: maybe', supports, 'yes, no'",
    "'shrinkage: -1', shrinkage, '0 to 5 percent'",
    "'overhang: [45]', overhang, '10 to 89'"
  })
  void aSlipIsToldWithFileLineKeyAndWhatIsAllowed(String line, String key, String told)
      throws IOException {
    MachineFile.ReadMachine read = read(LEAST + line + "\n");
    assertThat(read.machine()).isEmpty();
    assertThat(read.errors()).hasSize(1);
    assertThat(read.errors().get(0).message()).contains("machine.yaml:4: " + key + ": ", told);
  }

  @Test
  void everyMissingKeyIsToldAtOnce() throws IOException {
    assertThat(read("name: one\n").errors())
        .extracting(error -> error.key())
        .containsExactly("process", "bed.width", "bed.depth", "bed.height");
    assertThat(MachineFile.read(folder.resolve("none.yaml")).errors()).hasSize(1);
  }
}
