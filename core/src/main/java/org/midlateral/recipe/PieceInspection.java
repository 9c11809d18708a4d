package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.Conformance;
import org.midlateral.inspection.Conformance.Spot;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Refusals;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

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
   */
  static PieceInspection of(
      Solid solid, BoundingVolumeHierarchy tree, double leastGap, List<Spot> centres) {
    Interruption asked = Interruption.current();
    ForkJoinTask<MeshAudit> audit =
        ForkJoinPool.commonPool().submit(() -> asked.during(() -> MeshAudit.of(tree)));
    Conformance conformance = Conformance.of(solid, tree, leastGap, centres);
    double reliefError = 0;
    for (int i = 0; i < centres.size(); i++) {
      Spot spot = centres.get(i);
      double wanted = solid.piece().gap().at(spot.girth(), spot.station());
      reliefError = Math.max(reliefError, Math.abs(conformance.gapAtSpots().get(i) - wanted));
    }
    return new PieceInspection(solid, audit.join(), conformance, reliefError);
  }

  /** A refusal for each invariant that does not hold. */
  List<Finding> findings() {
    List<Finding> found = new ArrayList<>();
    String name = solid.piece().name();
    if (!audit.sound()) {
      found.add(Refusals.surface(name, audit.selfIntersections()));
      // What else is measured on a folded surface says nothing more.
      return found;
    }
    double leastWall = ErrorBudget.LEAST_WALL * solid.piece().wall();
    if (conformance.minWall() < leastWall) {
      found.add(Refusals.wall(name, conformance.minWall(), leastWall));
    }
    if (conformance.gapShort() > ErrorBudget.CLEARANCE) {
      found.add(Refusals.clearance(name, conformance.gapShort(), ErrorBudget.CLEARANCE));
    }
    if (reliefError > ErrorBudget.RELIEF) {
      found.add(Refusals.relief(name, reliefError, ErrorBudget.RELIEF));
    }
    double trim = conformance.trimError().orElse(0.0);
    if (trim > ErrorBudget.TRIM) {
      found.add(Refusals.trim(name, trim, ErrorBudget.TRIM));
    }
    if (conformance.chordError() > ErrorBudget.CHORD) {
      found.add(Refusals.chordError(name, conformance.chordError(), ErrorBudget.CHORD));
    }
    double sharp = audit.shape().sharpShare();
    if (sharp > ErrorBudget.SHARP_SHARE) {
      found.add(Refusals.sharpTriangles(name, sharp, ErrorBudget.SHARP_SHARE));
    } else if (audit.minAngle() < ErrorBudget.LEAST_ANGLE) {
      found.add(Refusals.sliver(name, audit.minAngle(), ErrorBudget.LEAST_ANGLE));
    }
    return found;
  }
}
