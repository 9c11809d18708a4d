package org.midlateral;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Room;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.file.Template;

/** Invented fingers and plain designs for the tests. */
public final class Fingers {
  private Fingers() {}

  /** An invented right ring finger whose PIP joint stands out by 4 mm. */
  public static Measurements ring() {
    return ring(0);
  }

  /** The same finger with an extension deficit (rad). */
  public static Measurements ring(double deficit) {
    return new Measurements(
        "test-ring",
        Hand.RIGHT,
        Digit.RING,
        LengthUnit.MM,
        Map.of(
            Level.PROXIMAL_PHALANX, 62.0,
            Level.PIP, 66.0,
            Level.MIDDLE_PHALANX, 56.0,
            Level.TIP, 48.0),
        Map.of(),
        21,
        24,
        23,
        24,
        deficit,
        0,
        2.5,
        7.5,
        Map.of(),
        Room.NONE);
  }

  /** An invented slim right little finger, held straight. */
  public static Measurements slim() {
    return new Measurements(
        "test-slim",
        Hand.RIGHT,
        Digit.LITTLE,
        LengthUnit.MM,
        Map.of(
            Level.PROXIMAL_PHALANX, 47.0,
            Level.PIP, 48.0,
            Level.MIDDLE_PHALANX, 42.0,
            Level.TIP, 37.0),
        Map.of(),
        17,
        18,
        17,
        21,
        0,
        0,
        2.5,
        7.5,
        Map.of(),
        Room.NONE);
  }

  /** An order for a finger that has no design keys and no remark. */
  public static Order order(Measurements measurements) {
    return new Order(measurements, design(), Optional.empty());
  }

  /** The design that a file without design keys gets. */
  public static Design design() {
    return design(false);
  }

  /** The same for a sore joint, which has its pair of reliefs. */
  public static Design sore() {
    return design(true);
  }

  private static Design design(boolean sore) {
    return new Design(
        trough(0.5, Design.DistalEnd.OPEN),
        new Design.ReliefDesign(Design.Make.AUTO, sore, 1, 8, 6, 3, List.of()),
        new Design.DorsalShellDesign(
            true,
            OptionalDouble.empty(),
            4,
            0.3,
            0.5,
            OptionalDouble.empty(),
            new Design.VentDesign(0, 8)),
        new Design.ClosureDesign(Design.ClosureKind.WRAP, 25, OptionalDouble.of(1), 2, 0.5, 30),
        new Design.MaterialDesign(
            "pa12",
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        new Design.PrintDesign(Design.ProcessDesign.POWDER, 0.8, false, Design.ProximalSign.MARK),
        new Design.SupportDesign(OptionalDouble.empty(), 8, 8),
        Orders.parse(Template.text(LengthUnit.MM), "template.yaml", List.of())
            .order()
            .design()
            .holding(),
        new Design.MakingDesign(Design.Making.AUTO, Design.Paper.AUTO));
  }

  /** A usual trough with this wrap and distal end. */
  public static Design.TroughDesign trough(double wrap, Design.DistalEnd distal) {
    return new Design.TroughDesign(
        wrap, 1.6, 0.3, 0, 3, 3, distal, 4, 4, 0.8, 5, new Design.VentDesign(0, 8));
  }
}
