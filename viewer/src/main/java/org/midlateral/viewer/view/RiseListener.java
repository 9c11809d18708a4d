package org.midlateral.viewer.view;

/** Is told what is done to the rises of a relief in the picture; they are numbered from 0. */
public interface RiseListener {
  /**
   * A new one is wanted.
   *
   * @param station of its middle (mm from the web)
   * @param girth of its middle from the volar midline (mm), positive to the radial side
   */
  void added(double station, double girth);

  /** One is dragged; as for a new one. */
  void moved(int number, double station, double girth);

  /** One is let go where it is. */
  void dropped(int number);

  /** One is to be higher or lower by so many steps. */
  void raised(int number, int steps);

  /** One is to be taken out. */
  void takenOut(int number);
}
