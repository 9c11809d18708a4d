package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.held.HeldAnswer;
import org.midlateral.mechanics.held.HeldJoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * The finite elements' answers for one orthosis: its trough alone and the bonded pair.
 *
 * @param troughShell the trough alone; empty where it could not be meshed
 * @param bonded with the dorsal shell bonded on; empty where there is none
 * @param findings notes about what could not be computed
 */
public record HeldPieces(
    Optional<HeldShell> troughShell, Optional<HeldAnswer> bonded, List<Finding> findings) {

  private static final Finding WITHOUT_VENTS =
      Finding.note(
          "finite-elements",
          "trough.vents.diameter",
          "The finite elements leave the vents out: a vented piece gives way more than they say, and"
              + " is strained more beside a vent.",
          Double.NaN,
          Double.NaN);

  /** Edges to be coloured by, times the usual: on those of the figures small places would blur. */
  private static final double COLOURED = 1.3;

  /** How much more it loses is in {@code core/FINITE-ELEMENTS.md}. */
  private static final String OF_HALVES =
      "The closed tube is made of two halves, whose ends have a piece's round rims and rounded"
          + " corners: cut square, as a tube in one piece, it would lose 14 to 19 % less extension"
          + " (samples).";

  public HeldPieces {
    findings = List.copyOf(findings);
  }

  /**
   * The answers.
   *
   * @param bodies its pieces, factored
   */
  static HeldPieces of(Orthosis made, FactoredPieces bodies, ThreePoint support) {
    List<Finding> findings = new ArrayList<>();
    Optional<HeldShell> trough = trough(made, bodies.trough(), support, findings);
    Optional<HeldAnswer> bonded =
        trough.isPresent() && made.dorsalShell().isPresent()
            ? factored(() -> bonded(made, bodies), "", findings)
                .flatMap(pair -> loaded(pair, support, "", findings))
                .map(HeldShell::answer)
            : Optional.empty();
    return new HeldPieces(trough, bonded, findings);
  }

  /** The same with the trough alone solved, which findings need: the rest is but loaded. */
  static HeldPieces forFindings(Orthosis made, FactoredPieces bodies, ThreePoint support) {
    List<Finding> findings = new ArrayList<>();
    Optional<HeldShell> trough = trough(made, bodies.trough(), support, findings);
    if (trough.isPresent() && made.dorsalShell().isPresent()) {
      tried(() -> bonded(made, bodies), support, "", findings);
    }
    return new HeldPieces(trough, Optional.empty(), findings);
  }

  private static Optional<HeldShell> trough(
      Orthosis made, Optional<FactoredShell> body, ThreePoint support, List<Finding> findings) {
    if (leavesVentsOut(made)) {
      findings.add(WITHOUT_VENTS);
    }
    return body.flatMap(b -> loaded(b, support, "", findings));
  }

  /**
   * The pieces of an orthosis, each factored for itself.
   *
   * @param findings take up why the trough cannot be; why the dorsal shell cannot is told with the
   *     joint
   */
  static FactoredPieces factored(Orthosis made, List<Finding> findings) {
    Isotropic plastic = isotropic(made.order());
    return new FactoredPieces(
        factored(() -> FingerShell.alone(made.plainTrough(), plastic), "", findings),
        made.plainShell()
            .flatMap(
                piece -> factored(() -> FingerShell.alone(piece, plastic), "", new ArrayList<>())));
  }

  /** What the trough alone answers. */
  public Optional<HeldAnswer> trough() {
    return troughShell.map(HeldShell::answer);
  }

  /** Whether an orthosis has vents, which are not in what is computed. */
  public static boolean leavesVentsOut(Orthosis made) {
    return made.solids().stream()
        .anyMatch(solid -> solid.piece().outline().polygon().getNumInteriorRing() > 0);
  }

  /**
   * An orthosis under the forces it bears, as drawn for a right hand, on meshes fine enough to be
   * coloured by; empty where it cannot be computed.
   *
   * @param bonded whether its dorsal shell, which it then has, is bonded on; else the trough bears
   *     alone
   * @param findings take up why
   */
  public static Optional<HeldShell> forColours(
      Orthosis made, boolean bonded, ThreePoint support, List<Finding> findings) {
    Isotropic material = isotropic(made.order());
    return factored(
            () -> {
              Solid trough = FingerShell.mesh(made.plainTrough(), COLOURED);
              return bonded
                  ? FingerShell.bonded(
                      trough, FingerShell.mesh(made.plainShell().orElseThrow(), COLOURED), material)
                  : FingerShell.of(trough, material);
            },
            "",
            findings)
        .flatMap(body -> loaded(body, support, "", findings));
  }

  private static FingerShell bonded(Orthosis made, FactoredPieces bodies)
      throws DesignRefused, NotComputable {
    Isotropic plastic = isotropic(made.order());
    return bodies.dorsalShell().isPresent()
        ? FingerShell.bonded(
            bodies.trough().orElseThrow().shell(), bodies.dorsalShell().get().shell(), plastic)
        : FingerShell.bonded(made.plainTrough(), made.plainShell().orElseThrow(), plastic);
  }

  static Isotropic isotropic(Order order) {
    return Isotropic.of(Material.of(order.design().material()));
  }

  /**
   * A wrap of the comparison, factored; empty where it cannot be.
   *
   * @param trough that of a closed tube, where it is meshed for computing already
   * @param findings take up why
   */
  static Optional<FactoredShell> factored(
      ComparedTrough one,
      Optional<FingerShell> trough,
      Isotropic material,
      List<Finding> findings) {
    return factored(() -> mesh(one, trough, material), which(one), findings);
  }

  /**
   * The same under its own forces; empty where it cannot be computed.
   *
   * @param findings take up why
   */
  static Optional<HeldShell> loaded(
      ComparedTrough one, FactoredShell body, List<Finding> findings) {
    return loaded(body, one.support(), which(one), findings);
  }

  /** Why a wrap of the comparison that is factored cannot be computed; not solved. */
  static void tryLoaded(ComparedTrough one, FactoredShell body, List<Finding> findings) {
    tried(body::shell, one.support(), which(one), findings);
  }

  /**
   * Why a wrap of the comparison cannot be computed; not solved.
   *
   * @param trough that of a closed tube, where it is meshed for computing already
   */
  static void tryCompared(
      ComparedTrough one,
      Optional<FingerShell> trough,
      Isotropic material,
      List<Finding> findings) {
    tried(() -> mesh(one, trough, material), one.support(), which(one), findings);
  }

  private static FingerShell mesh(
      ComparedTrough one, Optional<FingerShell> trough, Isotropic material)
      throws DesignRefused, NotComputable {
    Piece plain = one.pieces().get(0);
    if (one.pieces().size() == 1) {
      return FingerShell.alone(plain, material);
    }
    Piece rest = one.pieces().get(1);
    return trough.isPresent()
        ? FingerShell.closed(trough.get(), rest, material)
        : FingerShell.closed(plain, rest, material);
  }

  private static String which(ComparedTrough one) {
    return String.format(Locale.ROOT, "%.2f of the girth: ", one.wrap());
  }

  /** Meshes a shell. */
  private interface Meshing {
    FingerShell mesh() throws DesignRefused, NotComputable;
  }

  private static Optional<FactoredShell> factored(
      Meshing meshing, String which, List<Finding> findings) {
    try {
      Interruption.ifInterrupted();
      FingerShell shell = meshing.mesh();
      Interruption.ifInterrupted();
      return Optional.of(FactoredShell.of(shell));
    } catch (DesignRefused | NotComputable e) {
      findings.add(leftOut(which, e));
      return Optional.empty();
    }
  }

  private static Optional<HeldShell> loaded(
      FactoredShell body, ThreePoint support, String which, List<Finding> findings) {
    try {
      Interruption.ifInterrupted();
      return Optional.of(HeldShell.solve(body, HeldJoint.of(support)));
    } catch (NotComputable e) {
      findings.add(leftOut(which, e));
      return Optional.empty();
    }
  }

  private static void tried(
      Meshing meshing, ThreePoint support, String which, List<Finding> findings) {
    try {
      Interruption.ifInterrupted();
      HeldShell.tryLoad(meshing.mesh(), HeldJoint.of(support));
    } catch (DesignRefused | NotComputable e) {
      findings.add(leftOut(which, e));
    }
  }

  private static Finding leftOut(String which, Exception why) {
    return Finding.note(
        "finite-elements",
        "trough.wrap",
        "The finite element result is left out: " + which + why.getMessage(),
        Double.NaN,
        Double.NaN);
  }

  /** A line of the comparison with what the finite elements find for its wrap. */
  static RigidityBlock.Wrap beside(RigidityBlock.Wrap line, HeldShell held) {
    HeldShell.Measures answer = held.measures();
    return line.with(
        new RigidityBlock.WrapByShell(
            answer.deflection(),
            answer.lost(),
            answer.opening().pip(),
            line.wrap() == 1 ? OF_HALVES : null));
  }

  /** The report's block. */
  Optional<SupportBlock.SupportByShell> block() {
    return trough()
        .map(
            t ->
                new SupportBlock.SupportByShell(
                    held(t), bonded.map(HeldPieces::held).orElse(null)));
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
