package org.midlateral.viewer.lesson;

/** A round number by which what is too small to see is multiplied. */
final class Exaggeration {
  private Exaggeration() {}

  /** The nearest of 1, 2, 5, 10 and on that is not above a number; 1 at least. */
  static double below(double times) {
    double ten = Math.pow(10, Math.floor(Math.log10(times)));
    double lead = Math.floor(times / ten);
    return Math.max(1, (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * ten);
  }
}
