package org.midlateral.mechanics.joint;

import java.util.List;

/**
 * What an orthosis does for a joint. An estimate, for comparison of designs; it clears none for
 * use. Angles in degrees, forces in N, moments in N·mm, pressures in MPa, energies in N·mm.
 *
 * @param angle flexion beyond the angle that was asked for, at which the joint is held; {@link
 *     #FARTHEST} where it is not held at all
 * @param split what the angle comes from
 * @param moment of the joint at that angle
 * @param friction by how much friction may hold it less or more flexed: half of the band
 * @param patches pressure on the skin under the pieces
 * @param strips of the closure, from proximal
 * @param spot the largest pressure on a single patch or strip
 * @param worst the places that are pressed most, by their mean pressure over 1 cm², the largest
 *     first
 * @param resultants the three forces on the finger
 * @param energy where it is stored
 * @param grip what the skin's grip keeps the pieces from sliding along the finger with
 * @param search how the answer was found
 */
public record JointAnswer(
    double angle,
    AngleSplit split,
    double moment,
    double friction,
    List<PatchPressure> patches,
    List<StripPull> strips,
    PressurePeak spot,
    List<PressurePeak> worst,
    Resultants resultants,
    EnergyTerms energy,
    double grip,
    Search search) {

  /** A joint that would flex farther (degrees) is not held; the model does not follow it there. */
  public static final double FARTHEST = 30;

  public JointAnswer {
    patches = List.copyOf(patches);
    strips = List.copyOf(strips);
    worst = List.copyOf(worst);
  }

  /** The largest mean pressure over 1 cm². */
  public PressurePeak squareCentimetre() {
    return worst.get(0);
  }

  /** Whether the joint is held at all. */
  public boolean held() {
    return angle < FARTHEST;
  }

  /** Whether the joint is held within an angle (degrees) of that asked for. */
  public boolean holdsWithin(double degrees) {
    return angle <= degrees;
  }

  /**
   * What an angle comes from, in degrees; the four add up to it. Each is what the joint goes
   * farther once this, too, gives way, in this order.
   *
   * @param play gaps closed, with everything rigid and the closure as it was laid
   * @param skin soft tissue and liner squeezed
   * @param closure the closure stretched
   * @param plastic the pieces bent; below 0 where bending closes a gap
   */
  public record AngleSplit(double play, double skin, double closure, double plastic) {
    /** The whole angle (degrees). */
    public double sum() {
      return play + skin + closure + plastic;
    }
  }

  /**
   * Pressure of a piece on a patch of skin.
   *
   * @param dorsalShell whether the dorsal shell presses, not the trough
   * @param station mm
   * @param girth from the volar midline, positive to radial (mm)
   * @param side of the finger
   * @param area of skin (mm²)
   * @param pressure 0 where it does not touch (MPa)
   */
  public record PatchPressure(
      boolean dorsalShell, double station, double girth, Side side, double area, double pressure) {}

  /**
   * A strip of the closure.
   *
   * @param from its proximal edge (mm)
   * @param to its distal edge (mm)
   * @param tension of a whole band there (N)
   * @param area of bare skin under it (mm²)
   * @param pressure on that skin (MPa)
   */
  public record StripPull(double from, double to, double tension, double area, double pressure) {}

  /**
   * A largest pressure.
   *
   * @param pressure MPa
   * @param by what presses
   * @param station mm
   * @param side of the finger
   */
  public record PressurePeak(double pressure, PressedBy by, double station, Side side) {}

  /** What presses on skin. */
  public enum PressedBy {
    TROUGH,
    DORSAL_SHELL,
    CLOSURE
  }

  /**
   * The three forces on the finger that hold its joint, what presses back at the same station taken
   * off.
   *
   * @param proximal toward dorsal, past the joint's proximal side
   * @param middle toward volar, over the joint: the sum of the other two
   * @param distal toward dorsal, past the joint's distal side
   */
  public record Resultants(Resultant proximal, Resultant middle, Resultant distal) {}

  /**
   * A force.
   *
   * @param force N
   * @param arm from the PIP axis to where it acts (mm); of the middle one positive to distal
   */
  public record Resultant(double force, double arm) {}

  /**
   * Energies.
   *
   * @param skin under the pieces
   * @param closure with the skin under it
   * @param plastic in the pieces
   */
  public record EnergyTerms(double skin, double closure, double plastic) {}

  /**
   * A search for equilibrium.
   *
   * @param laying steps until the closure lay
   * @param holding steps from there until the joint was held
   * @param imbalance largest force out of balance, as a share of the largest
   */
  public record Search(int laying, int holding, double imbalance) {}

  /** A quarter of the finger's round. Of a left hand's finger too, radial is toward the thumb. */
  public enum Side {
    VOLAR,
    RADIAL,
    ULNAR,
    DORSAL;

    /** That of an angle of the skin on a right hand, 0 at the volar midline, positive to radial. */
    static Side of(double angle) {
      double size = Math.abs(angle);
      if (size <= Math.PI / 4) {
        return VOLAR;
      }
      if (size >= 3 * Math.PI / 4) {
        return DORSAL;
      }
      return angle > 0 ? RADIAL : ULNAR;
    }
  }
}
