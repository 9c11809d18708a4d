package org.midlateral.mechanics.finite;

/** A face of the wall. */
public enum WallFace {
  /** The face from which the triangle's corners run counter-clockwise. */
  FRONT(0.5),
  BACK(-0.5);

  /** Distance from the mid-surface toward the front as a share of the wall. */
  public final double height;

  WallFace(double height) {
    this.height = height;
  }
}
