package org.midlateral.viewer.view;

/**
 * Is told what is done to the rises of a relief in the picture. Those that stand one by one are
 * numbered from 0; {@link #PAIR} is the pair over the collateral ligaments, which is one.
 */
public interface RiseListener {
  /** Number of the pair. */
  int PAIR = -1;

  /**
   * A new one is wanted.
   *
   * @param station of its middle (mm from the web)
   * @param girth of its middle from the volar midline (mm), positive to the radial side
   */
  void added(double station, double girth);

  /** One is dragged; as for a new one. */
  void moved(int number, double station, double girth);

  /**
   * The pair is dragged round the finger, both of it alike; along the finger it lies at the PIP
   * axis.
   *
   * @param offset of either middle, volar of the mid-lateral line (mm)
   */
  void pairMoved(double offset);

  /** One is let go where it is. */
  void dropped(int number);

  /** One is to be higher or lower by so many steps. */
  void raised(int number, int steps);

  /** One is to be taken out. */
  void takenOut(int number);
}
