package org.midlateral.mechanics.finite;

/**
 * A patch of the shell in the tree of nested dissection.
 *
 * @param left one half, or null for a smallest patch
 * @param right the other half, or null
 * @param leftPlaces for each outer freedom of the left half its place among {@code freedoms}
 * @param rightPlaces the same for the right half
 * @param triangles of a smallest patch; else empty
 * @param trianglePlaces for each freedom that each triangle touches its place among {@code
 *     freedoms}, -1 where prescribed
 * @param freedoms the patch's unknowns: first its own, which no triangle outside touches and no
 *     half has eliminated, then the outer ones that it shares
 * @param own number of its own unknowns
 */
record Front(
    Front left,
    Front right,
    int[] leftPlaces,
    int[] rightPlaces,
    int[] triangles,
    int[] trianglePlaces,
    int[] freedoms,
    int own) {

  boolean smallest() {
    return left == null;
  }

  int size() {
    return freedoms.length;
  }
}
