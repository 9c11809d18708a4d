package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Refusals;
import org.midlateral.piece.BridgedStretch;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.shell.DorsumGap;
import org.midlateral.solid.Solid;
import org.midlateral.solid.SolidMesher;
import org.midlateral.work.Interruption;

/**
 * One order made, with every stage on the way: measurements, digit surface, outline, trough,
 * relief, dorsal shell, solids. The stages are drawn as for a right hand; on a left hand the pieces
 * and solids are their mirror images.
 *
 * @param order what was asked for
 * @param digit the skin
 * @param relief its bubbles, on the right hand's frame
 * @param bare the volar piece before its reliefs, on the right hand's frame
 * @param plainTrough the volar piece with its reliefs, before label and vents, on the same frame
 * @param plainShell the dorsal piece before label and vents, on the same frame, where one is made
 * @param trough the volar piece as it is printed
 * @param dorsalShell the dorsal piece as it is printed, where one is made
 * @param shellRefused why there is no dorsal piece, where one was asked for and cannot be made; all
 *     the rest is then as if none had been asked for
 */
public record Orthosis(
    Order order,
    DigitSurface digit,
    Relief relief,
    Piece bare,
    Piece plainTrough,
    Optional<Piece> plainShell,
    Solid trough,
    Optional<Solid> dorsalShell,
    Optional<Finding> shellRefused) {

  /**
   * Makes an order: the whole job, up to the solids. The trough is not withheld for the shell's
   * sake.
   *
   * @throws DesignRefused where the trough has no room on this finger
   */
  public static Orthosis make(Order order) throws DesignRefused {
    return make(order, 1);
  }

  /**
   * Makes an order with finer meshes.
   *
   * @param fineness 1 as usual; less makes all triangles so much smaller
   * @throws DesignRefused where the trough has no room on this finger
   */
  public static Orthosis make(Order order, double fineness) throws DesignRefused {
    Interruption.ifInterrupted();
    Design design = order.design();
    VolarStages volar = VolarStages.of(order);
    DigitSurface digit = volar.digit();
    Relief relief = volar.relief();
    Piece bare = volar.bare();
    Piece plainTrough = volar.plain();
    Finish finish = new Finish(order, relief);
    Optional<Piece> plainShell = Optional.empty();
    Optional<Finding> refused = Optional.empty();
    if (design.dorsalShell().make()) {
      try {
        plainShell = Optional.of(DorsalShell.of(design, digit, bare, plainTrough, relief));
      } catch (DesignRefused e) {
        refused = Optional.of(e.finding());
      }
    }
    Interruption.ifInterrupted();
    Concurrent<Solid> trough =
        Concurrent.begin(() -> solid(finish.trough(plainTrough), order, fineness));
    Optional<Solid> shell = Optional.empty();
    if (plainShell.isPresent()) {
      try {
        shell = Optional.of(solid(finish.dorsalShell(plainShell.get()), order, fineness));
      } catch (DesignRefused e) {
        plainShell = Optional.empty();
        refused = Optional.of(e.finding());
      }
    }
    return new Orthosis(
        order, digit, relief, bare, plainTrough, plainShell, trough.end(), shell, refused);
  }

  /** That the dorsal piece which was asked for is missing, and why. */
  public Optional<Finding> missing() {
    return shellRefused.map(why -> Refusals.shellMissing(why, order.design().closure().kind()));
  }

  /**
   * The same without its dorsal piece.
   *
   * @param why it is refused
   */
  public Orthosis withoutShell(Finding why) {
    return trough(order, Optional.of(why));
  }

  /** The stages up to its volar piece. */
  public VolarStages volar() {
    return new VolarStages(order, digit, relief, bare, plainTrough);
  }

  /** The trough, as if no dorsal piece had been asked for. */
  public Orthosis alone() {
    return trough(order.withoutDorsalShell(), Optional.empty());
  }

  private Orthosis trough(Order asked, Optional<Finding> why) {
    return new Orthosis(
        asked, digit, relief, bare, plainTrough, Optional.empty(), trough, Optional.empty(), why);
  }

  private static Solid solid(Piece piece, Order order, double fineness) throws DesignRefused {
    Solid solid = SolidMesher.mesh(piece, order.design().print().edgeLength(), fineness);
    return order.measurements().hand() == Hand.LEFT ? solid.mirrored() : solid;
  }

  /** Reliefs that add up, where the pieces leave the skin, a label and vents without room. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    relief.addingUp().ifPresent(findings::add);
    solids().forEach(solid -> findings.addAll(bridged(solid.piece())));
    dorsalShell.flatMap(shell -> raised(shell.piece())).ifPresent(findings::add);
    Finish finish = new Finish(order, relief);
    finish.shortened(plainTrough).ifPresent(findings::add);
    plainShell.flatMap(finish::shortened).ifPresent(findings::add);
    plainShell.flatMap(finish::wordless).ifPresent(findings::add);
    ventless(trough, order.design().trough().vents()).ifPresent(findings::add);
    dorsalShell
        .flatMap(shell -> ventless(shell, order.design().dorsalShell().vents()))
        .ifPresent(findings::add);
    return findings;
  }

  /** What is raised on each piece that bears a label, by its name. */
  public Map<String, String> labels() {
    Map<String, String> labels = new LinkedHashMap<>();
    Finish finish = new Finish(order, relief);
    finish.labelText(plainTrough).ifPresent(text -> labels.put(plainTrough.name(), text));
    plainShell.ifPresent(
        shell -> finish.labelText(shell).ifPresent(text -> labels.put(shell.name(), text)));
    return labels;
  }

  private static List<Finding> bridged(Piece piece) {
    return BridgedStretch.of(piece).stream()
        .map(
            b ->
                Finding.note(
                    "bridges-bend",
                    null,
                    String.format(
                        Locale.ROOT,
                        "The %s bridges a bend that its wall cannot follow, %.0f to %.0f mm from"
                            + " the web: there it stands up to %.2f mm further off the skin.",
                        piece.name().replace('-', ' '),
                        b.from(),
                        b.to(),
                        b.rise()),
                    b.rise(),
                    Double.NaN))
        .toList();
  }

  /** A shell that leaves the dorsum since the step over the trough's rims has no room. */
  private Optional<Finding> raised(Piece shell) {
    double asked = order.design().dorsalShell().clearance();
    double made = DorsumGap.of(shell).min();
    if (made < asked + BridgedStretch.TOLD) {
      return Optional.empty();
    }
    String text =
        String.format(
            Locale.ROOT,
            "The dorsal shell stands %.2f mm off the back of the finger instead of %.2f: between"
                + " its steps over the trough's rims there is too little girth to come nearer.",
            made,
            asked);
    return Optional.of(
        Finding.caution("dorsum-raised", "dorsal-shell.clearance", text, made, asked));
  }

  private static Optional<Finding> ventless(Solid solid, Design.VentDesign asked) {
    if (asked.diameter() == 0 || solid.piece().outline().polygon().getNumInteriorRing() > 0) {
      return Optional.empty();
    }
    String name = solid.piece().name();
    String key = name + ".vents.diameter";
    String text =
        String.format(
            Locale.ROOT,
            "The %s has no vents: clear of edges, reliefs, label and PIP joint there is no room for"
                + " any of %.1f mm. Change %s, or leave vents out.",
            name.replace('-', ' '),
            asked.diameter(),
            key);
    return Optional.of(Finding.caution("no-vents", key, text, asked.diameter(), Double.NaN));
  }

  /** The solids made: the trough, and the dorsal shell where there is one. */
  public List<Solid> solids() {
    List<Solid> solids = new ArrayList<>(List.of(trough));
    dorsalShell.ifPresent(solids::add);
    return solids;
  }
}
