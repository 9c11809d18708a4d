package org.midlateral.mechanics.finite;

/**
 * One freedom of one node that is prescribed.
 *
 * @param node number of the node
 * @param freedom which of its six
 * @param value the displacement (mm) or rotation (rad) it takes
 */
public record Constraint(int node, DegreeOfFreedom freedom, double value) {
  public Constraint {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a prescribed displacement must be finite");
    }
  }

  /** A freedom held at zero. */
  public static Constraint fixed(int node, DegreeOfFreedom freedom) {
    return new Constraint(node, freedom, 0);
  }
}
