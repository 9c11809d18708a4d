package org.midlateral.recipe.rigidity;

import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Order;

/** Orders that differ from one in a single choice, to compare it with. */
final class Variant {
  private Variant() {}

  /** The trough alone. */
  static Order withoutShell(Order order) {
    return order.withoutDorsalShell();
  }

  static Order wrap(Order order, double wrap) {
    return trough(order, order.design().trough().withWrap(wrap));
  }

  static Order wall(Order order, double wall) {
    return trough(order, order.design().trough().withWall(wall));
  }

  /**
   * Both margins larger, so that both ends are shorter; of a covered tip the proximal one alone.
   */
  static Order shorter(Order order, double by) {
    TroughDesign t = order.design().trough();
    return trough(
        order,
        t.withProximalMargin(t.proximalMargin() + by).withDistalMargin(t.distalMargin() + by));
  }

  static Order modulus(Order order, double modulus) {
    Design design = order.design();
    return order.withDesign(design.withMaterial(design.material().withModulus(modulus)));
  }

  /** The same finger pulling with this moment (N·mm). */
  static Order moment(Order order, double moment) {
    Design design = order.design();
    return order.withDesign(design.withSupport(design.support().withMoment(moment)));
  }

  private static Order trough(Order order, TroughDesign other) {
    return order.withDesign(order.design().withTrough(other));
  }
}
