package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Read back by the library's own inflater and zip reader. */
class RowDeflateTest {
  @Test
  void anyBytesComeBack() throws IOException {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      byte[] text = new byte[random.nextInt(400)];
      int kinds = 1 + random.nextInt(256);
      for (int k = 0; k < text.length; k++) {
        text[k] = random.nextInt(4) == 0 ? (byte) '"' : (byte) random.nextInt(kinds);
      }
      assertThat(inflated(RowDeflate.of(text))).isEqualTo(text);
    }
  }

  @Test
  void longMatchesAndFarOnesComeBack() throws IOException {
    for (int length : new int[] {0, 1, 9, 10, 17, 256, 257, 258, 259, 300, 5461, 5462, 40_000}) {
      byte[] text = ("\"" + "x".repeat(length)).repeat(20).getBytes(StandardCharsets.US_ASCII);
      assertThat(inflated(RowDeflate.of(text))).as("%d", length).isEqualTo(text);
    }
  }

  @Test
  void everyMatchLengthComesBack() throws IOException {
    for (int length = 1; length < 600; length++) {
      String six = "\"a\"b\"c\"d\"e\"";
      String text = six + "y".repeat(length) + "1" + six + "y".repeat(length) + "2";
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      assertThat(inflated(RowDeflate.of(bytes))).as("%d", length).isEqualTo(bytes);
    }
  }

  @Test
  void rowsArePackedAboutAsShortAsByTheLibrary() throws IOException {
    StringBuilder rows = new StringBuilder();
    Random random = new Random(8);
    for (int i = 0; i < 20_000; i++) {
      rows.append("<triangle v1=\"").append(i).append("\" v2=\"").append(i + random.nextInt(9));
      rows.append("\" v3=\"").append(i + random.nextInt(300)).append("\"/>\n");
    }
    byte[] text = rows.toString().getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream quick = new ByteArrayOutputStream();
    try (DeflaterOutputStream out =
        new DeflaterOutputStream(quick, new Deflater(Deflater.BEST_SPEED, true))) {
      out.write(text);
    }
    assertThat(RowDeflate.of(text).length).isLessThan((int) (1.25 * quick.size()));
    assertThat(inflated(RowDeflate.of(text))).isEqualTo(text);
  }

  @Test
  void aPackageHoldsItsEntries() throws IOException {
    byte[] rows = "<a b=\"1\" c=\"2\" d=\"3\"/>\n".repeat(500).getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new ZipPackage().add("one", new byte[] {1, 2, 3}).add("two/rows", rows).writeTo(out);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
      ZipEntry one = zip.getNextEntry();
      assertThat(one.getName()).isEqualTo("one");
      assertThat(one.getMethod()).isEqualTo(ZipEntry.STORED);
      assertThat(zip.readAllBytes()).containsExactly(1, 2, 3);
      ZipEntry two = zip.getNextEntry();
      assertThat(two.getName()).isEqualTo("two/rows");
      assertThat(two.getTimeLocal()).isEqualTo("2026-01-01T00:00");
      assertThat(zip.readAllBytes()).isEqualTo(rows);
      assertThat(zip.getNextEntry()).isNull();
    }
  }

  private static byte[] inflated(byte[] packed) throws IOException {
    try (InflaterInputStream in =
        new InflaterInputStream(new ByteArrayInputStream(packed), new Inflater(true))) {
      return in.readAllBytes();
    }
  }
}
