package org.midlateral.recipe.batch;

import java.util.Locale;

/** Rows of invented orders. */
final class InventedOrders {
  static final String HEADER =
      "reference,hand,digit,circumference.proximal-phalanx,circumference.pip,"
          + "circumference.middle-phalanx,circumference.tip,length.palmar-crease-to-web,"
          + "length.web-to-pip,length.pip-to-dip,length.dip-to-tip,dorsal-shell.make,"
          + "print.edge-length";

  private InventedOrders() {}

  /** A row that is made fast: coarse, and of one piece. */
  static String row(String reference, int n) {
    double pip = 54 + n % 10;
    return String.format(
        Locale.ROOT,
        "%s,%s,ring,%.1f,%.1f,%.1f,%.1f,21,24,23,24,no,1.2",
        reference,
        n % 2 == 0 ? "right" : "left",
        0.97 * pip,
        pip,
        0.87 * pip,
        0.75 * pip);
  }
}
