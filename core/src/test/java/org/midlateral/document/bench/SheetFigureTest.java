package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SheetFigureTest {
  @Test
  void lengthsAreToldToAHundredthAtMost() {
    SheetFigure clearance = new SheetFigure("Least clearance", 0.00903, -0.652, 0.2512, "mm");

    assertThat(clearance.shown()).isEqualTo("0.01 mm");
    assertThat(clearance.band()).isEqualTo("-0.65 to 0.25");
  }

  @Test
  void otherFiguresAreToldToTwoPlacesThatCount() {
    assertThat(new SheetFigure("EI", 0.01443, 0.01, 0.02, "N·m²").shown()).isEqualTo("0.014 N·m²");
    assertThat(new SheetFigure("Moment", 171.6, 0, 0, "N·mm").shown()).isEqualTo("172 N·mm");
    assertThat(new SheetFigure("Lost", 0.184, 0, 0, "°").shown()).isEqualTo("0.18°");
  }
}
