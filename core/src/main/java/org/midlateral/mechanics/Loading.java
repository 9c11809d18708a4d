package org.midlateral.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Forces across a beam, dorsal ones positive, and couples on it.
 *
 * @param forces spread or at points
 * @param couples at points
 */
public record Loading(List<Force> forces, List<Couple> couples) {

  /**
   * A force spread evenly along a length of the beam.
   *
   * @param size of the whole (N)
   * @param station of its middle (mm)
   * @param length 0 for a force at a point (mm)
   */
  public record Force(double size, double station, double length) {}

  /**
   * A couple at a point.
   *
   * @param size positive where it raises the slope that follows (N·mm)
   * @param station of it (mm)
   */
  public record Couple(double size, double station) {}

  public Loading {
    forces = List.copyOf(forces);
    couples = List.copyOf(couples);
  }

  /** Forces alone. */
  public static Loading of(Force... forces) {
    return new Loading(List.of(forces), List.of());
  }

  /**
   * What measures the slope over a length: of a unit of it, the work is the mean slope there, or
   * the rotation of the section where the length is 0.
   *
   * @param sign 1 or -1
   */
  Loading plusSlope(double station, double length, double sign) {
    List<Force> forces = new ArrayList<>(this.forces);
    List<Couple> couples = new ArrayList<>(this.couples);
    if (length > 0) {
      forces.add(new Force(-sign / length, station - length / 2, 0));
      forces.add(new Force(sign / length, station + length / 2, 0));
    } else {
      couples.add(new Couple(sign, station));
    }
    return new Loading(forces, couples);
  }

  /** Shear force at a station (N): the sum of the forces proximal of it. */
  public double shear(double s) {
    double shear = 0;
    for (Force f : forces) {
      double past = s - f.station + f.length / 2;
      shear += past <= 0 ? 0 : past >= f.length ? f.size : f.size * past / f.length;
    }
    return shear;
  }

  /** Bending moment at a station (N·mm): that of the forces and couples proximal of it. */
  public double moment(double s) {
    double moment = 0;
    for (Force f : forces) {
      double past = s - f.station + f.length / 2;
      if (past >= f.length) {
        moment += f.size * (s - f.station);
      } else if (past > 0) {
        moment += f.size * past * past / (2 * f.length);
      }
    }
    for (Couple c : couples) {
      moment += s > c.station ? -c.size : 0;
    }
    return moment;
  }

  /** Stations at which shear or moment change their law (mm). */
  double[] knots() {
    return DoubleStream.concat(
            forces.stream()
                .flatMapToDouble(
                    f -> DoubleStream.of(f.station - f.length / 2, f.station + f.length / 2)),
            couples.stream().mapToDouble(Couple::station))
        .toArray();
  }
}
