package org.midlateral.measurement.course;

import java.util.OptionalDouble;

/**
 * A goniometer's reading of one motion (degrees).
 *
 * @param active by the patient's own strength
 * @param passive by hand
 */
public record MotionReading(OptionalDouble active, OptionalDouble passive) {

  /** What the joint allows: by hand, else by the patient's own strength. */
  public OptionalDouble reached() {
    return passive.isPresent() ? passive : active;
  }

  /** Whether nothing was read. */
  public boolean isEmpty() {
    return active.isEmpty() && passive.isEmpty();
  }
}
