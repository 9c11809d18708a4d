package org.midlateral.mechanics;

import java.util.List;
import org.midlateral.json.ReportPart;

/**
 * The report's block on how the joint is held. Angles in degrees of flexion beyond the angle asked
 * for, moments in N·mm, forces in N, pressures in MPa, lengths in mm.
 *
 * @param answer in a line, as it stands in the terminal, on the sheet and in the viewer
 * @param angleHeld at which the joint is held
 * @param of what that comes from
 * @param friction by how much friction may hold it less or more flexed
 * @param moment of the joint at its extension limit
 * @param momentSource where that comes from: stated, gauge or finger
 * @param forces the three that hold the joint, with their true lever arms
 * @param peakPressure the largest mean over 1 cm² of skin
 * @param spotPressure the largest on a single patch of some 9 mm²
 * @param worst the places that are pressed most, by their mean over 1 cm²
 * @param closure whether it has the force
 * @param overnight after 8 hours at 34 °C; null where nothing is known of the material
 * @param puttingOn what pushing the dorsal shell on takes; null where it just drops on
 * @param bands the middle nine tenths under errors of tape, goniometer and constants; null where
 *     they could not be had
 */
public record JointBlock(
    String answer,
    double angleHeld,
    Split of,
    double friction,
    double moment,
    String momentSource,
    Forces forces,
    Peak peakPressure,
    double spotPressure,
    List<Peak> worst,
    ClosureForce closure,
    Overnight overnight,
    Seating puttingOn,
    BandBlock bands)
    implements ReportPart {

  public JointBlock {
    worst = List.copyOf(worst);
  }

  /** What an angle comes from; the four add up to it. */
  public record Split(double play, double skin, double plastic, double closure) {}

  /** The three forces. */
  public record Forces(ArmedForce proximal, ArmedForce pip, ArmedForce distal) {}

  /** A force, and the distance from the PIP axis to where it acts. */
  public record ArmedForce(double force, double leverArm) {}

  /**
   * A pressure and its place.
   *
   * @param value mean over 1 cm²
   * @param part that presses: trough, dorsal-shell or closure
   * @param level the nearest
   * @param side of the finger: volar, radial, ulnar or dorsal
   * @param station from the web
   */
  public record Peak(double value, String part, String level, String side, double station) {}

  /**
   * Whether the closure has the force.
   *
   * @param within the angle the joint is to be held within
   * @param holds whether it is
   * @param tension it is laid with, for each layer
   * @param leastTension with which it would be; null where no pull of it does
   * @param instead other closures of the same pieces, told where this one does not hold
   */
  public record ClosureForce(
      String kind,
      double within,
      boolean holds,
      double tension,
      Double leastTension,
      List<OtherClosure> instead)
      implements ReportPart {
    public ClosureForce {
      instead = List.copyOf(instead);
    }
  }

  /** Another closure of the same pieces. */
  public record OtherClosure(String kind, double tension, double angleHeld) {}

  /**
   * After a night.
   *
   * @param modulusLeft share of the modulus
   * @param modulusSource where that comes from
   * @param band of the angle, by what may be left of the modulus: most and least
   */
  public record Overnight(
      double angleHeld, double modulusLeft, String modulusSource, List<Double> band) {
    public Overnight {
      band = List.copyOf(band);
    }
  }

  /**
   * Putting the dorsal shell on.
   *
   * @param spread by which it must open (mm)
   * @param rimForce on each rim when it is open (N)
   * @param force along the finger (N)
   * @param strain largest in the shell when it is open, as a share
   */
  public record Seating(double spread, double rimForce, double force, double strain) {}

  /**
   * Bands, each a lower and an upper end.
   *
   * @param draws how many
   * @param seed they come from
   */
  public record BandBlock(int draws, long seed, List<Double> angleHeld, List<Double> peakPressure) {
    public BandBlock {
      angleHeld = List.copyOf(angleHeld);
      peakPressure = List.copyOf(peakPressure);
    }
  }

  /**
   * How a design of a comparison holds the joint, in two figures.
   *
   * @param angleHeld degrees of flexion beyond the angle asked for
   * @param peakPressure largest mean over 1 cm² of skin (MPa)
   */
  public record JointFigures(double angleHeld, double peakPressure) {}
}
