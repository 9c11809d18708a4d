package org.midlateral.document.drawing;

import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Order;

/** Sheets of paper, upright. */
public enum PaperSize {
  /** ISO 216. */
  A4(210, 297),
  /** 8 1/2 by 11 inches. */
  LETTER(215.9, 279.4);

  /** Width and height of the area that every page uses; it fits on either paper (mm). */
  public static final double USED_WIDTH = 190;

  /** See {@link #USED_WIDTH}. */
  public static final double USED_HEIGHT = 260;

  private final double width;
  private final double height;

  PaperSize(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The paper an order asks for, or else the one that is usual where its unit is used. */
  public static PaperSize of(Order order) {
    return switch (order.design().making().paper()) {
      case A4 -> A4;
      case LETTER -> LETTER;
      case AUTO -> usualWith(order.measurements().unit());
    };
  }

  /** The paper that is usual where a unit is used. */
  public static PaperSize usualWith(LengthUnit unit) {
    return unit == LengthUnit.IN ? LETTER : A4;
  }

  /** Width of the sheet (mm). */
  public double width() {
    return width;
  }

  /** Height of the sheet (mm). */
  public double height() {
    return height;
  }
}
