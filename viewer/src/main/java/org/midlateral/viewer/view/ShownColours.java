package org.midlateral.viewer.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;

/**
 * Designs in colours that fit what is seen of them: parts that are hidden have no say, and two
 * designs side by side have one scale.
 *
 * @param now of the design that is made
 * @param kept of the one beside it; plain where there is none
 */
record ShownColours(Colouring now, Colouring kept) {
  static final ShownColours PLAIN = new ShownColours(Colouring.PLAIN, Colouring.PLAIN);

  /** The same in the colours of the scale that fits. */
  ShownColours fitted(DesignShapes design, Optional<DesignShapes> beside, DisplayChoice choice) {
    List<double[]> seen = new ArrayList<>();
    add(design, now, choice, seen);
    beside.ifPresent(other -> add(other, kept, choice, seen));
    if (seen.isEmpty()) {
      return this;
    }
    Scale scale = now.quantity().scale(seen);
    return new ShownColours(on(now, scale), on(kept, scale));
  }

  private static Colouring on(Colouring colouring, Scale scale) {
    boolean same = colouring.quantity() == Quantity.NONE || scale.equals(colouring.scale());
    return same ? colouring : colouring.on(scale);
  }

  private static void add(
      DesignShapes design, Colouring colouring, DisplayChoice choice, List<double[]> seen) {
    for (int i = 0; i < colouring.values().size(); i++) {
      ViewPart part = design.pieces().get(i).isDorsal() ? ViewPart.SHELL : ViewPart.TROUGH;
      if (choice.of(part) != PartVisibility.HIDDEN) {
        seen.add(colouring.values().get(i));
      }
    }
  }

  /** Whether both are coloured, by the same. */
  boolean areTwo() {
    return kept.quantity() != Quantity.NONE && kept.quantity() == now.quantity();
  }
}
