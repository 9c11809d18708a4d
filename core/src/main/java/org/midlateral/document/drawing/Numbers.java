package org.midlateral.document.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Coordinates as the text of a file. */
final class Numbers {
  private Numbers() {}

  /** To a tenth of a micrometre, with a point and without idle zeros. */
  static String text(double millimetres) {
    BigDecimal rounded = BigDecimal.valueOf(millimetres).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
