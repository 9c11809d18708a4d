package org.midlateral.viewer.scene;

/** What the pieces can be coloured by. */
public enum Quantity {
  NONE("Plain", "", "", false),
  CLEARANCE("Clearance to the skin", "mm", "clearance", false),
  WALL("Wall thickness", "mm", "wall", true),
  RIGIDITY("Rigidity EI, piece alone", "N·mm²", "EI", false),
  STRAIN_TROUGH("Strain, trough alone", "%", "strain", true),
  STRAIN_PAIR("Strain, both bonded", "%", "strain", true);

  private final String title;
  private final String unit;
  private final String word;
  private final boolean slow;

  Quantity(String title, String unit, String word, boolean slow) {
    this.title = title;
    this.unit = unit;
    this.word = word;
    this.slow = slow;
  }

  /** Whether it takes longer than a frame. */
  public boolean isSlow() {
    return slow;
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
