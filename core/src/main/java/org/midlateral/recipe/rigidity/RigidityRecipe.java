package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.cut.Outline;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.DistalEnd;
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
import org.midlateral.mechanics.held.HeldAnswer;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.recipe.Concurrent;
import org.midlateral.recipe.Interruption;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointConcerns;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.WornOrthosis;
import org.midlateral.recipe.rigidity.Rigidity.Curve;

/** The steps behind {@link Rigidity}. */
public final class RigidityRecipe {
  /** How much of the modulus a softer plastic of the comparison has. */
  private static final double SOFTER = 0.8;

  private final Orthosis orthosis;
  private final Design design;
  private final Material material;
  private final Outline outline;
  private final ThreePoint support;

  /** The order, with the moment stated, so that every variant bears the same. */
  private final Order loaded;

  private final List<Finding> findings = new ArrayList<>();

  /**
   * Computes all of it.
   *
   * @param wraps shares of the circumference to compare, from 0.2 to 0.6; 1 is the closed tube
   * @throws DesignRefused where the trough has no room for three forces
   */
  public static Rigidity of(Orthosis orthosis, List<Double> wraps) throws DesignRefused {
    return new RigidityRecipe(orthosis).run(wraps);
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
    this.loaded = Variant.moment(orthosis.order(), moment);
  }

  private Rigidity run(List<Double> wraps) throws DesignRefused {
    Optional<FactoredShell> body = HeldPieces.factored(orthosis, findings);
    Concurrent<JointOutcome> begun = Concurrent.begin(() -> joint(body, true));
    ComparedTrough own = ComparedTrough.alone(orthosis);
    Profile trough = own.profile();
    boolean shell = orthosis.dorsalShell().isPresent();
    Optional<Profile> bonded = shell ? both(Joining.BONDED) : Optional.empty();
    Optional<Profile> slipping = shell ? both(Joining.SLIPPING) : Optional.empty();
    Interruption.ifInterrupted();
    HeldPieces held = HeldPieces.of(orthosis, body, support);
    Interruption.ifInterrupted();
    ComparedTrough half = half(own);
    concerns(held, own, half);
    Optional<WornOrthosis> alone = body.flatMap(own::worn);
    List<ComparedTrough> compared = compare(wraps, half);
    Concurrent<Sensitivity> changed = Concurrent.begin(() -> sensitivity(own, alone));
    Concurrent<Optional<JointFigures>> asCast = Concurrent.begin(this::castJoint);
    List<ComparedBend> bends = bends(compared, own, held, alone);
    bends.forEach(bend -> findings.addAll(bend.findings()));
    // What is waited for first is done here where nobody has begun it.
    JointFigures castJoint = asCast.end().orElse(null);
    Sensitivity sensitivity = changed.end();
    JointOutcome joint = begun.end();
    findings.addAll(joint.findings());
    findings.addAll(sensitivity.findings());
    String note = note();
    return new Rigidity(
        orthosis,
        joint.held(),
        support,
        trough,
        bonded,
        slipping,
        new RigidityBlock(
            note,
            material.name(),
            material.modulus(),
            material.sources().get("modulus"),
            materialCautions(),
            stations(trough, bonded, slipping),
            lines(compared, half, bends)),
        SupportBlock.of(
            note,
            support,
            own.response(),
            bonded.map(profile -> Response.of(support, profile)).orElse(null),
            slipping.map(profile -> Response.of(support, profile)).orElse(null),
            held.block().orElse(null),
            cast(),
            castJoint,
            sensitivity.changes()),
        curves(compared, bends),
        findings);
  }

  private List<Finding> found(List<Double> wraps) throws DesignRefused {
    Optional<FactoredShell> body = HeldPieces.factored(orthosis, findings);
    Concurrent<JointOutcome> begun = Concurrent.begin(() -> joint(body, false));
    HeldPieces held = HeldPieces.forFindings(orthosis, body, support);
    ComparedTrough own = ComparedTrough.alone(orthosis);
    ComparedTrough half = half(own);
    concerns(held, own, half);
    Isotropic isotropic = HeldPieces.isotropic(loaded);
    for (ComparedTrough one : compare(wraps, half)) {
      if (one.wrap() != own.wrap() || held.troughShell().isEmpty()) {
        HeldPieces.tryCompared(one, isotropic, findings);
      }
    }
    List<Finding> ofChanges = new ArrayList<>();
    for (Changed changed : changes()) {
      changed.made(ofChanges);
    }
    findings.addAll(begun.end().findings());
    findings.addAll(ofChanges);
    return findings;
  }

  private ComparedTrough half(ComparedTrough own) throws DesignRefused {
    boolean halfWrap = design.trough().wrap() == 0.5;
    return halfWrap ? own : ComparedTrough.trough(Variant.wrap(loaded, 0.5));
  }

  private void concerns(HeldPieces held, ComparedTrough own, ComparedTrough half) {
    findings.addAll(held.findings());
    double lost =
        held.trough().map(HeldAnswer::extensionLost).orElse(own.response().extensionLost());
    findings.addAll(Concerns.bend(support.moment(), lost));
    findings.addAll(Concerns.shallow(own.wrap(), own.bendingAtPip(), half.bendingAtPip()));
  }

  /** Those of the wraps compared, side by side. */
  private List<ComparedBend> bends(
      List<ComparedTrough> compared,
      ComparedTrough own,
      HeldPieces held,
      Optional<WornOrthosis> alone) {
    Isotropic plastic = HeldPieces.isotropic(loaded);
    return compared.parallelStream()
        .map(
            one -> {
              // Where it is the order's own trough its bend is known.
              boolean same = one.wrap() == own.wrap() && held.troughShell().isPresent();
              return same
                  ? new ComparedBend(
                      held.troughShell(), alone.flatMap(WornOrthosis::figures), List.of())
                  : ComparedBend.of(one, plastic);
            })
        .toList();
  }

  private static List<RigidityBlock.Wrap> lines(
      List<ComparedTrough> compared, ComparedTrough half, List<ComparedBend> bends) {
    List<RigidityBlock.Wrap> lines = new ArrayList<>();
    for (int i = 0; i < compared.size(); i++) {
      ComparedBend bend = bends.get(i);
      RigidityBlock.Wrap line = compared.get(i).line(half).with(bend.joint().orElse(null));
      lines.add(bend.shell().map(shell -> HeldPieces.beside(line, shell)).orElse(line));
    }
    return lines;
  }

  private static List<Curve> curves(List<ComparedTrough> compared, List<ComparedBend> bends) {
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < compared.size(); i++) {
      ComparedTrough one = compared.get(i);
      curves.add(
          new Curve(one.wrap(), one.solids(), one.support(), one.profile(), bends.get(i).shell()));
    }
    return curves;
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

  private Optional<Profile> both(Joining joining) {
    Sections sections = Sections.of(orthosis.digit(), orthosis.solids());
    return Optional.of(
        Profile.of(sections, joining, outline.proximal(), outline.distal(), material));
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

  private List<ComparedTrough> compare(List<Double> wraps, ComparedTrough half) {
    List<ComparedTrough> compared = new ArrayList<>();
    for (double wrap : wraps) {
      Interruption.ifInterrupted();
      try {
        compared.add(
            wrap == 0.5
                ? half
                : wrap == 1
                    ? ComparedTrough.closed(half)
                    : ComparedTrough.trough(Variant.wrap(loaded, wrap)));
      } catch (DesignRefused e) {
        findings.add(
            Finding.note(
                "wrap-not-compared",
                "trough.wrap",
                String.format(
                    Locale.ROOT,
                    "A trough over %.2f of the girth cannot be compared: %s",
                    wrap,
                    e.getMessage()),
                wrap,
                Double.NaN));
      }
    }
    return compared;
  }

  /**
   * How the joint is held.
   *
   * @param held empty where that has no answer
   * @param findings on it, or a note of why there is no answer
   */
  private record JointOutcome(Optional<JointHeld> held, List<Finding> findings) {}

  private JointOutcome joint(Optional<FactoredShell> trough, boolean bands) {
    try {
      // Without its factor this tells why there is none.
      WornOrthosis worn =
          trough.isPresent() ? WornOrthosis.of(orthosis, trough.get()) : WornOrthosis.of(orthosis);
      JointHeld held = bands ? JointHeld.of(worn) : JointHeld.withoutBands(worn);
      return new JointOutcome(Optional.of(held), JointConcerns.of(held));
    } catch (DesignRefused | NotComputable e) {
      String text = "How the joint is held is left out: " + e.getMessage();
      Finding note = Finding.note("joint", null, text, Double.NaN, Double.NaN);
      return new JointOutcome(Optional.empty(), List.of(note));
    }
  }

  private Optional<JointFigures> castJoint() {
    try {
      Order cast = Variant.castLength(loaded, orthosis.digit().pulpEnd());
      return WornOrthosis.figures(Orthosis.make(Variant.withoutShell(cast)));
    } catch (DesignRefused e) {
      return Optional.empty();
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

  /**
   * What changes of the design would do.
   *
   * @param findings on those that cannot be made
   */
  private record Sensitivity(List<Change> changes, List<Finding> findings) {}

  private Sensitivity sensitivity(ComparedTrough own, Optional<WornOrthosis> alone) {
    Sensitivity told = new Sensitivity(new ArrayList<>(), new ArrayList<>());
    for (Changed changed : changes()) {
      changed
          .made(told.findings)
          .ifPresent(made -> told.changes.add(change(changed.words, made, made.joint())));
    }
    double modulus = material.modulus();
    told.changes.add(
        change(
            String.format(
                Locale.ROOT, "material of %.0f MPa instead of %.0f", SOFTER * modulus, modulus),
            own.withModulus(SOFTER),
            alone.flatMap(worn -> worn.withModulus(SOFTER).figures())));
    return told;
  }

  /**
   * Another order that differs in one choice.
   *
   * @param words for it
   */
  private record Changed(String words, Order order) {
    /** Its trough; a change that cannot be made is left out, with a note. */
    Optional<ComparedTrough> made(List<Finding> findings) {
      try {
        return Optional.of(ComparedTrough.trough(order));
      } catch (DesignRefused e) {
        String text = "Not compared, " + words + ": " + e.getMessage();
        findings.add(Finding.note("change-not-compared", null, text, Double.NaN, Double.NaN));
        return Optional.empty();
      }
    }
  }

  private List<Changed> changes() {
    double wall = orthosis.trough().piece().wall();
    double wrap = design.trough().wrap();
    boolean covered = design.trough().distal() == DistalEnd.COVERED;
    return List.of(
        new Changed(
            String.format(Locale.ROOT, "wall %.1f mm instead of %.1f", wall + 0.4, wall),
            Variant.wall(loaded, wall + 0.4)),
        new Changed(
            String.format(Locale.ROOT, "%.2f of the girth instead of %.2f", wrap - 0.05, wrap),
            Variant.wrap(loaded, wrap - 0.05)),
        new Changed(
            covered ? "proximal end 5 mm shorter" : "each end 5 mm shorter",
            Variant.shorter(loaded, 5)));
  }

  private static Change change(String words, ComparedTrough made, Optional<JointFigures> joint) {
    return Change.of(
        words,
        made.bendingAtPip(),
        made.response().extensionLost(),
        made.support(),
        joint.orElse(null));
  }
}
