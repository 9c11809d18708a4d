package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Concerns;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.Profile;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.RigidityBlock.Figures;
import org.midlateral.mechanics.Sections;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.SupportBlock.Change;
import org.midlateral.mechanics.SupportBlock.Response;
import org.midlateral.mechanics.Supports;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.recipe.Concurrent;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointConcerns;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.WornOrthosis;
import org.midlateral.recipe.rigidity.ComparedOrders.ChangedOrder;
import org.midlateral.recipe.rigidity.Comparison.ComparedChange;
import org.midlateral.work.Interruption;

/** The steps behind {@link Rigidity}. */
public final class RigidityRecipe {
  /** How much of the modulus a softer plastic of the comparison has. */
  private static final double SOFTER = 0.8;

  private final Orthosis orthosis;
  private final Design design;
  private final Material material;
  private final Outline outline;
  private final ThreePoint support;

  private final List<Finding> findings = new ArrayList<>();

  /**
   * Computes all of it.
   *
   * @param wraps shares of the circumference to compare, from 0.2 to 0.6; 1 is the closed tube
   * @throws DesignRefused where the trough has no room for three forces
   */
  public static Rigidity of(Orthosis orthosis, List<Double> wraps) throws DesignRefused {
    return of(orthosis, Comparison.begin(orthosis.order(), wraps, BendOfPieces.BEAMS_AND_ELEMENTS));
  }

  /**
   * Makes an order, and computes all of it: what it is compared with meanwhile.
   *
   * @param wraps shares of the circumference to compare, from 0.2 to 0.6; 1 is the closed tube
   * @param by what the bend of its pieces, and of those compared, is computed by
   * @throws DesignRefused where it cannot be made, or the trough has no room for three forces
   */
  public static Rigidity of(Order order, List<Double> wraps, BendOfPieces by) throws DesignRefused {
    Comparison comparison = Comparison.begin(order, wraps, by);
    try {
      return of(Orthosis.make(order), comparison);
    } finally {
      comparison.cancel();
    }
  }

  /**
   * The same where what it is compared with is on its way.
   *
   * @param comparison of the same order; cancelled where there is no answer
   * @throws DesignRefused where the trough has no room for three forces
   */
  public static Rigidity of(Orthosis orthosis, Comparison comparison) throws DesignRefused {
    try {
      return new RigidityRecipe(orthosis).run(comparison);
    } finally {
      comparison.cancel();
    }
  }

  /**
   * What is found on an orthosis by all of it, in half of the time.
   *
   * @throws DesignRefused where the trough has no room for three forces
   */
  public static List<Finding> findings(Orthosis orthosis, List<Double> wraps) throws DesignRefused {
    return new RigidityRecipe(orthosis).found(wraps);
  }

  private RigidityRecipe(Orthosis orthosis) throws DesignRefused {
    this.orthosis = orthosis;
    this.design = orthosis.order().design();
    this.material = Material.of(design.material());
    this.outline = orthosis.trough().piece().outline();
    JointMoment moment = JointMoment.of(orthosis.order(), orthosis.digit());
    this.support = Supports.worn(moment.atLimit(), design.support(), orthosis.digit(), outline);
  }

  private Rigidity run(Comparison comparison) throws DesignRefused {
    FactoredPieces bodies = HeldPieces.factored(orthosis, findings);
    // The longest first, so that in the end little is left to wait for.
    Concurrent<ComparedTrough> ownTrough = Concurrent.begin(() -> ComparedTrough.alone(orthosis));
    Optional<Concurrent<ComparedWrap>> closed =
        comparison.wraps().contains(1.0)
            ? Optional.of(
                Concurrent.begin(
                    () -> closed(half(ownTrough.end(), comparison), bodies, comparison.by())))
            : Optional.empty();
    Concurrent<HeldPieces> holding =
        Concurrent.begin(
            () ->
                comparison.by() == BendOfPieces.BEAMS
                    ? HeldPieces.forFindings(orthosis, bodies, support)
                    : HeldPieces.of(orthosis, bodies, support));
    Concurrent<OwnJoint> ownJoint = Concurrent.begin(() -> ownJoint(ownTrough, bodies.trough()));
    JointOutcome joint = joint(bodies, true);
    Interruption.ifInterrupted();
    Map<Joining, Profile> both = both();
    Optional<Profile> bonded = Optional.ofNullable(both.get(Joining.BONDED));
    Optional<Profile> slipping = Optional.ofNullable(both.get(Joining.SLIPPING));
    ownTrough.help();
    closed.ifPresent(Concurrent::help);
    holding.help();
    ownJoint.help();
    comparison.help();
    ComparedTrough own = ownTrough.end();
    OwnJoint alone = ownJoint.end();
    ComparedTrough half = half(own, comparison);
    List<Finding> refused = new ArrayList<>();
    Map<Double, ComparedWrap> others = others(closed, comparison, refused);
    HeldPieces held = holding.end();
    concerns(held, own, half);
    findings.addAll(refused);
    List<ComparedWrap> compared =
        comparison.wraps().stream()
            .filter(wrap -> wrap == own.wrap() || others.containsKey(wrap))
            .map(
                wrap ->
                    wrap == own.wrap()
                        ? new ComparedWrap(own, bend(own, alone, held, comparison.by()))
                        : others.get(wrap))
            .toList();
    compared.forEach(one -> findings.addAll(one.bend().findings()));
    findings.addAll(joint.findings());
    List<Change> changes = changes(comparison, alone);
    String note = note();
    return new Rigidity(
        orthosis,
        joint.held(),
        support,
        own.profile(),
        bonded,
        slipping,
        new RigidityBlock(
            note,
            material.name(),
            material.modulus(),
            material.sources().get("modulus"),
            materialCautions(),
            stations(own.profile(), bonded, slipping),
            compared.stream().map(one -> one.line(half)).toList()),
        SupportBlock.of(
            note,
            support,
            own.response(),
            bonded.map(profile -> Response.of(support, profile)).orElse(null),
            slipping.map(profile -> Response.of(support, profile)).orElse(null),
            comparison.by() == BendOfPieces.BEAMS ? null : held.block().orElse(null),
            cast(),
            comparison.cast().orElse(null),
            changes),
        compared.stream().map(ComparedWrap::curve).toList(),
        findings);
  }

  /**
   * Those of the other wraps that can be made.
   *
   * @param closed the tube, where that is compared
   * @param refused takes up why the others cannot
   */
  private Map<Double, ComparedWrap> others(
      Optional<Concurrent<ComparedWrap>> closed, Comparison comparison, List<Finding> refused) {
    Map<Double, ComparedWrap> others = new HashMap<>();
    for (double wrap : comparison.wraps()) {
      Interruption.ifInterrupted();
      if (wrap != design.trough().wrap()) {
        try {
          others.put(wrap, wrap == 1 ? closed.orElseThrow().end() : comparison.wrap(wrap));
        } catch (DesignRefused e) {
          refused.add(Comparison.refused(wrap, e));
        }
      }
    }
    return others;
  }

  private List<Change> changes(Comparison comparison, OwnJoint own) throws DesignRefused {
    List<Change> changes = new ArrayList<>();
    for (ComparedChange changed : comparison.changes()) {
      changed.change().ifPresent(changes::add);
      findings.addAll(changed.findings());
    }
    changes.add(own.softer());
    return changes;
  }

  private List<Finding> found(List<Double> wraps) throws DesignRefused {
    FactoredPieces bodies = HeldPieces.factored(orthosis, findings);
    Concurrent<JointOutcome> begun = Concurrent.begin(() -> joint(bodies, false));
    HeldPieces held = HeldPieces.forFindings(orthosis, bodies, support);
    ComparedTrough own = ComparedTrough.alone(orthosis);
    ComparedOrders orders = ComparedOrders.of(orthosis.order());
    ComparedTrough half = own.wrap() == 0.5 ? own : ComparedTrough.trough(orders.wrap(0.5));
    concerns(held, own, half);
    List<ComparedTrough> compared = new ArrayList<>();
    for (double wrap : wraps) {
      Interruption.ifInterrupted();
      try {
        compared.add(
            wrap == own.wrap()
                ? own
                : wrap == 0.5
                    ? half
                    : wrap == 1
                        ? ComparedTrough.closed(half)
                        : ComparedTrough.trough(orders.wrap(wrap)));
      } catch (DesignRefused e) {
        findings.add(Comparison.refused(wrap, e));
      }
    }
    Isotropic isotropic = HeldPieces.isotropic(orthosis.order());
    for (ComparedTrough one : compared) {
      if (one.wrap() != own.wrap() || held.troughShell().isEmpty()) {
        HeldPieces.tryCompared(one, Optional.empty(), isotropic, findings);
      }
    }
    List<Finding> ofChanges = new ArrayList<>();
    for (ChangedOrder changed : orders.changes()) {
      try {
        ComparedTrough.trough(changed.order());
      } catch (DesignRefused e) {
        ofChanges.add(Comparison.refused(changed, e));
      }
    }
    findings.addAll(begun.end().findings());
    findings.addAll(ofChanges);
    return findings;
  }

  /**
   * How the order's own trough holds the joint, alone.
   *
   * @param joint empty where that has no answer
   * @param softer what a softer plastic would do
   */
  private record OwnJoint(Optional<JointFigures> joint, Change softer) {}

  private OwnJoint ownJoint(Concurrent<ComparedTrough> trough, Optional<FactoredShell> body)
      throws DesignRefused {
    Optional<WornOrthosis> worn =
        body.map(factored -> WornOrthosis.of(orthosis.alone(), factored, Optional.empty()));
    Optional<JointFigures> joint = worn.flatMap(WornOrthosis::figures);
    double modulus = material.modulus();
    Change softer =
        trough
            .end()
            .withModulus(SOFTER)
            .changed(
                String.format(
                    Locale.ROOT, "material of %.0f MPa instead of %.0f", SOFTER * modulus, modulus),
                worn.flatMap(w -> w.withModulus(SOFTER).figures()));
    return new OwnJoint(joint, softer);
  }

  /** How the order's own trough bends, where that is known already. */
  private ComparedBend bend(ComparedTrough own, OwnJoint joint, HeldPieces held, BendOfPieces by) {
    return held.troughShell().isPresent()
        ? new ComparedBend(held.troughShell(), joint.joint(), List.of())
        : ComparedBend.of(own, HeldPieces.isotropic(orthosis.order()), by);
  }

  private ComparedWrap closed(ComparedTrough half, FactoredPieces bodies, BendOfPieces by)
      throws DesignRefused {
    ComparedTrough closed = ComparedTrough.closed(half);
    Optional<FingerShell> trough =
        design.trough().wrap() == 0.5
            ? bodies.trough().map(FactoredShell::shell)
            : Optional.empty();
    Isotropic plastic = HeldPieces.isotropic(orthosis.order());
    return new ComparedWrap(closed, ComparedBend.of(closed, trough, plastic, by));
  }

  private static ComparedTrough half(ComparedTrough own, Comparison comparison)
      throws DesignRefused {
    return own.wrap() == 0.5 ? own : comparison.wrap(0.5).trough();
  }

  private void concerns(HeldPieces held, ComparedTrough own, ComparedTrough half) {
    findings.addAll(held.findings());
    double lost =
        held.troughShell()
            .map(shell -> shell.measures().lost())
            .orElse(own.response().extensionLost());
    findings.addAll(Concerns.bend(support.moment(), lost));
    findings.addAll(Concerns.shallow(own.wrap(), own.bendingAtPip(), half.bendingAtPip()));
  }

  private static String note() {
    return Caution.all().stream()
        .filter(caution -> caution.code().equals("estimate"))
        .findFirst()
        .orElseThrow()
        .text();
  }

  private List<String> materialCautions() {
    return Caution.limitedTo(material.name()).stream().map(Caution::text).toList();
  }

  /** Both pieces in every way they may be joined; none where there is one piece. */
  private Map<Joining, Profile> both() {
    if (orthosis.dorsalShell().isEmpty()) {
      return Map.of();
    }
    Sections sections = Sections.of(orthosis.digit(), orthosis.solids());
    List<Joining> ways = List.of(Joining.BONDED, Joining.SLIPPING);
    List<Profile> profiles =
        Profile.of(sections, ways, outline.proximal(), outline.distal(), material);
    return Map.of(ways.get(0), profiles.get(0), ways.get(1), profiles.get(1));
  }

  private static List<RigidityBlock.Station> stations(
      Profile trough, Optional<Profile> bonded, Optional<Profile> slipping) {
    List<RigidityBlock.Station> stations = new ArrayList<>();
    for (int i = 0; i < trough.panels().size(); i++) {
      int at = i;
      stations.add(
          new RigidityBlock.Station(
              trough.panels().get(i).middle(),
              Figures.of(trough, i),
              bonded.map(profile -> Figures.of(profile, at)).orElse(null),
              slipping.map(profile -> Figures.of(profile, at)).orElse(null)));
    }
    return stations;
  }

  /**
   * How the joint is held.
   *
   * @param held empty where that has no answer
   * @param findings on it, or a note of why there is no answer
   */
  private record JointOutcome(Optional<JointHeld> held, List<Finding> findings) {}

  private JointOutcome joint(FactoredPieces bodies, boolean bands) {
    try {
      // Without their factors this tells why there are none.
      boolean factored =
          bodies.trough().isPresent()
              && bodies.dorsalShell().isPresent() == orthosis.plainShell().isPresent();
      WornOrthosis worn =
          factored
              ? WornOrthosis.of(orthosis, bodies.trough().get(), bodies.dorsalShell())
              : WornOrthosis.of(orthosis);
      JointHeld held = bands ? JointHeld.of(worn) : JointHeld.withoutBands(worn);
      return new JointOutcome(Optional.of(held), JointConcerns.of(held));
    } catch (DesignRefused | NotComputable e) {
      String text = "How the joint is held is left out: " + e.getMessage();
      Finding note = Finding.note("joint", null, text, Double.NaN, Double.NaN);
      return new JointOutcome(Optional.empty(), List.of(note));
    }
  }

  private ThreePoint cast() {
    DigitSurface digit = orthosis.digit();
    return Supports.castLength(
            support.moment(),
            design.support(),
            design.trough().wrap(),
            orthosis.order().measurements(),
            digit)
        .orElse(null);
  }
}
