package org.midlateral.viewer.window;

import java.util.Optional;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/**
 * The colouring of a design that stays while another changes, computed once. Confined to one
 * thread.
 */
final class KeptColouring {
  private Optional<DesignShapes> of = Optional.empty();
  private Colouring colouring = Colouring.PLAIN;
  private Quantity quantity = Quantity.NONE;

  /** The colouring of a design; plain for none. */
  Colouring of(Optional<DesignShapes> design, Quantity by) {
    if (quantity != by || !of.equals(design)) {
      of = design;
      quantity = by;
      colouring = design.map(shapes -> Colouring.of(shapes, by)).orElse(Colouring.PLAIN);
    }
    return colouring;
  }
}
