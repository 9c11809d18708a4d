package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a table to plates, by the command line. */
class PlateCommandTest {
  private static final Path MACHINE = Path.of("..", "samples", "machines", "filament-220.yaml");

  @TempDir Path folder;

  private Run plate(String machine, String... more) {
    String[] all = new String[6 + more.length];
    System.arraycopy(
        new String[] {
          "plate",
          folder.resolve("out").toString(),
          "--machine",
          machine,
          "--out",
          folder.resolve("plates").toString()
        },
        0,
        all,
        0,
        6);
    System.arraycopy(more, 0, all, 6, more.length);
    return Run.of(all);
  }

  private void batch() throws IOException {
    Path table = folder.resolve("orders.csv");
    Files.writeString(
        table,
        """
        reference,hand,digit,circumference.proximal-phalanx,circumference.pip,\
        circumference.middle-phalanx,circumference.tip,length.palmar-crease-to-web,\
        length.web-to-pip,length.pip-to-dip,length.dip-to-tip
        inv-a,right,ring,56,58,50,43,21,24,23,24
        inv-b,left,ring,57,59,51,44,21,24,23,24
        """);
    Run run =
        Run.of(
            "batch",
            table.toString(),
            "--out",
            folder.resolve("out").toString(),
            "--format",
            "stl",
            "--machine",
            MACHINE.toString(),
            "--set",
            "material.name=petg",
            "--set",
            "dorsal-shell.make=no",
            "--set",
            "print.edge-length=1.2",
            "--no-label");
    assertThat(run.status()).as(run.err()).isZero();
  }

  @Test
  void everyPartHasItsNameAndItsPlace() throws Exception {
    batch();
    Run run = plate(MACHINE.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).contains("plates: 1, parts: 2");
    try (ZipFile zip = new ZipFile(folder.resolve("plates/plate-1.3mf").toFile())) {
      String model =
          new String(
              zip.getInputStream(zip.getEntry("3D/3dmodel.model")).readAllBytes(),
              StandardCharsets.UTF_8);
      assertThat(model).contains("\"inv-a right ring trough r1 ", "\"inv-b left ring trough r1 ");
    }
    try (PDDocument read = Loader.loadPDF(folder.resolve("plates/plates.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(read))
          .contains("plate-1.3mf: parts 2", "inv-a", "left, ring", "trough");
    }
    assertThat(plate(MACHINE.toString()).status()).isEqualTo(2);

    Path changed = folder.resolve("out/inv-b/trough.stl");
    byte[] bytes = Files.readAllBytes(changed);
    bytes[500] ^= 4;
    Files.write(changed, bytes);
    Run other = plate(MACHINE.toString(), "--force");
    assertThat(other.status()).isEqualTo(3);
    assertThat(other.err()).contains(changed + ": left out with its order, it is changed");
    assertThat(other.err()).contains("parts: 1");
  }

  @Test
  void whatIsWrongIsToldWithStatusTwo() throws IOException {
    Run none = plate(MACHINE.toString());
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("record.json");
    Path machine = Files.writeString(folder.resolve("m.yaml"), "name: one\n");
    assertThat(plate(machine.toString()).err()).contains("m.yaml: process: is missing");
  }
}
