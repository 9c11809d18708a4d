package org.midlateral.mechanics;

import java.util.List;
import org.midlateral.json.ReportPart;
import org.midlateral.mechanics.JointBlock.JointFigures;

/**
 * The report's block on the three forces. Lengths in mm, forces in N, moments in N·mm, pressures in
 * MPa, angles in degrees; deflections as a beam.
 *
 * @param note that all figures are estimates
 * @param moment of the finger about the PIP axis
 * @param leverArms from the PIP axis to the middles of the contact zones
 * @param forces at the three contacts
 * @param pressures means over the projected contact areas
 * @param deflectionAtPip of the trough alone
 * @param extensionLost of the trough alone
 * @param bonded the same with the dorsal shell bonded on; null where there is none
 * @param slipping the same with the dorsal shell slipping; null where there is none
 * @param finiteElements the same by shell finite elements, which see the section close up under the
 *     closure, as beams do not; null where they were not run
 * @param castLength the same design cut as short as a cast; null where it has no room
 * @param sensitivity what a change of the design would do
 */
public record SupportBlock(
    String note,
    double moment,
    LeverArms leverArms,
    Contacts forces,
    Contacts pressures,
    double deflectionAtPip,
    double extensionLost,
    Response bonded,
    Response slipping,
    SupportByShell finiteElements,
    CastLength castLength,
    List<Change> sensitivity)
    implements ReportPart {

  public SupportBlock {
    sensitivity = List.copyOf(sensitivity);
  }

  /** Distances from the PIP axis (mm). */
  public record LeverArms(double proximal, double distal) {
    static LeverArms of(ThreePoint support) {
      return new LeverArms(support.proximalArm(), support.distalArm());
    }
  }

  /** One figure at each of the three contacts. */
  public record Contacts(double proximal, double distal, double pip) {
    static Contacts forces(ThreePoint support) {
      return new Contacts(support.proximalForce(), support.distalForce(), support.pipForce());
    }

    static Contacts pressures(ThreePoint support) {
      return new Contacts(
          support.proximalPressure(), support.distalPressure(), support.pipPressure());
    }
  }

  /**
   * How the pieces give way by shell finite elements.
   *
   * @param trough alone
   * @param bonded with the dorsal shell; null where there is none
   */
  public record SupportByShell(Held trough, Held bonded) implements ReportPart {}

  /**
   * One answer of the finite elements.
   *
   * @param deflectionAtPip mm
   * @param extensionLost degrees
   * @param rimOpening change of the distance between the rims at the PIP axis (mm)
   * @param largestStrain on any surface, as a share, with its sign
   * @param strainStation where it is (mm)
   * @param strainGirth where it is, from the volar midline (mm)
   */
  public record Held(
      double deflectionAtPip,
      double extensionLost,
      double rimOpening,
      double largestStrain,
      double strainStation,
      double strainGirth) {}

  /**
   * How a piece gives way as a beam.
   *
   * @param deflectionAtPip mm
   * @param extensionLost degrees
   */
  public record Response(double deflectionAtPip, double extensionLost) {
    /** That of a profile under the three forces. */
    public static Response of(ThreePoint support, Profile profile) {
      SteppedBeam beam = profile.beam();
      return new Response(support.deflection(beam), Math.toDegrees(support.extensionLost(beam)));
    }
  }

  /**
   * The same moment on a piece that ends at the web and before the DIP crease.
   *
   * @param leverArms mm
   * @param forces N
   * @param pressures MPa
   * @param joint how the trough alone holds the joint; null where that was not computed
   */
  public record CastLength(
      LeverArms leverArms, Contacts forces, Contacts pressures, JointFigures joint)
      implements ReportPart {
    static CastLength of(ThreePoint support, JointFigures joint) {
      return new CastLength(
          LeverArms.of(support), Contacts.forces(support), Contacts.pressures(support), joint);
    }
  }

  /**
   * What one change of the design would do.
   *
   * @param change in words
   * @param bendingAtPip EI at the PIP axis of the trough (N·mm²)
   * @param extensionLost bend of the trough as a beam (degrees)
   * @param forces N
   * @param joint how the trough alone holds the joint; null where that was not computed
   */
  public record Change(
      String change, double bendingAtPip, double extensionLost, Contacts forces, JointFigures joint)
      implements ReportPart {

    @Override
    public String jsonName(String component) {
      return component.equals("bendingAtPip") ? "EIatPip" : component;
    }

    /**
     * A change with the forces it leads to.
     *
     * @param joint or null
     */
    public static Change of(
        String change,
        double bendingAtPip,
        double extensionLost,
        ThreePoint support,
        JointFigures joint) {
      return new Change(change, bendingAtPip, extensionLost, Contacts.forces(support), joint);
    }
  }

  /**
   * The block.
   *
   * @param trough how the trough gives way
   * @param bonded with the dorsal shell, or null
   * @param slipping with the dorsal shell, or null
   * @param elements by finite elements, or null
   * @param cast the design at cast length, or null
   * @param castJoint how that holds the joint, or null
   */
  public static SupportBlock of(
      String note,
      ThreePoint support,
      Response trough,
      Response bonded,
      Response slipping,
      SupportByShell elements,
      ThreePoint cast,
      JointFigures castJoint,
      List<Change> sensitivity) {
    return new SupportBlock(
        note,
        support.moment(),
        LeverArms.of(support),
        Contacts.forces(support),
        Contacts.pressures(support),
        trough.deflectionAtPip(),
        trough.extensionLost(),
        bonded,
        slipping,
        elements,
        cast == null ? null : CastLength.of(cast, castJoint),
        sensitivity);
  }
}
