package org.midlateral.mechanics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.midlateral.measurement.Material;
import org.midlateral.work.Interruption;

/**
 * Sections along the finger, panel by panel, each the section at the panel's middle.
 *
 * @param panels proximal to distal, each beginning where the one before ends
 * @param modulus Young's modulus (MPa)
 * @param shearModulus MPa
 */
public record Profile(List<BeamPanel> panels, double modulus, double shearModulus) {
  private static final double PANEL = 1.0;

  /**
   * A length of the finger taken as uniform.
   *
   * @param from its proximal station (mm)
   * @param to its distal station (mm)
   * @param section in its middle
   */
  public record BeamPanel(double from, double to, Section section) {
    /** Station of its middle (mm). */
    public double middle() {
      return (from + to) / 2;
    }
  }

  public Profile {
    panels = List.copyOf(panels);
  }

  /** The profile between two stations (mm), in panels of about 1 mm. */
  public static Profile of(
      Sections sections, Joining joining, double from, double to, Material material) {
    return of(sections, List.of(joining), from, to, material).get(0);
  }

  /** The same of several ways to join the pieces, cut once. */
  public static List<Profile> of(
      Sections sections, List<Joining> joinings, double from, double to, Material material) {
    int n = Math.max(1, (int) Math.ceil((to - from) / PANEL));
    double length = (to - from) / n;
    List<List<BeamPanel>> panels = joinings.stream().map(way -> newPanels(n)).toList();
    for (int i = 0; i < n; i++) {
      Interruption.ifInterrupted();
      double start = from + i * length;
      List<List<Loop>> loops = sections.loops(start + length / 2);
      for (int k = 0; k < joinings.size(); k++) {
        Section section = Sections.joined(loops, joinings.get(k));
        panels.get(k).add(new BeamPanel(start, start + length, section));
      }
    }
    return panels.stream()
        .map(along -> new Profile(along, material.modulus(), shearModulus(material)))
        .toList();
  }

  private static List<BeamPanel> newPanels(int n) {
    return new ArrayList<>(n);
  }

  /** Shear modulus of an isotropic material (MPa). */
  public static double shearModulus(Material material) {
    return material.modulus() / (2 * (1 + material.poisson()));
  }

  /** Bending rigidity of a section of this material (N·mm²). */
  public double bending(Section section) {
    return modulus * section.moments().aboutY();
  }

  /** Torsional rigidity of a section of this material (N·mm²). */
  public double torsion(Section section) {
    return shearModulus * section.torsion();
  }

  /** The panel of least EI with its middle between two stations (mm). */
  public BeamPanel weakest(double from, double to) {
    return panels.stream()
        .filter(panel -> panel.middle() >= from && panel.middle() <= to)
        .min(Comparator.comparingDouble(panel -> panel.section().moments().aboutY()))
        .orElseThrow();
  }

  /** The piece as a beam. */
  public SteppedBeam beam() {
    int n = panels.size();
    double[] edges = new double[n + 1];
    double[] bending = new double[n];
    double[] shear = new double[n];
    edges[0] = panels.get(0).from();
    for (int i = 0; i < n; i++) {
      BeamPanel panel = panels.get(i);
      edges[i + 1] = panel.to();
      bending[i] = bending(panel.section());
      shear[i] = shearModulus * panel.section().shearArea();
    }
    return new SteppedBeam(edges, bending, shear);
  }
}
