package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.Conformance.Spot;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Refusals;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.piece.Piece;
import org.midlateral.relief.ReliefBubble;
import org.midlateral.solid.SkinMesh;
import org.midlateral.solid.Solid;

/**
 * What is measured on an orthosis before anything of it is written.
 *
 * @param trough the volar piece
 * @param dorsalShell the dorsal piece, where one was made
 * @param together whether the two go together
 * @param perimeters perimeter of the skin's mesh cut at each taped level (mm), G1
 * @param findings a refusal for each invariant that does not hold
 */
public record Inspection(
    PieceInspection trough,
    Optional<PieceInspection> dorsalShell,
    Optional<FitTogether> together,
    Map<Level, Double> perimeters,
    List<Finding> findings) {
  public Inspection {
    perimeters = Map.copyOf(perimeters);
    findings = List.copyOf(findings);
  }

  /** Inspects an orthosis. */
  public static Inspection of(Orthosis made) {
    Design design = made.order().design();
    List<Spot> centres = centres(made);
    Piece volar = made.trough().piece();
    BoundingVolumeHierarchy tree = made.trough().hierarchy();
    PieceInspection trough =
        PieceInspection.of(
            made.trough(),
            tree,
            design.trough().clearance() + design.trough().liner(),
            centres.stream().filter(spot -> covers(volar, spot, volar.wall())).toList());
    Optional<PieceInspection> shell = Optional.empty();
    Optional<FitTogether> together = Optional.empty();
    if (made.dorsalShell().isPresent()) {
      Solid solid = made.dorsalShell().get();
      BoundingVolumeHierarchy over = solid.hierarchy();
      double clearance = design.dorsalShell().clearance();
      List<Spot> dorsal =
          centres.stream()
              .filter(spot -> !covers(volar, spot, 0))
              .filter(spot -> covers(solid.piece(), spot, solid.piece().wall()))
              .toList();
      shell = Optional.of(PieceInspection.of(solid, over, clearance, dorsal));
      together = Optional.of(FitTogether.of(made, tree, solid, over));
    }
    List<Finding> findings = new ArrayList<>();
    Map<Level, Double> perimeters = perimeters(made, findings);
    for (int i = 0; i < centres.size(); i++) {
      Spot spot = centres.get(i);
      if (made.solids().stream().noneMatch(s -> covers(s.piece(), spot, 0))) {
        findings.add(underNothing(made.relief().bubbles().get(i)));
      }
    }
    findings.addAll(trough.findings());
    shell.ifPresent(s -> findings.addAll(s.findings()));
    together.ifPresent(t -> findings.addAll(t.findings(made)));
    return new Inspection(trough, shell, together, perimeters, findings);
  }

  /** The pieces inspected: the trough, and the dorsal shell where there is one. */
  public List<PieceInspection> pieces() {
    List<PieceInspection> pieces = new ArrayList<>(List.of(trough));
    dorsalShell.ifPresent(pieces::add);
    return pieces;
  }

  /** The reliefs' centres on the hand the orthosis was made for. */
  private static List<Spot> centres(Orthosis orthosis) {
    int side = orthosis.order().measurements().hand() == Hand.LEFT ? -1 : 1;
    return orthosis.relief().bubbles().stream()
        .map(b -> new Spot(side * b.girth(), b.station()))
        .toList();
  }

  private static Finding underNothing(ReliefBubble bubble) {
    return Finding.caution(
        "relief-under-nothing",
        "relief.bubbles",
        String.format(
            Locale.ROOT,
            "The centre of a relief, %s and %.1f mm %s from the volar midline, lies under no"
                + " piece. Check relief.bubbles, or relief.volar-offset for the pair.",
            Finding.fromWeb(bubble.station()),
            Math.abs(bubble.girth()),
            bubble.girth() < 0 ? "ulnar" : "radial"),
        Double.NaN,
        Double.NaN);
  }

  /** Whether a spot lies under a piece and at least so far from its edge (mm). */
  private static boolean covers(Piece piece, Spot spot, double inset) {
    Point point =
        piece
            .outline()
            .polygon()
            .getFactory()
            .createPoint(
                new Coordinate(piece.ownGirth(spot.girth(), spot.station()), spot.station()));
    return piece.outline().polygon().contains(point)
        && piece.outline().polygon().getBoundary().distance(point) >= inset;
  }

  private static Map<Level, Double> perimeters(Orthosis orthosis, List<Finding> findings) {
    Measurements measured = orthosis.order().measurements().swollen();
    Map<Level, Double> perimeters = new EnumMap<>(Level.class);
    measured
        .circumference()
        .forEach(
            (level, tape) -> {
              double perimeter = SkinMesh.perimeter(orthosis.digit(), measured.stationOf(level));
              perimeters.put(level, perimeter);
              if (Math.abs(perimeter - tape) > ErrorBudget.TAPE) {
                findings.add(Refusals.circumference(level, perimeter, tape));
              }
            });
    return perimeters;
  }

  /** Whether what speaks against the orthosis is its meshes alone, so that finer ones may do. */
  public boolean mendable() {
    return !ok() && refusals().allMatch(f -> Refusals.OF_THE_MESH.contains(f.code()));
  }

  /**
   * Whether less speaks against this orthosis than against another: first whether it is its mesh
   * alone, then how many refusals there are, then how far the worst is off its limit.
   */
  public boolean isBetterThan(Inspection other) {
    boolean mere = ok() || mendable();
    boolean othersMere = other.ok() || other.mendable();
    if (mere != othersMere) {
      return mere;
    }
    long count = refusals().count();
    long others = other.refusals().count();
    return count == others ? worst() < other.worst() : count < others;
  }

  private Stream<Finding> refusals() {
    return findings.stream().filter(f -> f.severity() == Finding.Severity.REFUSAL);
  }

  /** The largest ratio, either way up, of a refusal's value and limit. */
  private double worst() {
    return refusals()
        .mapToDouble(f -> Math.max(f.value() / f.limit(), f.limit() / f.value()))
        .max()
        .orElse(0);
  }

  /** What speaks first of all against the dorsal shell, or against it beside the trough. */
  public Optional<Finding> refusalOfShell() {
    if (dorsalShell.isEmpty()) {
      return Optional.empty();
    }
    List<Finding> others = trough.findings();
    return refusals()
        .filter(f -> !others.contains(f) && !f.code().equals("circumference"))
        .findFirst();
  }

  /** Whether the orthosis may be written. */
  public boolean ok() {
    return refusals().findAny().isEmpty();
  }
}
