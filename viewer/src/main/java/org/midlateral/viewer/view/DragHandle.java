package org.midlateral.viewer.view;

import java.awt.Point;

/** Something in a picture that is dragged in place of the picture itself. */
interface DragHandle {
  /** Follows the pointer. */
  void dragTo(Point to);

  /** Stays where it is. */
  void drop();
}
