package org.midlateral.recipe.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.record.FolderCheck.FileState;
import org.midlateral.shared.SharedData;

class MakingRecordTest {
  private static final Order ORDER =
      Orders.read(Path.of("../samples/bulbous-ring.yaml"), List.of("relief.bubbles=[]")).order();

  @TempDir Path folder;

  private static MakingRecord record(Map<String, MadeFile> files) {
    return MakingRecord.of(
        "demo-ring",
        Optional.of(ORDER),
        MakingSource.of(
            "orders.csv:2", "text", List.of("hand=right"), List.of(), List.of("stl"), List.of()),
        new MakingRecord.RecordedResult(
            "made",
            "",
            "",
            Map.of("trough", "demo-ring"),
            Optional.of(new MakingFigures("a material", 3.5, 3000, 20, 40))),
        new MakingRecord.RecordedPlace(
            2, Optional.of("superseded/demo-ring/1"), Optional.of(Instant.EPOCH)),
        files);
  }

  private MakingRecord written() throws IOException {
    byte[] part = "a part".getBytes(StandardCharsets.UTF_8);
    Files.write(folder.resolve("trough.stl"), part);
    MakingRecord record = record(Map.of("trough.stl", MadeFile.of(part)));
    Files.writeString(folder.resolve(MakingRecord.FILE), record.json());
    return record;
  }

  @Test
  void everyKeyIsAsItWasUnderstood() throws IOException {
    written();
    MakingRecord record = MakingRecord.in(folder).orElseThrow();
    assertThat(record.settings())
        .containsEntry("hand", "right")
        .containsEntry("digit", "ring")
        .containsKeys("circumference.pip", "trough.wall", "material.name", "print.process");
    assertThat(record.made()).isEqualTo("1970-01-01T00:00:00Z");
    assertThat(record.program().java()).startsWith(Runtime.version().toString());
  }

  /** SHA-256 of "abc": FIPS 180-4's own example. */
  @Test
  void filesAreToldByTheirDigest() {
    assertThat(MadeFile.of("abc".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(
            new MadeFile("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", 3));
  }

  /** No bit of files and record can turn without being told. */
  @Test
  void everyFlippedBitIsFound() throws IOException {
    written();
    assertThat(FolderCheck.of(folder).ok()).isTrue();
    for (String name : List.of("trough.stl", MakingRecord.FILE)) {
      Path file = folder.resolve(name);
      byte[] bytes = Files.readAllBytes(file);
      // Every byte of the part; of the record every seventh, which meets all its keys.
      for (int i = 0; i < bytes.length; i += name.endsWith("stl") ? 1 : 7) {
        bytes[i] ^= (byte) (1 << i % 8);
        Files.write(file, bytes);
        assertThat(FolderCheck.of(folder).ok()).as("%s, byte %d", name, i).isFalse();
        bytes[i] ^= (byte) (1 << i % 8);
      }
      Files.write(file, bytes);
    }
  }

  @Test
  void whatIsMissingOrStrangeIsTold() throws IOException {
    written();
    Files.delete(folder.resolve("trough.stl"));
    Files.writeString(folder.resolve("other.stl"), "");
    assertThat(FolderCheck.of(folder).files())
        .isEqualTo(
            Map.of(
                MakingRecord.FILE,
                FileState.AS_MADE,
                "trough.stl",
                FileState.MISSING,
                "other.stl",
                FileState.STRANGE));
  }

  @Test
  void theWorkshopsPartIsFreeToBeFilledIn() throws IOException {
    String text = written().json();
    Path file = folder.resolve(MakingRecord.FILE);
    Files.writeString(file, text.replace("\"lot\" : \"\"", "\"lot\" : \"A-17\""));
    assertThat(FolderCheck.of(folder).ok()).isTrue();
    assertThat(MakingRecord.in(folder).orElseThrow().workshop().lot()).isEqualTo("A-17");
    Files.writeString(file, text.replace("\"lot\"", "\"lots\""));
    assertThat(FolderCheck.of(folder).ok()).isFalse();
  }

  @Test
  void aDamagedRecordCountsForNothing() throws IOException {
    String whole = written().json();
    for (String text :
        List.of(
            "",
            "null",
            "{",
            "[1]",
            whole + "1",
            whole.replace("\"text\" : \"\"", "\"text\" : null"),
            whole.replace("\"state\" : \"made\",", ""),
            whole.replace("\"revision\" : 2", "\"revision\" : 2, \"revision\" : 2"),
            whole.replaceFirst("\"files\" : \\{", "\"files\" : { \"a\" : null,"))) {
      Files.writeString(folder.resolve(MakingRecord.FILE), text);
      assertThat(MakingRecord.in(folder)).as(text).isEmpty();
    }
    Files.writeString(folder.resolve(MakingRecord.FILE), whole);
    assertThat(MakingRecord.in(folder)).isPresent();
  }

  /** The schema, by a validator of another make. */
  @Test
  void theSchemaTakesARecordAndNothingElse() throws IOException {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SharedData.text(SharedData.RECORD_SCHEMA));
    ObjectMapper json = new ObjectMapper();
    String text = record(Map.of("trough.stl", new MadeFile("0".repeat(64), 1))).json();
    assertThat(schema.validate(json.readTree(text))).isEmpty();
    assertThat(schema.validate(json.readTree(text.replace("\"made\",", "\"done\",")))).isNotEmpty();
    assertThat(schema.validate(json.readTree(text.replace("0".repeat(64), "0".repeat(63)))))
        .isNotEmpty();
    assertThat(schema.validate(json.readTree(text.replace("\"lot\"", "\"lots\"")))).isNotEmpty();
  }

  /** However much there is to tell: what has no room stands in the record. */
  @Test
  void theLongestSheetEndsAboveItsFoot() throws IOException {
    Map<String, MadeFile> files = new TreeMap<>();
    for (int i = 0; i < 40; i++) {
      files.put("invented-" + i + ".stl", new MadeFile("0".repeat(64), i));
    }
    String text = "The invented finding goes on and on. ".repeat(100);
    MakingRecord longest =
        MakingRecord.of(
            "demo-ring",
            Optional.of(ORDER),
            MakingSource.of("orders.csv:2", "", List.of(), List.of(), List.of("stl"), List.of()),
            MakingRecord.RecordedResult.none("made", text),
            new MakingRecord.RecordedPlace(1, Optional.empty(), Optional.of(Instant.EPOCH)),
            files);
    try (PDDocument read = Loader.loadPDF(RecordSheet.pdf(longest))) {
      assertThat(read.getNumberOfPages()).isEqualTo(1);
      List<Float> lowest = new ArrayList<>();
      new PDFTextStripper() {
        @Override
        protected void writeString(String line, List<TextPosition> places) {
          if (line.contains("Inspected by") || line.contains("Estimate, for comparison")) {
            lowest.add(places.get(0).getY());
          }
        }
      }.getText(read);
      // Down the page y grows: the last line of the form stands above the foot.
      assertThat(lowest).hasSize(2);
      assertThat(lowest.get(0)).isLessThan(lowest.get(1) - 20);
    }
  }

  @Test
  void theSheetIsOnePage() throws IOException {
    byte[] pdf = RecordSheet.pdf(record(Map.of("trough.stl", new MadeFile("0".repeat(64), 1))));
    try (PDDocument read = Loader.loadPDF(pdf)) {
      assertThat(read.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(read))
          .contains("demo-ring, revision 2", "trough.stl", "0000000000000000", "Material's lot")
          .contains("circumference.pip", "replaces no inspection");
    }
  }
}
