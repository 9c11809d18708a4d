package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.inspection.Spread;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Refusals;
import org.midlateral.mechanics.Donning;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.mesh.query.Gap;
import org.midlateral.piece.Piece;
import org.midlateral.shell.DorsalShell;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * Whether the two pieces go together: worn, and on the way.
 *
 * @param smallest the smallest gap between the two solids when worn, and where (mm), G5
 * @param meeting whether the two surfaces meet, by exact predicates
 * @param fitGap gap over the overlap (mm); mean and largest are NaN where none of it is flat
 * @param goingOn what pushing the shell on asks of it
 * @param allowable bending strain of the material, as a share
 * @param largestOverlap the largest overlap that would pass (mm), where the chosen one does not
 */
public record FitTogether(
    Gap smallest,
    boolean meeting,
    Spread fitGap,
    Donning goingOn,
    double allowable,
    OptionalDouble largestOverlap) {
  private static final double LEAST_OVERLAP = 1;

  /**
   * Measures the two pieces of an orthosis against each other.
   *
   * @param trough the tree over the trough's mesh
   * @param shell the dorsal piece
   * @param tree the tree over its mesh
   */
  static FitTogether of(
      Orthosis made, BoundingVolumeHierarchy trough, Solid shell, BoundingVolumeHierarchy tree) {
    Interruption.ifInterrupted();
    Gap smallest = trough.gap(tree);
    Interruption.ifInterrupted();
    Design design = made.order().design();
    double overlap = design.dorsalShell().overlap();
    Donning goingOn = Donning.of(made.trough().piece(), shell.piece(), overlap);
    double allowable = Material.of(design.material()).allowableStrain();
    OptionalDouble largest =
        goingOn.strain() > allowable ? largestOverlap(made, allowable) : OptionalDouble.empty();
    return new FitTogether(
        smallest,
        smallest.distance() <= 0 || trough.intersections(tree, 1).length > 0,
        fitGap(made, shell, trough, smallest.distance()),
        goingOn,
        allowable,
        largest);
  }

  /**
   * Gap from the shell's inside to the trough, over the strip where both are flat: farther past the
   * trough's edge than the round of its rim. Where the overlap leaves no such strip, as one that is
   * no longer than a wall, there is a least gap and nothing else to tell.
   */
  private static Spread fitGap(
      Orthosis made, Solid shell, BoundingVolumeHierarchy trough, double smallest) {
    double wrap = made.trough().piece().outline().wrap();
    double round = made.trough().piece().wall() / 2;
    double sum = 0;
    double most = 0;
    int count = 0;
    for (int i = 0; i < shell.innerVertices(); i++) {
      double station = shell.station(i);
      double past =
          wrap / 2 * made.digit().circumference(station)
              - Math.abs(made.digit().slice(station).girth(shell.skinAngle(i)));
      if (past > round) {
        double gap = trough.distance(shell.mesh().x(i), shell.mesh().y(i), shell.mesh().z(i), 10);
        sum += gap;
        most = Math.max(most, gap);
        count++;
      }
    }
    return count == 0
        ? new Spread(smallest, Double.NaN, Double.NaN)
        : new Spread(smallest, sum / count, most);
  }

  /** By halving: the strain grows with the overlap. */
  private static OptionalDouble largestOverlap(Orthosis made, double allowable) {
    double low = LEAST_OVERLAP;
    double high = made.order().design().dorsalShell().overlap();
    if (strain(made, low) > allowable) {
      return OptionalDouble.empty();
    }
    while (high - low > 0.05) {
      double middle = (low + high) / 2;
      if (strain(made, middle) > allowable) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return OptionalDouble.of(Math.floor(10 * low) / 10);
  }

  private static double strain(Orthosis made, double overlap) {
    try {
      Design design = made.order().design();
      Design other = design.withDorsalShell(design.dorsalShell().withOverlap(overlap));
      Piece shell =
          DorsalShell.of(other, made.digit(), made.bare(), made.plainTrough(), made.relief());
      return Donning.of(made.plainTrough(), shell, overlap).strain();
    } catch (DesignRefused e) {
      return Double.POSITIVE_INFINITY;
    }
  }

  /** A refusal for a gap that is too small; a caution for a shell that is strained too far. */
  List<Finding> findings(Orthosis made) {
    List<Finding> found = new ArrayList<>();
    double least = made.order().design().dorsalShell().fitGap() - ErrorBudget.FIT_GAP;
    if (meeting || smallest.distance() < least) {
      found.add(Refusals.fitGap(smallest.distance(), smallest.point(), least));
    }
    if (goingOn.strain() > allowable) {
      String way =
          largestOverlap.isPresent()
              ? String.format(
                  Locale.ROOT,
                  "dorsal-shell.overlap: %.1f mm would work",
                  largestOverlap.getAsDouble())
              : "no overlap of at least 1 mm works; use another closure or a softer material";
      found.add(
          Finding.caution(
              "going-on",
              "dorsal-shell.overlap",
              String.format(
                  Locale.ROOT,
                  "To go on, the shell must open by %.2f mm. That strains it by %.2f %%, and the"
                      + " material bears only %.2f %%: %s.",
                  goingOn.spread(),
                  100 * goingOn.strain(),
                  100 * allowable,
                  way),
              goingOn.strain(),
              allowable));
    }
    return found;
  }
}
