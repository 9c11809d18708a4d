package org.midlateral.viewer.lesson;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.rigidity.BendOfPieces;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;

/**
 * The wraps compared.
 *
 * @param digit the finger
 * @param moment under which all of them stand (N·mm)
 * @param material its name
 * @param byElements whether deflections are the finite elements'; else the beam's, because they
 *     could not be computed for every wrap
 * @param cases from shallow to closed
 * @param reasons why they differ
 */
record Comparison(
    DigitSurface digit,
    double moment,
    String material,
    boolean byElements,
    List<BentWrap> cases,
    Reasons reasons) {
  /** The largest displacement is drawn this long (mm). */
  private static final double LONGEST = 13;

  Comparison {
    cases = List.copyOf(cases);
  }

  /**
   * Compares the usual wraps on the finger of an order.
   *
   * @throws DesignRefused where there is no room for it
   */
  static Comparison of(Order order) throws DesignRefused {
    Rigidity rigidity =
        RigidityRecipe.of(order, Rigidity.USUAL_WRAPS, BendOfPieces.BEAMS_AND_ELEMENTS);
    Orthosis orthosis = rigidity.orthosis();
    boolean byElements = rigidity.curves().stream().allMatch(curve -> curve.held().isPresent());
    boolean left = order.measurements().hand() == Hand.LEFT;
    List<BentWrap> cases = new ArrayList<>();
    for (int i = 0; i < rigidity.curves().size(); i++) {
      RigidityBlock.Wrap figures = rigidity.rigidity().wraps().get(i);
      Rigidity.Curve curve = rigidity.curves().get(i);
      cases.add(
          byElements
              ? BentWrap.byElements(curve, figures, left)
              : BentWrap.asBeam(curve, figures, orthosis.digit()));
    }
    return new Comparison(
        orthosis.digit(),
        rigidity.support().moment(),
        rigidity.rigidity().material(),
        byElements,
        cases,
        Reasons.of(rigidity));
  }

  /** The wrap of a half, that the others are held against. */
  BentWrap half() {
    return cases.stream()
        .filter(one -> one.figures().wrap() == 0.5)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the half is always compared"));
  }

  /** What all deflections are multiplied by: a round number. */
  double exaggeration() {
    double most = cases.stream().mapToDouble(BentWrap::farthest).max().orElse(1);
    return Exaggeration.below(LONGEST / most);
  }
}
