package org.midlateral.recipe.rigidity;

import java.util.List;
import java.util.Locale;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.joint.JointMoment;

/**
 * The orders of troughs that an order's own is compared with, all of them for one and the same
 * moment.
 *
 * @param own the order with that moment stated
 * @param pulpEnd station of the finger's end (mm)
 */
record ComparedOrders(Order own, double pulpEnd) {

  /** What an order is compared with. */
  static ComparedOrders of(Order order) {
    DigitSurface digit = TapedDigit.of(order.measurements());
    Order stated = Variant.moment(order, JointMoment.of(order, digit));
    return new ComparedOrders(stated, digit.pulpEnd());
  }

  /**
   * An order that differs in one choice.
   *
   * @param words for it
   */
  record ChangedOrder(String words, Order order) {}

  /** Another share of the circumference. */
  Order wrap(double wrap) {
    return Variant.wrap(own, wrap);
  }

  /** As short as a cast that leaves the DIP joint free. */
  Order castLength() {
    return Variant.castLength(own, pulpEnd);
  }

  /** One choice changed at a time. */
  List<ChangedOrder> changes() {
    TroughDesign trough = own.design().trough();
    double wall = trough.wall();
    double wrap = trough.wrap();
    boolean covered = trough.distal() == DistalEnd.COVERED;
    return List.of(
        new ChangedOrder(
            String.format(Locale.ROOT, "wall %.1f mm instead of %.1f", wall + 0.4, wall),
            Variant.wall(own, wall + 0.4)),
        new ChangedOrder(
            String.format(Locale.ROOT, "%.2f of the girth instead of %.2f", wrap - 0.05, wrap),
            Variant.wrap(own, wrap - 0.05)),
        new ChangedOrder(
            covered ? "proximal end 5 mm shorter" : "each end 5 mm shorter",
            Variant.shorter(own, 5)));
  }
}
