package org.midlateral.mechanics.finite;

/** The six freedoms of a node, in the order in which the arrays hold them. */
public enum DegreeOfFreedom {
  ALONG_X,
  ALONG_Y,
  ALONG_Z,
  ABOUT_X,
  ABOUT_Y,
  ABOUT_Z;

  /** Freedoms of a node. */
  public static final int COUNT = 6;

  /** The place of a node's freedom in an array of 6 numbers a node. */
  int at(int node) {
    return COUNT * node + ordinal();
  }
}
