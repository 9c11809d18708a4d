package org.midlateral.mechanics.finite;

import org.midlateral.measurement.NotComputable;

/** The constraints leave the shell, or a piece of it, free to move without strain. */
public final class MechanismException extends NotComputable {
  private static final long serialVersionUID = 1;

  MechanismException(int node) {
    super(
        "the shell is not held: the piece around node "
            + node
            + " can move without strain; constrain it against all six rigid motions");
  }
}
