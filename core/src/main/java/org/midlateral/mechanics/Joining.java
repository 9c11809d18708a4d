package org.midlateral.mechanics;

/**
 * How pieces that lie on one another act together. Two pieces taped together are neither bonded nor
 * loose: their rigidity lies between the two.
 */
public enum Joining {
  /** As one section: the upper bound. */
  BONDED,
  /** Each bends about its own centroid: the lower bound. */
  SLIPPING
}
