package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Drawn;
import org.midlateral.Seeded;

/** The rules for names are those of NTFS and of POSIX file systems, from memory. */
class SafeNameTest {
  @ParameterizedTest
  @ValueSource(strings = {"demo-ring-a", "A1", "x.y", "com10", "console", "nulla"})
  void safeNamesStay(String text) {
    assertThat(SafeName.of(text)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "CON",
        "nul",
        "Aux.txt",
        "com1",
        "LPT9.stl",
        "a.",
        "..",
        ".hidden",
        "-x",
        "a/b",
        "a\\b",
        "c:",
        "a b",
        "tab\t",
        "\u0000",
        "",
        "ä",
        "x\u202ey"
      })
  void othersAreChangedAndMarked(String text) {
    assertThat(SafeName.of(text)).isNotEqualTo(text).matches("_?[A-Za-z0-9._-]*-[0-9a-f]{8}");
  }

  @Seeded(100)
  void everyTextGetsASafeName(long seed) {
    Drawn drawn = new Drawn(seed);
    for (int i = 0; i < 20; i++) {
      hasASafeName(drawn.text());
    }
  }

  @ParameterizedTest
  @ValueSource(chars = {'\0', ' ', '.', '-', '_', '~', '\u007f', '\ud800', '\udfff', '\uffff'})
  void textsOfOneCharacterGetASafeName(char only) {
    for (int length : new int[] {0, 1, 2, 70, 71, 72, 255, 10_000}) {
      hasASafeName(String.valueOf(only).repeat(length));
    }
  }

  private static void hasASafeName(String text) {
    String name = SafeName.of(text);
    assertThat(name).matches("[A-Za-z0-9_][A-Za-z0-9._-]{0,70}").doesNotEndWith(".");
    assertThat(name.split("\\.")[0].toLowerCase(Locale.ROOT))
        .doesNotMatch("con|prn|aux|nul|com\\d|lpt\\d");
    assertThat(Path.of("folder").resolve(name).normalize().getParent())
        .isEqualTo(Path.of("folder"));
  }

  @Seeded(50)
  void changedTextsStayApart(long seed) {
    Drawn drawn = new Drawn(seed);
    for (int i = 0; i < 20; i++) {
      String one = drawn.text();
      for (String other : List.of(drawn.text(), drawn.near(one), one + " ", one + "\0")) {
        if (!one.equals(other)) {
          assertThat(SafeName.of(one)).isNotEqualTo(SafeName.of(other));
        }
      }
    }
  }
}
