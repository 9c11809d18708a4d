package org.midlateral.viewer.scene;

/** What the pieces can be coloured by. */
public enum Quantity {
  NONE("Plain", "", ""),
  CLEARANCE("Clearance to the skin", "mm", "clearance"),
  WALL("Wall thickness", "mm", "wall"),
  RIGIDITY("Rigidity EI, piece alone", "N·mm²", "EI");

  private final String title;
  private final String unit;
  private final String word;

  Quantity(String title, String unit, String word) {
    this.title = title;
    this.unit = unit;
    this.word = word;
  }

  /** As a legend is headed. */
  public String title() {
    return title;
  }

  public String unit() {
    return unit;
  }

  /** As a reading begins. */
  public String word() {
    return word;
  }
}
