package org.midlateral.viewer.view;

/** How a part is shown. */
public enum PartVisibility {
  SHOWN("shown"),
  SEE_THROUGH("faint"),
  HIDDEN("hidden");

  private final String title;

  PartVisibility(String title) {
    this.title = title;
  }

  @Override
  public String toString() {
    return title;
  }
}
