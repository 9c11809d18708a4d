package org.midlateral.mechanics.joint;

import java.util.List;
import org.midlateral.measurement.Design.ClosureDesign;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.mechanics.closure.ClosureLayout;

/**
 * How a closure pulls: one band or many, round finger and pieces.
 *
 * @param width of a band (mm)
 * @param layers lying on one another
 * @param tension a band is laid with (N)
 * @param stiffness pull of a whole band per stretch (N)
 * @param stations middles of the bands (mm); empty where it is wound over the whole length
 */
public record Fastening(
    double width, double layers, double tension, double stiffness, List<Double> stations) {

  public Fastening {
    stations = List.copyOf(stations);
  }

  /**
   * A closure of an order.
   *
   * @param kind which; a strap is laid round the joint even where it is not advised
   * @param laid how it lies along the finger
   * @param axis station of the PIP axis (mm)
   */
  public static Fastening of(
      ClosureKind kind,
      ClosureDesign design,
      HoldingDesign holding,
      ClosureLayout laid,
      double axis) {
    double width = design.width();
    double tension = laid.tension();
    double stiffness = width * holding.bands().stiffness().orElse(usual(kind));
    return switch (kind) {
      case WRAP -> new Fastening(width, laid.layers(), tension, stiffness, List.of());
      case SLEEVE -> new Fastening(width, 1, tension, stiffness, List.of());
      case TAPE -> new Fastening(width, 1, holding.bands().tapeTension(), stiffness, laid.tapes());
      case STRAP -> new Fastening(width, 1, tension, stiffness, List.of(axis));
    };
  }

  /** Pull per stretch and mm of width (N/mm); from memory, as the key table says. */
  private static double usual(ClosureKind kind) {
    return switch (kind) {
      case WRAP -> 0.08;
      case SLEEVE -> 0.04;
      case TAPE -> 16;
      case STRAP -> 12;
    };
  }

  /** How many whole bands lie in a strip from one station to another. */
  double bands(double from, double to) {
    if (stations.isEmpty()) {
      return layers * (to - from) / width;
    }
    double sum = 0;
    for (double middle : stations) {
      double low = Math.max(from, middle - width / 2);
      double high = Math.min(to, middle + width / 2);
      sum += layers * Math.max(0, high - low) / width;
    }
    return sum;
  }

  /** The same laid with another pull (N). */
  public Fastening withTension(double other) {
    return new Fastening(width, layers, other, stiffness, stations);
  }

  /** The same of bands so many times as stiff. */
  Fastening stiffer(double factor) {
    return new Fastening(width, layers, tension, factor * stiffness, stations);
  }
}
