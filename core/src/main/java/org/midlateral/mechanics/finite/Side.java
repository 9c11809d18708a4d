package org.midlateral.mechanics.finite;

/** A face of the wall. */
public enum Side {
  /** The face from which the triangle's corners run counter-clockwise. */
  FRONT(0.5),
  BACK(-0.5);

  /** Distance from the mid-surface toward the front as a share of the wall. */
  final double height;

  Side(double height) {
    this.height = height;
  }
}
