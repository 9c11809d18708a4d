package org.midlateral.measurement;

/** Units of length a file may be written in. */
public enum LengthUnit {
  MM("mm", 1.0),
  CM("cm", 10.0),
  /** International inch, exactly 25.4 mm (international yard and pound agreement, 1959). */
  IN("in", 25.4);

  private final String symbol;
  private final double millimetres;

  LengthUnit(String symbol, double millimetres) {
    this.symbol = symbol;
    this.millimetres = millimetres;
  }

  public String symbol() {
    return symbol;
  }

  /** The symbol, as files and the command line write the unit. */
  @Override
  public String toString() {
    return symbol;
  }

  /** Millimetres in one of this unit. */
  public double millimetres() {
    return millimetres;
  }
}
