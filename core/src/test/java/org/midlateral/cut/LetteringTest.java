package org.midlateral.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
  void aSignWithoutAnOutlineIsNamed() {
    assertThatThrownBy(() -> Lettering.outlines(List.of("A*"), 4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("*");
  }
}
