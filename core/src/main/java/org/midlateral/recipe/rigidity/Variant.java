package org.midlateral.recipe.rigidity;

import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.HoldingDesign.JointDesign;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.joint.JointMoment;

/** Orders that differ from one in a single choice, to compare it with. */
final class Variant {
  /** The shortest tongue that has room for its round edge on every finger (mm). */
  private static final double SHORT_TONGUE = 4;

  private Variant() {}

  /** The trough alone. */
  static Order withoutShell(Order order) {
    return order.withoutDorsalShell();
  }

  /** The trough with its dorsal shell. */
  static Order withShell(Order order) {
    Design design = order.design();
    return order.withDesign(design.withDorsalShell(design.dorsalShell().withMake(true)));
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

  /**
   * As short as a cast that leaves the DIP joint free: from a short tongue at the web to a
   * millimetre before the DIP crease.
   *
   * @param pulpEnd station of the finger's end (mm)
   */
  static Order castLength(Order order, double pulpEnd) {
    Measurements m = order.measurements();
    double end = m.webToPip() + m.pipToDip() - 1;
    return trough(
        order,
        order
            .design()
            .trough()
            .withDistal(DistalEnd.OPEN)
            .withProximalMargin(m.palmarCreaseToWeb() - SHORT_TONGUE)
            .withDistalMargin(pulpEnd - end));
  }

  static Order modulus(Order order, double modulus) {
    Design design = order.design();
    return order.withDesign(design.withMaterial(design.material().withModulus(modulus)));
  }

  /** The same joint stated, so that no change of readings changes it. */
  static Order moment(Order order, JointMoment moment) {
    Design design = order.design();
    JointDesign joint = design.holding().joint();
    JointDesign stated =
        joint.withMoment(moment.atLimit()).withSlope(Math.toRadians(moment.slope()));
    return order.withDesign(design.withHolding(design.holding().withJoint(stated)));
  }

  private static Order trough(Order order, TroughDesign other) {
    return order.withDesign(order.design().withTrough(other));
  }
}
