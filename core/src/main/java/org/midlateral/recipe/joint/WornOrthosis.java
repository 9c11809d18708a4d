package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.joint.Fastening;
import org.midlateral.mechanics.joint.FingerInPieces;
import org.midlateral.mechanics.joint.HeldFinger;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.Solid;

/**
 * One orthosis on its finger with its closure, ready to be asked. Its vents and label are left out.
 *
 * @param made the orthosis
 * @param finger in its pieces, factored
 * @param closures what closes it
 * @param fastening how the closure that was chosen pulls
 * @param moment of the joint
 */
public record WornOrthosis(
    Orthosis made, HeldFinger finger, Closure closures, Fastening fastening, JointMoment moment) {

  /**
   * Meshes and factors the pieces of an orthosis.
   *
   * @throws DesignRefused where a piece cannot be meshed for it
   * @throws NotComputable where the middle of a wall folds
   */
  public static WornOrthosis of(Orthosis made) throws DesignRefused, NotComputable {
    return of(made, FactoredShell.of(made.plainTrough(), plastic(made.order())));
  }

  /**
   * The same where the trough is factored already.
   *
   * @throws DesignRefused where the dorsal shell cannot be meshed for it
   * @throws NotComputable where the middle of its wall folds
   */
  public static WornOrthosis of(Orthosis made, FactoredShell trough)
      throws DesignRefused, NotComputable {
    Order order = made.order();
    Isotropic plastic = plastic(order);
    HoldingDesign holding = order.design().holding();
    List<Piece> pieces = new ArrayList<>(List.of(made.plainTrough()));
    List<FactoredShell> bodies = new ArrayList<>(List.of(trough));
    if (made.plainShell().isPresent()) {
      Piece shell = made.plainShell().get();
      pieces.add(shell);
      bodies.add(FactoredShell.of(shell, plastic));
    }
    FingerInPieces worn =
        new FingerInPieces(
            made.plainTrough().digit(),
            order.measurements().dipAxis(),
            pieces,
            order.design().trough().liner(),
            Joining.SLIPPING,
            plastic);
    List<Solid> solids = made.solids();
    Closure closures = Closure.of(order, made.digit(), made.relief(), solids);
    return new WornOrthosis(
        made,
        HeldFinger.of(worn, bodies, holding),
        closures,
        fastening(order.design().closure().kind(), order, closures, made.digit().pipAxis()),
        JointMoment.of(order, made.digit()));
  }

  private static Isotropic plastic(Order order) {
    return Isotropic.of(Material.of(order.design().material()));
  }

  /** How an orthosis holds the joint, in two figures; empty where there is no answer. */
  public static Optional<JointFigures> figures(Orthosis made) {
    try {
      return of(made).figures();
    } catch (DesignRefused | NotComputable e) {
      return Optional.empty();
    }
  }

  /** How it holds the joint, in two figures; empty where there is no answer. */
  public Optional<JointFigures> figures() {
    try {
      JointAnswer answer = finger.holdWhole(fastening, moment);
      double pressure = answer.squareCentimetre().pressure();
      return Optional.of(new JointFigures(answer.angle(), pressure));
    } catch (NotComputable e) {
      return Optional.empty();
    }
  }

  /** The same of a plastic whose modulus is so many times as large. */
  public WornOrthosis withModulus(double factor) {
    return new WornOrthosis(made, finger.withModulus(factor), closures, fastening, moment);
  }

  /** Another closure of the same pieces, as the order would lay it. */
  public Fastening fastening(ClosureKind kind) {
    return fastening(kind, made.order(), closures, made.digit().pipAxis());
  }

  private static Fastening fastening(ClosureKind kind, Order order, Closure closures, double axis) {
    return Fastening.of(kind, order.design().closure(), order.design().holding(), closures, axis);
  }

  /**
   * The joint as it is held.
   *
   * @throws NotComputable where no equilibrium is found
   */
  public JointAnswer answer() throws NotComputable {
    return finger.hold(fastening, moment);
  }
}
