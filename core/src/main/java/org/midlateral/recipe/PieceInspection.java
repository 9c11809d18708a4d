package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.Conformance;
import org.midlateral.inspection.Conformance.Spot;
import org.midlateral.measurement.Finding;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.solid.Solid;

/**
 * What was measured on one solid.
 *
 * @param solid the piece
 * @param audit of its mesh as it stands in a file
 * @param conformance against what it was made to be
 * @param reliefError largest miss of the gap at a relief's centre (mm), G4
 */
public record PieceInspection(
    Solid solid, MeshAudit audit, Conformance conformance, double reliefError) {
  /**
   * Inspects a solid.
   *
   * @param tree over its mesh
   * @param leastGap no point of its inside may be nearer to the skin (mm)
   * @param centres of the reliefs under it
   * @param beside takes what can be done beside the rest
   */
  static PieceInspection of(
      Solid solid,
      BoundingVolumeHierarchy tree,
      double leastGap,
      List<Spot> centres,
      Executor beside) {
    CompletableFuture<MeshAudit> audit =
        CompletableFuture.supplyAsync(() -> MeshAudit.of(tree), beside);
    Conformance conformance = Conformance.of(solid, tree, leastGap, centres);
    double reliefError = 0;
    for (int i = 0; i < centres.size(); i++) {
      Spot spot = centres.get(i);
      double wanted = solid.piece().gap().at(spot.girth(), spot.station());
      reliefError = Math.max(reliefError, Math.abs(conformance.gapAtSpots().get(i) - wanted));
    }
    return new PieceInspection(solid, audit.join(), conformance, reliefError);
  }

  /** Slivers come of a wall whose outside is squeezed together in a hollow, or of few triangles. */
  private static final String UNSQUEEZED =
      "make the wall thinner, lower relief.height or trough.flare, round trough.corner more, or"
          + " choose a smaller print.edge-length.";

  /** Codes of findings that a finer mesh may mend. */
  static final Set<String> MESH_CODES = Set.of("clearance", "chord-error", "sliver", "relief");

  /** A refusal for each invariant that does not hold. */
  List<Finding> findings() {
    List<Finding> found = new ArrayList<>();
    String name = solid.piece().name();
    if (!audit.sound()) {
      found.add(
          refusal(
              "surface",
              name + ".wall",
              "The surface of the %1$s meets itself (%2$.0f places): its wall is too thick, or a"
                  + " relief, the flare or the step over the trough's edge too steep, for the bends"
                  + " of this finger; make %1$s.wall thinner, lower relief.height or trough.flare,"
                  + " or widen relief.length, relief.width or trough.flare-width.",
              name,
              audit.selfIntersections(),
              0));
      // What else is measured on a folded surface says nothing more.
      return found;
    }
    double leastWall = ErrorBudget.LEAST_WALL * solid.piece().wall();
    if (conformance.minWall() < leastWall) {
      found.add(
          refusal(
              "wall",
              name + ".wall",
              "The wall of the %s thins to %.3f mm where at least %.3f mm is wanted; lower"
                  + " relief.height or trough.flare, or widen relief.length, relief.width or"
                  + " trough.flare-width.",
              name,
              conformance.minWall(),
              leastWall));
    }
    if (conformance.gapShort() > ErrorBudget.CLEARANCE) {
      found.add(
          refusal(
              "clearance",
              name + ".clearance",
              "The inside of the %s comes %.3f mm nearer to the skin than asked for, and at most"
                  + " %.2f mm is allowed; choose a smaller print.edge-length.",
              name,
              conformance.gapShort(),
              ErrorBudget.CLEARANCE));
    }
    meshFindings(name, found);
    return found;
  }

  private void meshFindings(String name, List<Finding> found) {
    if (reliefError > ErrorBudget.RELIEF) {
      found.add(
          refusal(
              "relief",
              "relief.height",
              "The gap at a relief's centre in the %s misses its height by %.3f mm, and at most"
                  + " %.2f mm is allowed; widen the relief or choose a smaller print.edge-length.",
              name,
              reliefError,
              ErrorBudget.RELIEF));
    }
    double trim = conformance.trimError().orElse(0.0);
    if (trim > ErrorBudget.TRIM) {
      found.add(
          refusal(
              "trim",
              "print.edge-length",
              "The finished edge of the %s misses the trim line by %.3f mm, and at most %.2f mm is"
                  + " allowed; choose a smaller print.edge-length.",
              name,
              trim,
              ErrorBudget.TRIM));
    }
    if (conformance.chordError() > ErrorBudget.CHORD) {
      found.add(
          refusal(
              "chord-error",
              "print.edge-length",
              "Flat triangles of the %s stand %.4f mm off its true surface, and at most %.2f mm is"
                  + " allowed; widen relief.length, relief.width or trough.flare-width, or choose a"
                  + " smaller print.edge-length.",
              name,
              conformance.chordError(),
              ErrorBudget.CHORD));
    }
    if (audit.shape().sharpShare() > ErrorBudget.SHARP_SHARE) {
      found.add(
          refusal(
              "sliver",
              "print.edge-length",
              "Of the mesh of the %s, %.1f %% of the triangles have an angle under 20 degrees, and"
                  + " at most %.0f %% may; "
                  + UNSQUEEZED,
              name,
              100 * audit.shape().sharpShare(),
              100 * ErrorBudget.SHARP_SHARE));
    } else if (audit.minAngle() < ErrorBudget.LEAST_ANGLE) {
      found.add(
          refusal(
              "sliver",
              "print.edge-length",
              "The mesh of the %s has an angle of %.1f degrees, and at least %.0f is wanted; "
                  + UNSQUEEZED,
              name,
              audit.minAngle(),
              ErrorBudget.LEAST_ANGLE));
    }
  }

  private static Finding refusal(
      String code, String key, String text, String name, double value, double limit) {
    String sentence = String.format(Locale.ROOT, text, name, value, limit);
    return Finding.refusal(code, key, sentence, value, limit);
  }
}
