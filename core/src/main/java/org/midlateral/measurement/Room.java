package org.midlateral.measurement;

import java.util.OptionalDouble;

/**
 * Room for swelling, and beside the finger.
 *
 * @param swelling added to every girth (mm)
 * @param radial up to the neighbouring finger on the radial side (mm); empty where not measured
 * @param ulnar up to the neighbouring finger on the ulnar side (mm); empty where not measured
 */
public record Room(double swelling, OptionalDouble radial, OptionalDouble ulnar) {
  /** No swelling is allowed for, and no room was measured. */
  public static final Room NONE = new Room(0, OptionalDouble.empty(), OptionalDouble.empty());
}
