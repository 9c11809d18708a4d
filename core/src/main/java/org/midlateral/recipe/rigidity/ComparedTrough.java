package org.midlateral.recipe.rigidity;

import java.util.List;
import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.Profile;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.Section;
import org.midlateral.mechanics.Sections;
import org.midlateral.mechanics.SupportBlock.Change;
import org.midlateral.mechanics.SupportBlock.Response;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.WornOrthosis;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * One trough of a comparison, made and loaded.
 *
 * @param made the trough alone, as it was made
 * @param wrap share of the circumference; 1 for the closed tube
 * @param pieces the trough, and what closes it, plain and as drawn for a right hand
 * @param solids the same as they are made
 * @param support the three forces on it
 * @param profile its sections along the finger
 * @param atPip its section at the PIP axis
 * @param response how it gives way as a beam
 */
record ComparedTrough(
    Orthosis made,
    double wrap,
    List<Piece> pieces,
    List<Solid> solids,
    ThreePoint support,
    Profile profile,
    Section atPip,
    Response response) {

  ComparedTrough {
    pieces = List.copyOf(pieces);
    solids = List.copyOf(solids);
  }

  /** Makes the trough of an order, alone, and loads it. */
  static ComparedTrough trough(Order order) throws DesignRefused {
    return alone(Orthosis.make(Variant.withoutShell(order)));
  }

  /** Loads the trough of an orthosis, alone. */
  static ComparedTrough alone(Orthosis orthosis) throws DesignRefused {
    Orthosis made = orthosis.alone();
    double wrap = made.order().design().trough().wrap();
    return of(made, wrap, List.of(made.plainTrough()), List.of(made.trough()));
  }

  /** Closes a trough up to the mid-lateral lines dorsally and loads it. */
  static ComparedTrough closed(ComparedTrough half) throws DesignRefused {
    Orthosis made = half.made;
    return of(
        made,
        1,
        List.of(made.plainTrough(), DorsalHalf.piece(made, 0.5)),
        List.of(made.trough(), DorsalHalf.of(made, 0.5)));
  }

  private static ComparedTrough of(
      Orthosis made, double wrap, List<Piece> pieces, List<Solid> solids) throws DesignRefused {
    Interruption.ifInterrupted();
    DigitSurface digit = made.digit();
    Outline outline = made.trough().piece().outline();
    Material material = Material.of(made.order().design().material());
    double moment = JointMoment.of(made.order(), digit).atLimit();
    ThreePoint support = Supports.worn(moment, made.order().design().support(), digit, outline);
    Sections sections = Sections.of(digit, solids);
    Profile profile =
        Profile.of(sections, Joining.BONDED, outline.proximal(), outline.distal(), material);
    return new ComparedTrough(
        made,
        wrap,
        pieces,
        solids,
        support,
        profile,
        sections.at(digit.pipAxis(), Joining.BONDED),
        Response.of(support, profile));
  }

  /** EI at the PIP axis (N·mm²). */
  double bendingAtPip() {
    return profile.bending(atPip);
  }

  /**
   * The trough on its finger.
   *
   * @param body the same trough, factored
   */
  WornOrthosis worn(FactoredShell body) {
    return WornOrthosis.of(made, body, Optional.empty());
  }

  /** How it holds the joint; empty where that has no answer. */
  Optional<JointFigures> joint() {
    return WornOrthosis.figures(made.volar());
  }

  /**
   * The report's line on it as a change of the design.
   *
   * @param words for the change
   * @param joint how it holds the joint; empty where that has no answer
   */
  Change changed(String words, Optional<JointFigures> joint) {
    return Change.of(words, bendingAtPip(), response.extensionLost(), support, joint.orElse(null));
  }

  /** The same of a plastic whose modulus is so many times as large. */
  ComparedTrough withModulus(double factor) {
    Profile other =
        new Profile(profile.panels(), factor * profile.modulus(), factor * profile.shearModulus());
    return new ComparedTrough(
        made, wrap, pieces, solids, support, other, atPip, Response.of(support, other));
  }

  /**
   * The report's line.
   *
   * @param half the same finger's trough up to the mid-lateral lines
   */
  RigidityBlock.Wrap line(ComparedTrough half) {
    Profile.BeamPanel weakest =
        profile.weakest(
            solids.stream().mapToDouble(s -> s.piece().outline().flankStart()).max().orElseThrow(),
            solids.stream().mapToDouble(s -> s.piece().outline().flankEnd()).min().orElseThrow());
    return new RigidityBlock.Wrap(
        wrap,
        bendingAtPip(),
        bendingAtPip() / half.bendingAtPip(),
        profile.torsion(atPip),
        new RigidityBlock.Weakest(weakest.middle(), profile.bending(weakest.section())),
        response.deflectionAtPip(),
        response.extensionLost(),
        null,
        null);
  }
}
