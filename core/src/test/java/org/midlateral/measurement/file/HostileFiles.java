package org.midlateral.measurement.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.midlateral.measurement.LengthUnit;

/** Files that mean no good, or that an accident left behind; the same at every run. */
final class HostileFiles {

  static final List<String> NASTY =
      List.of(
          ".nan",
          ".inf",
          "-.inf",
          "NaN",
          "Infinity",
          "1e999",
          "-1e999",
          "1e-999",
          "0e9999999999",
          "0x7fffffff",
          "0o17",
          "1_000",
          "١٢",
          "--5",
          "5-",
          "5..5",
          "5,5",
          "1/0",
          "1/2",
          "-1/2 in",
          "99999999999/99999999999 in",
          "2 1/2",
          "2½ in",
          "½½",
          "null",
          "~",
          "''",
          "\"\"",
          "yes",
          "true",
          "2026-01-01",
          "[",
          "]",
          "{",
          "}",
          "[]",
          "{}",
          "[[[[]]]]",
          "{a: {b: {c: {}}}}",
          "&a 1",
          "*a",
          "!!str 5",
          "!!java.net.URL 5",
          "!<x> 5",
          "|",
          ">",
          "| 5",
          "'",
          "\"",
          "\"\\u0000\"",
          "\"\\n\"",
          "\"\\x1b[31m\"",
          "%YAML 9.9",
          "---",
          "...",
          "? a",
          ": a",
          "- a",
          "@a",
          "`a",
          "#",
          "a: b: c",
          "\t5",
          "5\t",
          "\u00a05",
          "\u202e5",
          "\ud83d\ude00",
          "9".repeat(5000),
          "1." + "0".repeat(5000) + "x",
          "a".repeat(20000),
          "-".repeat(2000),
          "5 " + "m".repeat(500),
          "${jndi:ldap://x}",
          "%s%n%d",
          "../../x");

  private final Random random = new Random(20260101);
  private final List<byte[]> files = new ArrayList<>();

  private HostileFiles() {}

  /** At least 2000 files, from valid ones. */
  static List<byte[]> all(List<String> valid) {
    HostileFiles hostile = new HostileFiles();
    for (String text : valid) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      hostile.truncated(bytes, 60);
      hostile.mutated(bytes, 120);
      hostile.jumbled(text, 60);
    }
    hostile.nastyValues(valid.get(0));
    hostile.randomBytes(200);
    hostile.encodings(valid.get(0));
    hostile.files.addAll(bombs());
    return hostile.files;
  }

  /** Those that ask for time or memory. */
  static List<byte[]> bombs() {
    List<String> texts = new ArrayList<>();
    for (String unit :
        List.of(
            "[", "{", "{a: ", "- ", "? ", "[[", "a: [", "'", "\"", "!", "&a ", "*a ", "|\n", "% ",
            ": ")) {
      texts.add(unit.repeat(200_000 / unit.length()));
      texts.add("trough: " + unit.repeat(100_000 / unit.length()));
    }
    StringBuilder aliases = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 30; i++) {
      aliases.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(10) + "]\n");
    }
    texts.add(aliases.toString());
    texts.add("a: &a {<<: *a}\n".repeat(1000));
    texts.add("x: [" + "*a, ".repeat(200_000) + "]");
    texts.add("reference: " + "9".repeat(900_000));
    texts.add("circumference: {pip: " + "9".repeat(900_000) + "x}");
    texts.add("trough: {wrap: " + "1".repeat(900_000) + "." + "1".repeat(90_000) + "x}");
    texts.add("trough: {wall: \"" + " ".repeat(900_000) + "\"}");
    texts.add("k".repeat(900_000) + ": 1");
    texts.add("pip: 5\n".repeat(100_000));
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 60_000; i++) {
      keys.append("trough-wral-").append(i).append(": 1\n");
    }
    texts.add(keys.toString());
    texts.add("relief: {bubbles: [" + "{station: 1}, ".repeat(50_000) + "]}");
    texts.add("#" + " comment".repeat(100_000));
    texts.add("\n".repeat(1_000_000));
    texts.add(" ".repeat(1_000_000) + "a");
    texts.add("\t".repeat(1_000_000));
    texts.add("{" + "\"a\":{".repeat(150_000));
    List<byte[]> files = new ArrayList<>();
    texts.forEach(text -> files.add(text.getBytes(StandardCharsets.UTF_8)));
    byte[] tenMegabyteLine = new byte[10_000_000];
    Arrays.fill(tenMegabyteLine, (byte) 'a');
    files.add(tenMegabyteLine);
    files.add(new byte[1_000_000]);
    return files;
  }

  /** The valid files they are made of. */
  static List<String> valid(Path samples) throws IOException {
    List<String> valid = new ArrayList<>();
    for (LengthUnit unit : LengthUnit.values()) {
      valid.add(Template.text(unit));
    }
    try (var files = Files.list(samples)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        valid.add(Files.readString(file));
      }
    }
    return valid;
  }

  private void truncated(byte[] bytes, int count) {
    for (int i = 0; i < count; i++) {
      files.add(Arrays.copyOf(bytes, bytes.length * i / count));
    }
  }

  private void mutated(byte[] bytes, int count) {
    for (int i = 0; i < count; i++) {
      byte[] copy = bytes.clone();
      int changes = 1 + random.nextInt(1 + i / 4);
      for (int j = 0; j < changes; j++) {
        boolean anyByte = random.nextInt(4) == 0;
        copy[random.nextInt(copy.length)] =
            (byte)
                (anyByte
                    ? random.nextInt(256)
                    : "\n:{}[]&*!#-'\"0 .,\t%".charAt(random.nextInt(19)));
      }
      files.add(copy);
    }
  }

  /** Lines taken out, doubled, exchanged or indented anew. */
  private void jumbled(String text, int count) {
    for (int i = 0; i < count; i++) {
      List<String> lines = new ArrayList<>(text.lines().toList());
      for (int j = 0; j < 1 + i / 3; j++) {
        int at = random.nextInt(lines.size());
        String line = lines.remove(at);
        switch (random.nextInt(4)) {
          case 0 -> lines.addAll(at, List.of(line, line));
          case 1 -> lines.add(random.nextInt(lines.size()), line);
          case 2 -> lines.add(at, " ".repeat(random.nextInt(9)) + line.strip());
          default -> {}
        }
      }
      files.add(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Each nasty value in the place of some of a file's values. */
  private void nastyValues(String text) {
    List<String> lines = text.lines().toList();
    for (String nasty : NASTY) {
      for (int i = random.nextInt(9); i < lines.size(); i += 10) {
        String line = lines.get(i);
        if (!line.strip().startsWith("#") && line.contains(": ")) {
          List<String> copy = new ArrayList<>(lines);
          copy.set(i, line.substring(0, line.indexOf(':') + 2) + nasty);
          files.add(String.join("\n", copy).getBytes(StandardCharsets.UTF_8));
        }
      }
    }
  }

  private void randomBytes(int count) {
    for (int i = 0; i < count; i++) {
      byte[] bytes = new byte[random.nextInt(3000)];
      random.nextBytes(bytes);
      if (i % 2 == 0) {
        for (int j = 0; j < bytes.length; j++) {
          bytes[j] = (byte) (32 + (bytes[j] & 0x7f) % 96);
        }
      }
      files.add(bytes);
    }
  }

  private void encodings(String text) {
    String accented = text.replace("demo-ring-a", "démo");
    for (String name :
        List.of("UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32", "ISO-8859-1", "IBM037")) {
      files.add(accented.getBytes(Charset.forName(name)));
    }
    for (int mark : new int[] {0xEFBBBF, 0xFEFF, 0xFFFE, 0x2B2F76}) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      for (int shift = 16; shift >= 0; shift -= 8) {
        bytes.write(mark >> shift);
      }
      bytes.writeBytes(text.getBytes(StandardCharsets.UTF_8));
      files.add(bytes.toByteArray());
    }
    files.add(text.replace("\n", "\r").getBytes(StandardCharsets.UTF_8));
    files.add(text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
    files.add(text.replace("\n", "\u2028").getBytes(StandardCharsets.UTF_8));
    files.add(new byte[] {(byte) 0xC0, (byte) 0x80});
    files.add(new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80});
  }
}
