package org.midlateral.viewer.view;

/** What can be shown and hidden. */
public enum ViewPart {
  FINGER("Finger"),
  TROUGH("Trough"),
  SHELL("Shell"),
  MARKS("Marks");

  private final String title;

  ViewPart(String title) {
    this.title = title;
  }

  @Override
  public String toString() {
    return title;
  }
}
