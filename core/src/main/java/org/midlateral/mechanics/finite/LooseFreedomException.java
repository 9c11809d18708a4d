package org.midlateral.mechanics.finite;

/** The constraints leave the shell, or a part of it, free to move without strain. */
public final class LooseFreedomException extends RuntimeException {
  private static final long serialVersionUID = 1;

  LooseFreedomException(int freedom) {
    super(
        "the shell is not held: node %d can move freely %s; hold six freedoms that stop every rigid motion of each connected piece"
            .formatted(
                freedom / Freedom.COUNT,
                Freedom.values()[freedom % Freedom.COUNT]
                    .name()
                    .toLowerCase(java.util.Locale.ROOT)
                    .replace('_', ' ')));
  }
}
