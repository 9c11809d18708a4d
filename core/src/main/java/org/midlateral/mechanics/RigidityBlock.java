package org.midlateral.mechanics;

import java.util.List;
import org.midlateral.json.ReportPart;
import org.midlateral.mechanics.JointBlock.JointFigures;

/**
 * The report's block on rigidity. Lengths in mm, areas in mm², second moments and torsion constants
 * in mm⁴, EI and GJ in N·mm², moduli in MPa, angles in degrees.
 *
 * @param note that all figures are estimates
 * @param material its name in the material table
 * @param modulus Young's modulus (MPa)
 * @param modulusSource where that comes from
 * @param materialCautions what is to be said of this material beside its figures
 * @param stations proximal to distal
 * @param wraps the same finger's trough from shallow to closed
 */
public record RigidityBlock(
    String note,
    String material,
    double modulus,
    String modulusSource,
    List<String> materialCautions,
    List<Station> stations,
    List<Wrap> wraps) {

  public RigidityBlock {
    materialCautions = List.copyOf(materialCautions);
    stations = List.copyOf(stations);
    wraps = List.copyOf(wraps);
  }

  /**
   * The sections at a station. Where there is no dorsal shell, bonded and slipping are null and
   * left out of the file.
   *
   * @param station mm
   * @param trough alone
   * @param bonded trough and dorsal shell as one section: the upper bound
   * @param slipping trough and dorsal shell each for itself: the lower bound
   */
  public record Station(double station, Figures trough, Figures bonded, Figures slipping)
      implements ReportPart {}

  /**
   * What a section is worth.
   *
   * @param area mm²
   * @param secondMoment about the medio-lateral axis (mm⁴)
   * @param torsion torsion constant (mm⁴)
   * @param bendingRigidity EI (N·mm²)
   * @param torsionalRigidity GJ (N·mm²)
   */
  public record Figures(
      double area,
      double secondMoment,
      double torsion,
      double bendingRigidity,
      double torsionalRigidity)
      implements ReportPart {

    @Override
    public String jsonName(String component) {
      return switch (component) {
        case "secondMoment" -> "I";
        case "torsion" -> "J";
        case "bendingRigidity" -> "EI";
        case "torsionalRigidity" -> "GJ";
        default -> component;
      };
    }

    /**
     * Those of one panel of a profile.
     *
     * @param panel counted from proximal, from 0
     */
    public static Figures of(Profile profile, int panel) {
      Section section = profile.panels().get(panel).section();
      return new Figures(
          section.moments().area(),
          section.moments().aboutY(),
          section.torsion(),
          profile.bending(section),
          profile.torsion(section));
    }
  }

  /**
   * One wrap of the comparison.
   *
   * @param wrap share of the circumference; 1 is the closed tube
   * @param bendingAtPip EI at the PIP axis (N·mm²)
   * @param relativeToHalf that over the same at a wrap of 0.5
   * @param torsionalAtPip GJ at the PIP axis (N·mm²)
   * @param weakest least EI where the flanks are whole, between tongue and distal corners
   * @param deflectionAtPip bend of the piece as a beam (mm)
   * @param extensionLost bend of the piece as a beam (degrees)
   * @param joint how the trough alone holds the joint; null where that was not computed
   * @param finiteElements its bend by shell finite elements; null where they were not run
   */
  public record Wrap(
      double wrap,
      double bendingAtPip,
      double relativeToHalf,
      double torsionalAtPip,
      Weakest weakest,
      double deflectionAtPip,
      double extensionLost,
      JointFigures joint,
      WrapByShell finiteElements)
      implements ReportPart {

    @Override
    public String jsonName(String component) {
      return switch (component) {
        case "bendingAtPip" -> "EIatPip";
        case "torsionalAtPip" -> "GJatPip";
        default -> component;
      };
    }

    /** The same with how the joint is held. */
    public Wrap with(JointFigures held) {
      return new Wrap(
          wrap,
          bendingAtPip,
          relativeToHalf,
          torsionalAtPip,
          weakest,
          deflectionAtPip,
          extensionLost,
          held,
          finiteElements);
    }

    /** The same with what the finite elements found. */
    public Wrap with(WrapByShell found) {
      return new Wrap(
          wrap,
          bendingAtPip,
          relativeToHalf,
          torsionalAtPip,
          weakest,
          deflectionAtPip,
          extensionLost,
          joint,
          found);
    }
  }

  /**
   * The weakest section.
   *
   * @param station mm
   * @param bendingRigidity EI (N·mm²)
   */
  public record Weakest(double station, double bendingRigidity) implements ReportPart {
    @Override
    public String jsonName(String component) {
      return component.equals("bendingRigidity") ? "EI" : component;
    }
  }

  /**
   * What shell finite elements find under the same load.
   *
   * @param deflectionAtPip mm
   * @param extensionLost degrees
   * @param rimOpening change of the distance between the rims at the PIP axis (mm)
   * @param note what is to be said beside the figures; null where there is nothing
   */
  public record WrapByShell(
      double deflectionAtPip, double extensionLost, double rimOpening, String note)
      implements ReportPart {}
}
