package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;

class DefectTest {
  private static final String NOTE = "after the second visit (tight)";
  private static final Order ORDER =
      Orders.read(
              Path.of("../samples/bulbous-ring.yaml"),
              List.of("reference=inv-17.b", "note=" + NOTE, "trough.wall=1.9"))
          .order();
  private static final String COMMAND = "midlateral make FILE --format stl";

  @TempDir Path folder;

  private static Defect defect(String message, Order... orders) {
    Exception cause = new ArithmeticException("by zero");
    IllegalStateException thrown = new IllegalStateException(message, cause);
    thrown.addSuppressed(new UnsupportedOperationException("closing"));
    return new Defect(thrown, List.of(COMMAND), List.of(orders));
  }

  @Test
  void theFileHoldsTraceVersionsCommandAndKeys() {
    String text = defect("nobody foresaw it", ORDER).text();

    assertThat(text)
        .contains("# java.lang.IllegalStateException: nobody foresaw it\n")
        .contains("#     at org.midlateral.document.DefectTest.defect(DefectTest.java:")
        .contains("# Suppressed: java.lang.UnsupportedOperationException: closing\n")
        .contains("# Caused by: java.lang.ArithmeticException: by zero\n")
        .containsPattern("# midlateral \\d+\\.\\d+\\.\\d+\\S*\\+\\S+\n# Java \\d+")
        .contains("# Command: " + COMMAND + "\n")
        .contains("\n  pip: 70\n")
        .contains("\n  wall: 1.9\n");
  }

  /** Whose finger it was is nobody's business, whatever the message says of it. */
  @Test
  void itTellsNeitherReferenceNorNoteNorHome() {
    String home = System.getProperty("user.home");
    String told = "no room for inv-17.b (" + NOTE + ") under " + home + "/files";
    Defect defect = defect(told, ORDER, ORDER);

    assertThat(defect.text())
        .doesNotContain("inv-17", "visit", home + "/")
        .contains("no room for (left out) ((left out)) under ~/files");
    assertThat(defect.inShort())
        .startsWith("IllegalStateException at org.midlateral.document.DefectTest.defect(");
  }

  /** A reference of a letter stands in most words. */
  @Test
  void aShortReferenceIsLeftOutAsAWord() {
    Order order =
        Orders.read(Path.of("../samples/bulbous-ring.yaml"), List.of("reference=a")).order();

    assertThat(defect("what a trap: a", order).text())
        .contains(": what (left out) trap: (left out)\n");
  }

  /** The program can be run on the file: all keys are there, and the trace is a comment. */
  @Test
  void theFileIsAMeasurementFile() {
    String text = defect("line\nof: two\twith \u0000 and \uD83D\uDE00 \u00fc", ORDER, ORDER).text();
    Orders.Result read = Orders.parse(text, "defect", List.of());

    assertThat(read.errors()).isEmpty();
    Order order = read.order();
    assertThat(order.measurements().reference()).isEqualTo("left-out");
    assertThat(order.note()).isEmpty();
    assertThat(order.design()).isEqualTo(ORDER.design());
    assertThat(order.measurements().circumference())
        .isEqualTo(ORDER.measurements().circumference());
    assertThat(text).contains("# java.lang.IllegalStateException: line of: two with", "\u00fc");
    assertThat(text).contains("# Another finger was read too:\n#\n# reference: left-out\n");
  }

  @Test
  void withoutMeasurementsItSaysSo() {
    assertThat(defect("early").text()).endsWith("\n# No measurements had been read.\n");
    Order broken = ORDER.withDesign(null);
    assertThat(defect("late", broken).text())
        .contains("IllegalStateException: late")
        .endsWith("# The measurements cannot be written out: java.lang.NullPointerException\n");
  }

  @Test
  void itLiesInTheUsersFolderInPlaceOfAnEarlierOne() throws Exception {
    Path out = folder.resolve("not/yet/there");
    Path file = defect("first").write(Optional.of(out)).orElseThrow();

    assertThat(file).isEqualTo(out.resolve(Defect.FILE));
    assertThat(defect("second", ORDER).write(Optional.of(out))).contains(file);
    assertThat(Files.readString(file)).contains("second", "pip: 70").doesNotContain("first");
    try (var all = Files.list(out)) {
      assertThat(all).containsExactly(file);
    }
    assertThat(Defect.request(Optional.of(file))).isEqualTo("please report it with " + file);
  }

  @Test
  void whereTheFolderDoesNotTakeItTheTemporaryOneDoes() throws Exception {
    Path taken = Files.writeString(folder.resolve("taken"), "a file");
    Path file = defect("elsewhere").write(Optional.of(taken)).orElseThrow();
    try {
      assertThat(file).hasParent(Path.of(System.getProperty("java.io.tmpdir")));
      assertThat(file.getFileName().toString()).matches("midlateral-defect-\\d+\\.txt");
      assertThat(Files.readString(file)).contains("elsewhere");
      assertThat(taken).hasContent("a file");
      assertThat(defect("again").write(Optional.empty())).contains(file);
    } finally {
      Files.delete(file);
    }
  }

  @Test
  void whereNoFolderTakesItItIsToldAllTheSame() throws Exception {
    String temporary = System.getProperty("java.io.tmpdir");
    Path taken = Files.writeString(folder.resolve("taken"), "a file");
    try {
      System.setProperty("java.io.tmpdir", taken.toString());
      assertThat(defect("nowhere").write(Optional.of(taken))).isEmpty();
    } finally {
      System.setProperty("java.io.tmpdir", temporary);
    }
    assertThat(Defect.request(Optional.empty())).isEqualTo("please report it");
  }
}
