package org.midlateral.measurement.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Drawn;
import org.midlateral.Seeded;
import org.midlateral.measurement.LengthUnit;

class LengthTextTest {

  /** The international inch is 25.4 mm exactly, so every figure here is exact arithmetic. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "62|MM|62",
        "62|CM|620",
        "62.|MM|62",
        ".5|MM|0.5",
        "+62|MM|62",
        "-3.5|MM|-3.5",
        "- 3.5 mm|MM|-3.5",
        "6.23|CM|62.3",
        "6.2cm|MM|62",
        "6.2 cm|IN|62",
        "63.5 mm|IN|63.5",
        "6.35e1|MM|63.5",
        "2.5|IN|63.5",
        "2 1/2|IN|63.5",
        "2 1/2 in|MM|63.5",
        "2-1/2\"|MM|63.5",
        "2 - 1/2 inches|MM|63.5",
        "2½″|MM|63.5",
        "2 ⅝ in|MM|66.675",
        "1/2 in|MM|12.7",
        "1/4 IN|MM|6.35",
        "3/8 inch|CM|9.525",
        "5/16|IN|7.9375",
        "1/32|IN|0.79375",
        "63/64|IN|25.003125",
        "0|IN|0",
        "0e99999999999|MM|0",
        "-0|MM|0",
      })
  void readsWhatPeopleWrite(String text, LengthUnit unit, double millimetres) throws Exception {
    assertThat(LengthText.parse(text, unit).millimetres()).isEqualTo(millimetres);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2 1/2|MM|is a fraction, which is for inches",
        "2 1/2 cm|IN|is a fraction, which is for inches",
        "2 5/2|IN|has a fraction of a whole inch or more, 5/2",
        "43/16 in|MM|is a fraction of a whole inch or more; write 2 11/16 or 4 3/16",
        "17/8|IN|is a fraction of a whole inch or more; write 2 1/8 or 1 7/8",
        "3/2|IN|is a fraction of a whole inch or more; write 1 1/2",
        "8/8|IN|is a fraction of a whole inch or more; write 1",
        "2 1/3|IN|is not a fraction of a ruler, from halves to sixty-fourths",
        "2 1/0|IN|is not a fraction of a ruler, from halves to sixty-fourths",
        "1/128|IN|is not a fraction of a ruler, from halves to sixty-fourths",
        "6,2|CM|has a comma; write a point",
        "6,2 cm|MM|has a comma; write a point",
        "62 m|MM|has a unit that is not known",
        "1e999|MM|is not a finite number",
        "1e308|IN|is not a finite number",
        "sixty|MM|is not a length",
        "0x40|MM|is not a length",
        "62 mm mm|MM|is not a length",
        "6 2|MM|is not a length",
        "``|MM|is not a length",
      })
  void refusesTheRest(String text, LengthUnit unit, String reason) {
    String written = text == null ? "" : text;
    assertThatThrownBy(() -> LengthText.parse(written, unit))
        .isInstanceOf(LengthText.NotALength.class)
        .hasMessage(reason);
  }

  /** To the last bit, and as a tape is read, to the hundredth. */
  @Seeded(300)
  void comesBackTheSameDouble(long seed) throws Exception {
    double millimetres = new Drawn(seed).between(-60, 150);

    comesBack(millimetres);
    comesBack(Math.rint(100 * millimetres) / 100);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-60, -1, -0.01, -1e-9, 1e-9, 0.01, 1, 25.4, 150})
  void limitsComeBackTheSameDouble(double millimetres) throws Exception {
    comesBack(0);
    comesBack(millimetres);
    comesBack(Math.nextUp(millimetres));
    comesBack(Math.nextDown(millimetres));
  }

  private static void comesBack(double millimetres) throws Exception {
    for (LengthUnit unit : LengthUnit.values()) {
      String text = LengthText.write(millimetres, unit);
      assertThat(LengthText.parse(text, unit).millimetres()).as(text).isEqualTo(millimetres);
    }
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void everyFractionOfARulerComesBack(LengthUnit unit) throws Exception {
    for (int i = 0; i <= 64 * 5; i++) {
      double millimetres = LengthText.parse(i / 64.0 + "", LengthUnit.IN).millimetres();
      String text = LengthText.write(millimetres, unit);
      assertThat(LengthText.parse(text, unit).millimetres()).isEqualTo(millimetres);
      assertThat(text.contains("mm")).as(text).isFalse();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "63.5, IN, 2 1/2",
    "25.4, IN, 1",
    "0.79375, IN, 1/32",
    "62, IN, 62 mm",
    "62.3, CM, 6.23"
  })
  void writesAsTheUnitIsWritten(double millimetres, LengthUnit unit, String text) {
    assertThat(LengthText.write(millimetres, unit)).isEqualTo(text);
  }
}
