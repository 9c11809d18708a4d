package org.midlateral.measurement;

import java.util.OptionalDouble;

/**
 * What a joint, its skin and a closure are taken to be when it is asked how the orthosis holds the
 * joint. Empty values follow the finger, the closure or the material.
 *
 * @param joint its pull into flexion
 * @param skin soft tissue between skin and bone
 * @param liner of the trough
 * @param bands of the closure
 * @param acrossLayers share of a filament print's modulus across its layers
 * @param creep what is left of the material's modulus after 8 hours at 34 °C, as a share
 */
public record HoldingDesign(
    JointDesign joint,
    SkinDesign skin,
    LinerDesign liner,
    BandDesign bands,
    double acrossLayers,
    OptionalDouble creep) {

  /** The same skin and bands on another joint. */
  public HoldingDesign withJoint(JointDesign other) {
    return new HoldingDesign(other, skin, liner, bands, acrossLayers, creep);
  }

  /** The same joint and bands under another skin. */
  public HoldingDesign withSkin(SkinDesign other) {
    return new HoldingDesign(joint, other, liner, bands, acrossLayers, creep);
  }

  /**
   * A joint.
   *
   * @param moment at the extension limit (N·mm)
   * @param slope by which the moment falls per degree of flexion, at the extension limit (N·mm)
   * @param gauge a reading of a gauge; not used where the moment is stated
   * @param within an angle the joint is to be held within (rad)
   */
  public record JointDesign(
      OptionalDouble moment, OptionalDouble slope, GaugeReading gauge, double within) {
    /** The same joint with a stated moment (N·mm). */
    public JointDesign withMoment(double other) {
      return new JointDesign(OptionalDouble.of(other), slope, gauge, within);
    }

    /** The same joint with a stated slope (N·mm per degree). */
    public JointDesign withSlope(double other) {
      return new JointDesign(moment, OptionalDouble.of(other), gauge, within);
    }
  }

  /**
   * One reading of a gauge; none where a force or a distance is missing.
   *
   * @param force square to the finger (N)
   * @param distance from the PIP axis (mm)
   * @param angle of flexion at which it was read (rad); empty at the extension limit
   */
  public record GaugeReading(OptionalDouble force, OptionalDouble distance, OptionalDouble angle) {}

  /**
   * Skin and what lies under it.
   *
   * @param volar over the proximal and middle phalanx
   * @param pulp volar, past the DIP joint
   * @param side of the finger
   * @param dorsum of the finger
   * @param overJoint thickness over the joints, as a share of that beside them
   * @param friction of skin on the pieces
   */
  public record SkinDesign(
      TissueDesign volar,
      TissueDesign pulp,
      TissueDesign side,
      TissueDesign dorsum,
      double overJoint,
      double friction) {}

  /**
   * Soft tissue: pressure = modulus / stiffening (exp(stiffening strain) - 1).
   *
   * @param modulus kPa
   * @param stiffening 1
   * @param thickness as a share of the finger's mean radius
   */
  public record TissueDesign(double modulus, double stiffening, double thickness) {}

  /**
   * A liner, by the same law.
   *
   * @param modulus kPa
   * @param stiffening 1
   */
  public record LinerDesign(double modulus, double stiffening) {}

  /**
   * Bands of a closure.
   *
   * @param stiffness pull of a wrap, sleeve, tape or strap per stretch and per mm of its width
   *     (N/mm)
   * @param tapeTension a tape is laid with over a dorsal shell (N)
   */
  public record BandDesign(OptionalDouble stiffness, double tapeTension) {}
}
