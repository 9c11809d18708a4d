package org.midlateral.recipe.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.digit.DigitSurface;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.closure.ClosureLayout;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.mechanics.joint.Fastening;
import org.midlateral.mechanics.joint.FingerInPieces;
import org.midlateral.mechanics.joint.HeldFinger;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.mechanics.joint.JointMoment;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Concurrent;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.VolarStages;
import org.midlateral.solid.Solid;
import org.midlateral.work.Interruption;

/**
 * One orthosis on its finger with its closure, ready to be asked. Its vents and label are left out.
 *
 * @param made the orthosis
 * @param finger in its pieces, factored
 * @param fastening how the closure that was chosen pulls
 * @param moment of the joint
 */
public record WornOrthosis(
    Orthosis made, HeldFinger finger, Fastening fastening, JointMoment moment) {

  /** Edges on which pieces are meshed that are not factored, times the usual. */
  private static final double EDGES = 1.6;

  /**
   * Meshes and factors the pieces of an orthosis.
   *
   * @throws DesignRefused where a piece cannot be meshed for it
   * @throws NotComputable where the middle of a wall folds
   */
  public static WornOrthosis of(Orthosis made) throws DesignRefused, NotComputable {
    Interruption.ifInterrupted();
    Isotropic plastic = plastic(made.order());
    FactoredShell trough = FactoredShell.of(made.plainTrough(), plastic);
    Optional<FactoredShell> dorsal = Optional.empty();
    if (made.plainShell().isPresent()) {
      Interruption.ifInterrupted();
      dorsal = Optional.of(FactoredShell.of(made.plainShell().get(), plastic));
    }
    return of(made, trough, dorsal);
  }

  /**
   * The same where the pieces are factored already.
   *
   * @param dorsalShell that of its dorsal shell, where it has one
   */
  public static WornOrthosis of(
      Orthosis made, FactoredShell trough, Optional<FactoredShell> dorsalShell) {
    Interruption.ifInterrupted();
    List<FactoredShell> bodies = new ArrayList<>(List.of(trough));
    dorsalShell.ifPresent(bodies::add);
    HeldFinger finger =
        HeldFinger.of(worn(made.order(), pieces(made)), bodies, made.order().design().holding());
    return of(made, finger);
  }

  private static WornOrthosis of(Orthosis made, HeldFinger finger) {
    Order order = made.order();
    return new WornOrthosis(
        made,
        finger,
        fastening(order.design().closure().kind(), order, pieces(made)),
        JointMoment.of(order, made.digit()));
  }

  private static Isotropic plastic(Order order) {
    return Isotropic.of(Material.of(order.design().material()));
  }

  private static List<Piece> pieces(Orthosis made) {
    List<Piece> pieces = new ArrayList<>(List.of(made.plainTrough()));
    made.plainShell().ifPresent(pieces::add);
    return pieces;
  }

  private static FingerInPieces worn(Order order, List<Piece> pieces) {
    return new FingerInPieces(
        pieces.get(0).digit(),
        order.measurements().dipAxis(),
        pieces,
        order.design().trough().liner(),
        Joining.SLIPPING,
        plastic(order));
  }

  /** The closure that was chosen. */
  public ClosureKind closure() {
    return made.order().design().closure().kind();
  }

  /** Whether straps find room, and no sore joint under them. */
  public boolean takesStraps() {
    return !Closure.of(made.order(), made.digit(), made.relief(), made.solids()).straps().isEmpty();
  }

  /**
   * The same, looking for each equilibrium from where the joint rests in it.
   *
   * @throws NotComputable where it rests nowhere
   */
  public WornOrthosis settled() throws NotComputable {
    return new WornOrthosis(made, finger.near(fastening, moment), fastening, moment);
  }

  /**
   * An orthosis much like this one on its finger, whose pieces are not factored but taken to bend
   * as these do: in a third of the time.
   *
   * @return empty where it has not as many pieces
   * @throws DesignRefused where a piece cannot be meshed for it
   */
  public Optional<WornOrthosis> carriedTo(Orthosis other) throws DesignRefused {
    if (other.plainShell().isPresent() != made.plainShell().isPresent()) {
      return Optional.empty();
    }
    FingerInPieces worn = worn(other.order(), pieces(other));
    List<Concurrent<Solid>> meshing =
        worn.pieces().stream()
            .map(piece -> Concurrent.begin(() -> FingerShell.mesh(piece, EDGES)))
            .toList();
    List<Solid> solids = new ArrayList<>();
    for (Concurrent<Solid> mesh : meshing) {
      solids.add(mesh.end());
    }
    HeldFinger carried = finger.carriedTo(worn, solids, other.order().design().holding());
    return Optional.of(of(other, carried));
  }

  /** How an orthosis holds the joint, in two figures; empty where there is no answer. */
  public static Optional<JointFigures> figures(Orthosis made) {
    try {
      return of(made).figures();
    } catch (DesignRefused | NotComputable e) {
      return Optional.empty();
    }
  }

  /** How a trough alone holds the joint, in two figures; empty where there is no answer. */
  public static Optional<JointFigures> figures(VolarStages trough) {
    Order order = trough.order();
    List<Piece> pieces = List.of(trough.plain());
    try {
      FactoredShell body = FactoredShell.of(trough.plain(), plastic(order));
      HeldFinger finger =
          HeldFinger.of(worn(order, pieces), List.of(body), order.design().holding());
      Fastening fastening = fastening(order.design().closure().kind(), order, pieces);
      return figures(finger, fastening, JointMoment.of(order, trough.digit()));
    } catch (DesignRefused | NotComputable e) {
      return Optional.empty();
    }
  }

  /** How it holds the joint, in two figures; empty where there is no answer. */
  public Optional<JointFigures> figures() {
    return figures(finger, fastening, moment);
  }

  private static Optional<JointFigures> figures(
      HeldFinger finger, Fastening fastening, JointMoment moment) {
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
    return new WornOrthosis(made, finger.withModulus(factor), fastening, moment);
  }

  /** Another closure of the same pieces, as the order would lay it. */
  public Fastening fastening(ClosureKind kind) {
    return fastening(kind, made.order(), pieces(made));
  }

  private static Fastening fastening(ClosureKind kind, Order order, List<Piece> pieces) {
    Design design = order.design();
    DigitSurface digit = pieces.get(0).digit();
    return Fastening.of(
        kind,
        design.closure(),
        design.holding(),
        ClosureLayout.of(design.closure(), digit, pieces),
        digit.pipAxis());
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
