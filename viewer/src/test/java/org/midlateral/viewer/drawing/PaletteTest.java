package org.midlateral.viewer.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text stands out from what it is written on. */
class PaletteTest {
  /** Least contrast of text: WCAG 2.1, success criterion 1.4.3. */
  private static final double LEAST = 4.5;

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void textStandsOut(boolean dark) {
    Palette p = Palette.of(dark);
    List<Color> texts =
        List.of(
            p.ink(),
            p.quiet(),
            p.level(),
            p.crease(),
            p.axis(),
            p.midlateral(),
            p.caution(),
            p.refusal());
    for (Color text : texts) {
      assertThat(contrast(text, p.paper())).as("%s on paper", text).isGreaterThan(LEAST);
      assertThat(contrast(text, p.card())).as("%s on card", text).isGreaterThan(LEAST);
    }
  }

  /** Contrast ratio and relative luminance as WCAG 2.1 defines them. */
  private static double contrast(Color a, Color b) {
    double one = luminance(a) + 0.05;
    double other = luminance(b) + 0.05;
    return Math.max(one, other) / Math.min(one, other);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(int channel) {
    double v = channel / 255.0;
    return v <= 0.03928 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
