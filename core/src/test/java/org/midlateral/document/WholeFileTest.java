package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  @Test
  void fileStandsWholeUnderItsNameAndNothingBesideIt() throws IOException {
    Path file = folder.resolve("a.txt");
    WholeFile.write(
        file,
        out -> {
          out.write("first, ".getBytes(StandardCharsets.UTF_8));
          out.flush();
          assertThat(file).doesNotExist();
          assertThat(names()).hasSize(1).allMatch(name -> name.startsWith(".a.txt."));
          out.write("then the rest".getBytes(StandardCharsets.UTF_8));
        },
        false);
    assertThat(file).hasContent("first, then the rest");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void existingFileIsReplacedOnlyByForce() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    FileProblem problem = problem(() -> WholeFile.write(file, text("new"), false));
    assertThat(problem.kind()).isEqualTo(FileProblem.Kind.EXISTS);
    assertThat(problem.path()).isEqualTo(file);
    assertThat(problem).hasMessage(file + " exists already and is not replaced unless asked for.");
    assertThat(file).hasContent("old");
    WholeFile.write(file, text("new"), true);
    assertThat(file).hasContent("new");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void fileThatAppearsWhileWritingIsNotReplaced() throws IOException {
    Path first = folder.resolve("a.txt");
    Path second = folder.resolve("b.txt");
    Map<Path, Content> files = new LinkedHashMap<>();
    files.put(first, text("ours"));
    files.put(
        second,
        out -> {
          out.write('x');
          Files.writeString(second, "somebody else's");
        });
    FileProblem problem = problem(() -> WholeFile.writeAll(files, false));
    assertThat(problem.kind()).isEqualTo(FileProblem.Kind.EXISTS);
    assertThat(second).hasContent("somebody else's");
    assertThat(names()).containsExactly("b.txt");
  }

  @Test
  void oneTakenNameKeepsAllFromBeingWritten() throws IOException {
    Files.writeString(folder.resolve("c.txt"), "old");
    AtomicInteger asked = new AtomicInteger();
    Map<Path, Content> files = new LinkedHashMap<>();
    for (String name : List.of("a.txt", "b.txt", "c.txt")) {
      files.put(folder.resolve(name), out -> asked.incrementAndGet());
    }
    assertThat(problem(() -> WholeFile.writeAll(files, false)).path())
        .isEqualTo(folder.resolve("c.txt"));
    assertThat(asked).hasValue(0);
    assertThat(names()).containsExactly("c.txt");
  }

  @Test
  void aWriterThatFailsLeavesNothing() throws IOException {
    Map<Path, Content> files = new LinkedHashMap<>();
    files.put(folder.resolve("a.txt"), text("fine"));
    files.put(
        folder.resolve("b.txt"),
        out -> {
          out.write('x');
          throw new IllegalStateException("no more");
        });
    assertThatThrownBy(() -> WholeFile.writeAll(files, false)).hasMessage("no more");
    assertThat(names()).isEmpty();
    FileProblem problem =
        problem(() -> WholeFile.write(folder.resolve("c.txt"), WholeFileTest::full, false));
    assertThat(problem.kind()).isEqualTo(FileProblem.Kind.FULL);
    assertThat(problem).hasMessageContaining("c.txt").hasMessageContaining("disk is full");
    assertThat(names()).isEmpty();
  }

  @Test
  void aWriterThatFailsLeavesTheOldFileEvenWithForce() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    assertThat(problem(() -> WholeFile.write(file, WholeFileTest::full, true)).path())
        .isEqualTo(file);
    assertThat(file).hasContent("old");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void missingFolderIsNamed() {
    Path file = folder.resolve("nowhere").resolve("a.txt");
    FileProblem problem = problem(() -> WholeFile.write(file, text("x"), false));
    assertThat(problem.kind()).isEqualTo(FileProblem.Kind.NO_FOLDER);
    assertThat(problem).hasMessage(file + " cannot be written: its folder does not exist.");
  }

  @Test
  void aFileInPlaceOfTheFolderIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "x").resolve("b.txt");
    assertThat(problem(() -> WholeFile.write(file, text("x"), false)).kind())
        .isEqualTo(FileProblem.Kind.NO_FOLDER);
  }

  @Test
  void aFolderOfThatNameIsNotReplaced() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("a.stl"));
    assertThat(problem(() -> WholeFile.write(taken, text("x"), true)).kind())
        .isEqualTo(FileProblem.Kind.IS_FOLDER);
    assertThat(names()).containsExactly("a.stl");
  }

  @Test
  void readOnlyFolderIsNamed() {
    Path closed = folder.resolve("closed");
    assertThat(closed.toFile().mkdir() && closed.toFile().setWritable(false)).isTrue();
    // The administrator may write there none the less, but nobody may into the kernel's own tree.
    Path readOnly = Files.isWritable(closed) ? Path.of("/sys") : closed;
    assumeTrue(Files.isDirectory(readOnly), "no read-only folder to be had");
    FileProblem problem =
        problem(() -> WholeFile.write(readOnly.resolve("a.txt"), text("x"), false));
    assertThat(problem.kind()).isEqualTo(FileProblem.Kind.NOT_ALLOWED);
    assertThat(problem).hasMessageContaining("read-only");
  }

  @Test
  void leftoversOfTheDeadAreSweptAndThoseOfTheLivingAreNot() throws Exception {
    Process brief = new ProcessBuilder("java", "-version").start();
    long dead = brief.pid();
    brief.waitFor();
    long own = ProcessHandle.current().pid();
    Files.writeString(folder.resolve(".a.stl." + dead + "-1767225600000-1.part"), "half");
    Files.writeString(folder.resolve(".b.stl." + own + "-5-1.part"), "half, of an earlier pid");
    Path living = Files.writeString(Leftover.beside(folder.resolve("c.stl")), "in work");
    Files.writeString(folder.resolve(".keep.part"), "not ours");
    WholeFile.write(folder.resolve("d.stl"), text("x"), false);
    assertThat(names()).containsExactly(living.getFileName().toString(), ".keep.part", "d.stl");
  }

  /** Many at once for one name: exactly one gets it. */
  @Test
  void onlyOneOfManyWritersGetsTheName() throws IOException {
    Path file = folder.resolve("a.txt");
    long refused =
        IntStream.range(0, 16)
            .parallel()
            .filter(
                n -> {
                  try {
                    WholeFile.write(file, text("writer " + n), false);
                    return false;
                  } catch (FileProblem e) {
                    return e.kind() == FileProblem.Kind.EXISTS;
                  }
                })
            .count();
    assertThat(refused).isEqualTo(15);
    assertThat(names()).containsExactly("a.txt");
  }

  private static Content text(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void full(OutputStream out) throws IOException {
    out.write('x');
    throw new IOException("No space left on device");
  }

  private static FileProblem problem(Runnable work) {
    FileProblem problem = catchThrowableOfType(FileProblem.class, work::run);
    assertThat(problem).isNotNull();
    return problem;
  }

  private List<String> names() {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
