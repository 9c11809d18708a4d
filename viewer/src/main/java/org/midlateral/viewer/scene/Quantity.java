package org.midlateral.viewer.scene;

/** What the pieces can be coloured by. */
public enum Quantity {
  NONE("Plain", "", "", false, false),
  CLEARANCE("Clearance to the skin", "mm", "clearance", false, false),
  WALL("Wall thickness", "mm", "wall", true, false),
  RIGIDITY("Rigidity EI, piece alone", "N·mm²", "EI", false, false),
  PRESSURE("Pressure on the skin", "kPa", "pressure", true, false),
  STRAIN_TROUGH("Strain, trough alone", "%", "strain", true, true),
  STRAIN_PAIR("Strain, both bonded", "%", "strain", true, true);

  private final String title;
  private final String unit;
  private final String word;
  private final boolean slow;
  private final boolean signed;

  Quantity(String title, String unit, String word, boolean slow, boolean signed) {
    this.title = title;
    this.unit = unit;
    this.word = word;
    this.slow = slow;
    this.signed = signed;
  }

  /** Whether it is the more the further it is from zero, to either side. */
  public boolean isSigned() {
    return signed;
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
