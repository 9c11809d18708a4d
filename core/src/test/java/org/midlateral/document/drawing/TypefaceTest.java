package org.midlateral.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Signs that the typeface lacks. */
class TypefaceTest {
  @Test
  void whatItHasStays() {
    String text = "Größe ≥ 16.5 mm, 30° ± 2, ½ in";
    assertThat(Typeface.REGULAR.shown(text)).isSameAs(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"→", "✓", "שלום", "مرحبا", "中文", "ไทย", "\ud83d\ude00"})
  void whatItLacksBecomesItsReplacementSign(String text) {
    String shown = Typeface.REGULAR.shown("a " + text + " b");

    assertThat(shown).startsWith("a ").endsWith(" b").contains("\ufffd").doesNotContain(text);
    assertThat(Typeface.REGULAR.shown(shown)).isSameAs(shown);
    assertThat(Typeface.REGULAR.width(text, 3)).isPositive();
  }

  /** No line is wider than its column, and nothing is lost. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a word and another",
        "Donaudampfschifffahrtsgesellschaftskapitaen and more",
        "中文中文中文中文中文中文中文中文中文中文中文中文",
        "\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00\ud83d\ude00"
      })
  void wordsThatAreTooLongAreBroken(String text) {
    List<String> lines = Typeface.REGULAR.wrapped(text, 3, 20);
    assertThat(lines).allMatch(line -> Typeface.REGULAR.width(line, 3) <= 20);
    assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
  }

  @Test
  void everyLabelIsOneThatCanBeDrawn() {
    Mark.TextLabel label =
        new Mark.TextLabel(
            "left → right", new Mark.PointMark(0, 0), 3, false, Mark.Anchor.START, 0);
    assertThat(label.text()).isEqualTo("left \ufffd right");
  }
}
