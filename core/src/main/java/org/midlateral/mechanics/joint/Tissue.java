package org.midlateral.mechanics.joint;

import org.midlateral.measurement.HoldingDesign.SkinDesign;
import org.midlateral.measurement.HoldingDesign.TissueDesign;

/**
 * The soft tissue of a finger between skin and bone, by region. Between regions it changes
 * smoothly: round the section with the squares of cosine and sine, along it over a few millimetres.
 *
 * @param skin modulus, stiffening and thickness by region
 * @param pipAxis station of the PIP joint's axis (mm)
 * @param dipAxis station of the DIP joint's axis (mm)
 * @param factor so many times as stiff as stated
 */
record Tissue(SkinDesign skin, double pipAxis, double dipAxis, double factor) {
  /** Half of the length along the finger over which a joint's tissue is thinner (mm). */
  private static final double JOINT_REACH = 8;

  /** Half of the length over which the volar tissue turns into pulp (mm). */
  private static final double PULP_REACH = 4;

  static final double MPA_PER_KPA = 1e-3;

  /**
   * The layer under a point of the skin.
   *
   * @param s its station (mm)
   * @param radius of a circle as long as the skin's section there (mm)
   * @param angle of the point, 0 at the volar midline (rad)
   */
  SoftLayer at(double s, double radius, double angle) {
    double cos = Math.cos(angle);
    TissueDesign volar = mix(skin.volar(), skin.pulp(), step((s - dipAxis) / PULP_REACH));
    TissueDesign here = mix(skin.side(), cos > 0 ? volar : skin.dorsum(), cos * cos);
    double near = Math.max(bump(s - pipAxis), bump(s - dipAxis));
    double thickness = here.thickness() * radius * (1 - (1 - skin.overJoint()) * near);
    return new SoftLayer(factor * MPA_PER_KPA * here.modulus(), here.stiffening(), thickness);
  }

  private static TissueDesign mix(TissueDesign a, TissueDesign b, double share) {
    return new TissueDesign(
        mix(a.modulus(), b.modulus(), share),
        mix(a.stiffening(), b.stiffening(), share),
        mix(a.thickness(), b.thickness(), share));
  }

  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }

  /** 0 before -1, 1 after 1. */
  private static double step(double x) {
    double u = Math.max(-1, Math.min(1, x));
    return (1 + Math.sin(Math.PI * u / 2)) / 2;
  }

  private static double bump(double off) {
    double u = off / JOINT_REACH;
    return Math.abs(u) >= 1 ? 0 : (1 + Math.cos(Math.PI * u)) / 2;
  }

  /** All of it so many times as stiff. */
  Tissue stiffer(double times) {
    return new Tissue(skin, pipAxis, dipAxis, factor * times);
  }
}
