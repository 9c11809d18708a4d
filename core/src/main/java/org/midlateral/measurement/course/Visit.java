package org.midlateral.measurement.course;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.midlateral.measurement.HoldingDesign.GaugeReading;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;

/**
 * What was read at one visit. Everything but its time may be missing.
 *
 * @param time when it was
 * @param deficit by which the PIP joint is short of extension (degrees)
 * @param pipFlexion how far the PIP joint bends (degrees)
 * @param dipFlexion how far the DIP joint bends (degrees)
 * @param circumference by level (mm)
 * @param hoursWorn a night
 * @param skin and soreness
 * @param tension with which the closure was laid (N)
 * @param layers of a wrap
 * @param gauge a reading of a gauge (N, mm, rad)
 * @param piece what was done to the piece
 * @param note a remark
 */
public record Visit(
    VisitTime time,
    MotionReading deficit,
    MotionReading pipFlexion,
    MotionReading dipFlexion,
    Map<Level, Double> circumference,
    OptionalDouble hoursWorn,
    SkinReading skin,
    OptionalDouble tension,
    OptionalInt layers,
    GaugeReading gauge,
    PieceWork piece,
    Optional<String> note) {

  public Visit {
    Map<Level, Double> copy = new EnumMap<>(Level.class);
    copy.putAll(circumference);
    circumference = Collections.unmodifiableMap(copy);
  }

  /** A first visit with what an order's finger was measured by. */
  public static Visit first(Measurements measured, VisitTime time) {
    OptionalDouble none = OptionalDouble.empty();
    MotionReading nothing = new MotionReading(none, none);
    return new Visit(
        time,
        new MotionReading(none, OptionalDouble.of(degrees(measured.pipExtensionDeficit()))),
        nothing,
        nothing,
        measured.circumference(),
        none,
        new SkinReading(Optional.empty(), Optional.empty(), none, Optional.empty()),
        none,
        OptionalInt.empty(),
        new GaugeReading(none, none, none),
        PieceWork.NONE,
        Optional.empty());
  }

  /** Without the tail that comes of turning degrees into radians and back. */
  private static double degrees(double radians) {
    return Math.rint(Math.toDegrees(radians) * 1e9) / 1e9;
  }
}
