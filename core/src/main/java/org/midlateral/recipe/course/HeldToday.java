package org.midlateral.recipe.course;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Room;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.WornOrthosis;

/**
 * Which angle the present piece would hold on today's finger, by the joint model. The piece stands
 * for one made on today's skin with the gap that is left there now: its clearance and what the
 * girth fell by, as radius, on the mean of the levels. An estimate.
 *
 * @param angle beyond the angle the piece was made for (degrees)
 * @param gap left between trough and skin, on the mean (mm)
 */
public record HeldToday(double angle, double gap) {
  /** A trough made closer or wider is no order (mm). */
  private static final double WIDEST = 2;

  /**
   * Asks the model.
   *
   * @param present order of the present piece
   * @param today order of today's readings, with today's closure and gauge
   * @return empty where the piece cannot be made so, or the joint is not held at all
   */
  static Optional<HeldToday> of(Order present, Order today) {
    double fall = 0;
    int levels = 0;
    Map<Level, Double> now = today.measurements().circumference();
    for (Map.Entry<Level, Double> made : present.measurements().circumference().entrySet()) {
      fall += made.getValue() - now.getOrDefault(made.getKey(), made.getValue());
      levels++;
    }
    Design.TroughDesign trough = present.design().trough();
    double allowed = present.measurements().room().swelling();
    double gap = trough.clearance() + (fall / levels + allowed) / (2 * Math.PI);
    Measurements worn =
        today
            .measurements()
            .withRoom(Room.NONE)
            .withPipExtensionDeficit(present.measurements().pipExtensionDeficit());
    Design closed =
        new Design(
            trough.withClearance(Math.max(0, Math.min(WIDEST, gap))),
            present.design().relief(),
            present.design().dorsalShell(),
            today.design().closure(),
            present.design().material(),
            present.design().print(),
            present.design().support(),
            today.design().holding(),
            present.design().making());
    try {
      Orthosis made = Orthosis.make(new Order(worn, closed, present.note()));
      return WornOrthosis.figures(made)
          .map(JointFigures::angleHeld)
          .filter(Double::isFinite)
          .map(angle -> new HeldToday(angle, gap));
    } catch (DesignRefused refused) {
      return Optional.empty();
    }
  }

  /** In a sentence. */
  public String sentence(double madeFor) {
    return String.format(
        Locale.ROOT,
        "By the joint model the present piece would hold today's joint at %.0f° (it was made for"
            + " %.0f°, and bends %.1f° beyond it); an estimate, for comparison.",
        madeFor + angle,
        madeFor,
        angle);
  }
}
