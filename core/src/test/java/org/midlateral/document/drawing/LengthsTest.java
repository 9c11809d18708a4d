package org.midlateral.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.midlateral.measurement.LengthUnit;

class LengthsTest {
  private static final Lengths MM = Lengths.ofARuler(LengthUnit.MM);
  private static final Lengths CM = Lengths.ofARuler(LengthUnit.CM);
  private static final Lengths INCHES = Lengths.ofARuler(LengthUnit.IN);

  @Test
  void inchesAreSixteenthsInLowestTerms() {
    assertThat(INCHES.text(25.4 * 2.4375)).isEqualTo("2 7/16");
    assertThat(INCHES.text(25.4 * 0.5)).isEqualTo("1/2");
    assertThat(INCHES.text(25.4)).isEqualTo("1");
    assertThat(INCHES.text(0)).isEqualTo("0");
    // Half a sixteenth is 0.79 mm.
    assertThat(INCHES.text(25.4 + 0.78)).isEqualTo("1");
    assertThat(INCHES.text(25.4 + 0.81)).isEqualTo("1 1/16");
    assertThat(INCHES.with(-12.7)).isEqualTo("-1/2 in");
  }

  /** As a ruler is read: to half a millimetre, and no zero that was not read. */
  @Test
  void millimetresAndCentimetresAreReadToHalfAMillimetre() {
    assertThat(MM.with(62.34)).isEqualTo("62.5 mm");
    assertThat(MM.with(61.2)).isEqualTo("61 mm");
    assertThat(MM.text(100)).isEqualTo("100");
    assertThat(MM.text(0.1)).isEqualTo("0");
    assertThat(CM.with(62.34)).isEqualTo("6.25 cm");
    assertThat(CM.with(60)).isEqualTo("6 cm");
  }

  @Test
  void offTheBenchMillimetresHaveTenthsAndCentimetresHundredths() {
    assertThat(new Lengths(LengthUnit.MM).with(62.34)).isEqualTo("62.3 mm");
    assertThat(new Lengths(LengthUnit.CM).with(62.34)).isEqualTo("6.23 cm");
    assertThat(new Lengths(LengthUnit.IN).with(62.34)).isEqualTo("2 7/16 in");
  }

  @Test
  void whatIsCutFromARollIsToldRoundly() {
    assertThat(MM.about(217.3)).isEqualTo("about 22 cm");
    assertThat(CM.about(93)).isEqualTo("about 9 cm");
    assertThat(INCHES.about(217.3)).isEqualTo("about 8 1/2 in");
    assertThat(MM.span(2, 3)).isEqualTo("2 to 3 mm");
    assertThat(INCHES.span(2, 3)).isEqualTo("1/16 to 1/8 in");
  }

  /** Sheets and liners: in mm, and in inches in 64ths too. */
  @Test
  void aThinSheetIsToldInBothUnits() {
    assertThat(INCHES.thin(1.5875)).isEqualTo("1/16 in (1.6 mm)");
    assertThat(INCHES.thin(2.4)).isEqualTo("3/32 in (2.4 mm)");
    assertThat(INCHES.thin(0.3)).isEqualTo("1/64 in (0.3 mm)");
    assertThat(INCHES.thin(0.1)).isEqualTo("0.1 mm");
    assertThat(MM.thin(1.6)).isEqualTo("1.6 mm");
  }
}
