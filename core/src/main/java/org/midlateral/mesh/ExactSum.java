package org.midlateral.mesh;

import java.util.Arrays;

/**
 * A sum of products of doubles held without rounding, as a growing expansion of doubles that do not
 * overlap (J. R. Shewchuk, Adaptive precision floating-point arithmetic and fast robust geometric
 * predicates, Discrete and Computational Geometry 18, 1997, 305-363: Grow-Expansion, Two-Sum).
 * Exact as long as no product over- or underflows, which 32-bit coordinates cannot cause.
 */
public final class ExactSum {
  private double[] terms = new double[32];
  private int count;

  /** Adds one number. */
  public void add(double value) {
    double carry = value;
    int kept = 0;
    for (int i = 0; i < count; i++) {
      double sum = carry + terms[i];
      double part = sum - carry;
      double rest = (carry - (sum - part)) + (terms[i] - part);
      if (rest != 0) {
        terms[kept++] = rest;
      }
      carry = sum;
    }
    if (carry != 0) {
      if (kept == terms.length) {
        terms = Arrays.copyOf(terms, 2 * kept);
      }
      terms[kept++] = carry;
    }
    count = kept;
  }

  /** Adds a·b. */
  public void addProduct(double a, double b) {
    double high = a * b;
    add(high);
    add(Math.fma(a, b, -high));
  }

  /** Adds a·b·c. */
  public void addProduct(double a, double b, double c) {
    double high = a * b;
    addProduct(high, c);
    addProduct(Math.fma(a, b, -high), c);
  }

  /** Adds a·b·c·d. */
  public void addProduct(double a, double b, double c, double d) {
    double high = a * b;
    addProduct(high, c, d);
    addProduct(Math.fma(a, b, -high), c, d);
  }

  /** -1, 0 or 1: the sign of the largest term, which outweighs all the others. */
  public int sign() {
    return count == 0 ? 0 : (int) Math.signum(terms[count - 1]);
  }
}
