package org.midlateral.recipe.rigidity;

import java.util.OptionalDouble;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.Design.MaterialDesign;
import org.midlateral.measurement.Design.SupportDesign;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;

/** Orders that differ from one in a single choice, to compare it with. */
final class Variant {
  private Variant() {}

  static Order measured(Order order, Measurements measurements) {
    return new Order(measurements, order.design(), order.note());
  }

  /** The trough alone. */
  static Order withoutShell(Order order) {
    DorsalShellDesign d = order.design().dorsalShell();
    DorsalShellDesign none =
        new DorsalShellDesign(
            false, d.length(), d.overlap(), d.fitGap(), d.clearance(), d.wall(), d.vents());
    return new Order(order.measurements(), order.design().withDorsalShell(none), order.note());
  }

  static Order wrap(Order order, double wrap) {
    TroughDesign t = order.design().trough();
    return trough(order, wrap, t.wall(), t.proximalMargin(), t.distalMargin());
  }

  static Order wall(Order order, double wall) {
    TroughDesign t = order.design().trough();
    return trough(order, t.wrap(), wall, t.proximalMargin(), t.distalMargin());
  }

  /**
   * Both margins larger, so that both ends are shorter; of a covered tip the proximal one alone.
   */
  static Order shorter(Order order, double by) {
    TroughDesign t = order.design().trough();
    return trough(order, t.wrap(), t.wall(), t.proximalMargin() + by, t.distalMargin() + by);
  }

  static Order modulus(Order order, double modulus) {
    MaterialDesign m = order.design().material();
    MaterialDesign other =
        new MaterialDesign(
            m.name(), OptionalDouble.of(modulus), m.poisson(), m.density(), m.allowableStrain());
    return new Order(order.measurements(), order.design().withMaterial(other), order.note());
  }

  /** The same finger pulling with this moment (N·mm). */
  static Order moment(Order order, double moment) {
    SupportDesign s = order.design().support();
    SupportDesign stated =
        new SupportDesign(OptionalDouble.of(moment), s.force(), s.proximalZone(), s.distalZone());
    return new Order(order.measurements(), order.design().withSupport(stated), order.note());
  }

  private static Order trough(
      Order order, double wrap, double wall, double proximalMargin, double distalMargin) {
    TroughDesign t = order.design().trough();
    TroughDesign other =
        new TroughDesign(
            wrap,
            wall,
            t.clearance(),
            t.liner(),
            t.webClearance(),
            proximalMargin,
            t.distal(),
            distalMargin,
            t.corner(),
            t.flare(),
            t.flareWidth(),
            t.vents());
    return new Order(order.measurements(), order.design().withTrough(other), order.note());
  }
}
