package org.midlateral.measurement;

/** Which hand; +y is radial on a right hand and ulnar on a left hand. */
public enum Hand {
  RIGHT,
  LEFT
}
