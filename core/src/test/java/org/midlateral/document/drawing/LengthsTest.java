package org.midlateral.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.midlateral.measurement.LengthUnit;

class LengthsTest {

  @Test
  void inchesAreSixteenthsInLowestTerms() {
    Lengths inches = new Lengths(LengthUnit.IN);
    assertThat(inches.text(25.4 * 2.4375)).isEqualTo("2 7/16");
    assertThat(inches.text(25.4 * 0.5)).isEqualTo("1/2");
    assertThat(inches.text(25.4)).isEqualTo("1");
    assertThat(inches.text(0)).isEqualTo("0");
    // Half a sixteenth is 0.79 mm.
    assertThat(inches.text(25.4 + 0.78)).isEqualTo("1");
    assertThat(inches.text(25.4 + 0.81)).isEqualTo("1 1/16");
    assertThat(inches.with(-12.7)).isEqualTo("-1/2 in");
  }

  @Test
  void millimetresHaveTenthsAndCentimetresHundredths() {
    assertThat(new Lengths(LengthUnit.MM).with(62.34)).isEqualTo("62.3 mm");
    assertThat(new Lengths(LengthUnit.CM).with(62.34)).isEqualTo("6.23 cm");
  }

  @Test
  void aThinSheetIsSoldInMillimetres() {
    Lengths inches = new Lengths(LengthUnit.IN);
    assertThat(inches.thin(1.5875)).isEqualTo("1/16 in (1.6 mm)");
    assertThat(inches.thin(0.3)).isEqualTo("0.3 mm");
    assertThat(new Lengths(LengthUnit.MM).thin(1.6)).isEqualTo("1.6 mm");
  }
}
