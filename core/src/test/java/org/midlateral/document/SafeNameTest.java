package org.midlateral.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  @Property(tries = 2000)
  void everyTextGetsASafeName(@ForAll String text) {
    String name = SafeName.of(text);
    assertThat(name).matches("[A-Za-z0-9_][A-Za-z0-9._-]{0,70}").doesNotEndWith(".");
    assertThat(name.split("\\.")[0].toLowerCase(java.util.Locale.ROOT))
        .doesNotMatch("con|prn|aux|nul|com\\d|lpt\\d");
    assertThat(Path.of("folder").resolve(name).normalize().getParent())
        .isEqualTo(Path.of("folder"));
  }

  @Property(tries = 1000)
  void changedTextsStayApart(@ForAll String one, @ForAll String other) {
    if (!one.equals(other)) {
      assertThat(SafeName.of(one)).isNotEqualTo(SafeName.of(other));
    }
  }
}
