package org.midlateral.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKTReader;

class LetteringTest {
  /**
   * The filed outlines are what the face has, for every sign that a reference may have: to a
   * thousandth of a capital, since machines round a font's points otherwise.
   */
  @Test
  void theOutlinesAreThoseOfTheFace() throws Exception {
    List<String> lines = LettersFromFont.text().lines().toList();
    assertThat(lines).hasSize(2 * 26 + 10 + 3);
    for (String line : lines) {
      Geometry face = new WKTReader().read(line.substring(2));
      assertThat(Lettering.letter(line.charAt(0)).equalsExact(face, 0.07)).isTrue();
    }
  }

  @Test
  void noLetterMeetsAnother() throws Exception {
    List<String> signs = LettersFromFont.text().lines().map(line -> line.substring(0, 1)).toList();
    for (String one : signs) {
      for (String other : signs) {
        Geometry text = Lettering.outlines(List.of(one + other, other + one), 3.2);
        assertThat(text.isValid()).as(one + other).isTrue();
        assertThat(text.getArea()).as(one + other).isCloseTo(text.union().getArea(), within(1e-9));
      }
    }
  }

  @Test
  void aSignWithoutAnOutlineIsNamed() {
    assertThatThrownBy(() -> Lettering.outlines(List.of("A*"), 4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("*");
  }
}
