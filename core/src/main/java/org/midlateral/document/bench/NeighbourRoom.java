package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Room;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.solid.Solid;

/**
 * What the pieces add to the finger's width beside the PIP joint, against the room measured there.
 *
 * @param radial from the skin to the outside on the radial side (mm)
 * @param ulnar the same on the ulnar side (mm)
 * @param measured the room up to the neighbouring fingers
 */
public record NeighbourRoom(double radial, double ulnar, Room measured) {

  /** Measures the pieces as they are made. */
  public static NeighbourRoom of(
      Measurements measurements, DigitSurface digit, List<Solid> solids) {
    SectionPlane plane = SectionPlane.at(digit, digit.pipAxis());
    double low = 0;
    double high = 0;
    for (Solid solid : solids) {
      for (Loop loop : MeshCut.of(solid.mesh()).at(plane)) {
        for (int i = 0; i < loop.size(); i++) {
          low = Math.min(low, loop.y(i));
          high = Math.max(high, loop.y(i));
        }
      }
    }
    // From the finger as it was measured: what was allowed for swelling takes room as well.
    double tape = digit.circumference(digit.pipAxis());
    double skin =
        digit.slice(digit.pipAxis()).halfWidth() * (tape - measurements.room().swelling()) / tape;
    boolean right = measurements.hand() == Hand.RIGHT;
    return new NeighbourRoom(
        (right ? high : -low) - skin, (right ? -low : high) - skin, measurements.room());
  }

  /** A caution for each side that has less room than the pieces take. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    tight("radial", radial, measured.radial(), findings);
    tight("ulnar", ulnar, measured.ulnar(), findings);
    return findings;
  }

  private static void tight(
      String side, double takes, OptionalDouble room, List<Finding> findings) {
    if (room.isPresent() && takes > room.getAsDouble()) {
      String text =
          String.format(
              Locale.ROOT,
              "The pieces add %.1f mm on the %s side of the PIP joint, where only %.1f mm of room"
                  + " were measured: they push the fingers apart. What helps: a thinner wall,"
                  + " less overlap or relief, or no dorsal shell.",
              takes,
              side,
              room.getAsDouble());
      findings.add(
          Finding.caution("neighbour-tight", "room." + side, text, takes, room.getAsDouble()));
    }
  }
}
