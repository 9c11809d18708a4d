package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.held.HeldAnswer;
import org.midlateral.mechanics.held.HeldJoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Interruption;
import org.midlateral.recipe.Orthosis;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;

/**
 * The finite elements' answers for one orthosis: its trough alone and the bonded pair.
 *
 * @param trough the trough alone; empty where it could not be meshed
 * @param bonded with the dorsal shell bonded on; empty where there is none
 * @param findings notes about what could not be computed
 */
record HeldPieces(
    Optional<HeldAnswer> trough, Optional<HeldAnswer> bonded, List<Finding> findings) {

  private static final Finding WITHOUT_VENTS =
      Finding.note(
          "finite-elements",
          "trough.vents.diameter",
          "The finite elements leave the vents out: a vented piece gives way more than they say, and"
              + " is strained more beside a vent.",
          Double.NaN,
          Double.NaN);

  HeldPieces {
    findings = List.copyOf(findings);
  }

  static HeldPieces of(Orthosis made, ThreePoint support) {
    List<Finding> findings = new ArrayList<>();
    boolean vented =
        made.solids().stream()
            .anyMatch(solid -> solid.piece().outline().polygon().getNumInteriorRing() > 0);
    if (vented) {
      findings.add(WITHOUT_VENTS);
    }
    Optional<HeldAnswer> trough = Optional.empty();
    Optional<HeldAnswer> bonded = Optional.empty();
    Relief relief = made.relief();
    Piece volar = relief.over(made.bare());
    HeldJoint joint = HeldJoint.of(support);
    Isotropic material = isotropic(made.order());
    try {
      trough = Optional.of(HeldShell.solve(FingerShell.trough(volar, material), joint).answer());
      if (made.dorsalShell().isPresent()) {
        Piece dorsal = DorsalShell.of(made.order().design(), made.digit(), made.bare(), relief);
        bonded =
            Optional.of(
                HeldShell.solve(FingerShell.bonded(volar, dorsal, material), joint).answer());
      }
    } catch (DesignRefused | IllegalArgumentException e) {
      findings.add(notComputed(e.getMessage()));
    }
    return new HeldPieces(trough, bonded, findings);
  }

  static Isotropic isotropic(Order order) {
    Material material = Material.of(order.design().material());
    return new Isotropic(material.modulus(), material.poisson());
  }

  private static Finding notComputed(String why) {
    return Finding.note(
        "finite-elements",
        "trough.wrap",
        "The finite element result is left out: " + why,
        Double.NaN,
        Double.NaN);
  }

  /**
   * A wrap of the comparison under its own forces; empty where it cannot be computed.
   *
   * @param findings take up why
   */
  static Optional<HeldShell> compared(
      ComparedTrough one, Isotropic material, List<Finding> findings) {
    Interruption.ifInterrupted();
    try {
      Piece trough = one.pieces().get(0);
      FingerShell shell =
          one.pieces().size() == 1
              ? FingerShell.trough(trough, material)
              : FingerShell.closed(trough, one.pieces().get(1), material);
      return Optional.of(HeldShell.solve(shell, HeldJoint.of(one.support())));
    } catch (DesignRefused | IllegalArgumentException e) {
      findings.add(
          notComputed(String.format(Locale.ROOT, "wrap %.2f: %s", one.wrap(), e.getMessage())));
      return Optional.empty();
    }
  }

  /** A line of the comparison with what the finite elements find for its wrap. */
  static RigidityBlock.Wrap beside(RigidityBlock.Wrap line, HeldShell held) {
    HeldAnswer answer = held.answer();
    return line.with(
        new RigidityBlock.WrapByShell(
            answer.deflectionAtPip(), answer.extensionLost(), answer.opening().pip()));
  }

  /** The report's block. */
  Optional<SupportBlock.SupportByShell> block() {
    return trough.map(
        t -> new SupportBlock.SupportByShell(held(t), bonded.map(HeldPieces::held).orElse(null)));
  }

  private static SupportBlock.Held held(HeldAnswer answer) {
    return new SupportBlock.Held(
        answer.deflectionAtPip(),
        answer.extensionLost(),
        answer.opening().pip(),
        answer.largestStrain().value(),
        answer.largestStrain().station(),
        answer.largestStrain().girth());
  }
}
