package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Design.VentDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.HoldingDesign.SkinDesign;
import org.midlateral.measurement.HoldingDesign.TissueDesign;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.NotComputable;
import org.midlateral.measurement.Order;
import org.midlateral.mechanics.Joining;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.held.FactoredShell;
import org.midlateral.mechanics.held.FingerShell;
import org.midlateral.piece.Piece;
import org.midlateral.relief.Relief;
import org.midlateral.shell.DorsalShell;
import org.midlateral.trough.Trough;

/** Orders and plain troughs as what the joint is asked of. */
final class WornFingers {
  static final Isotropic PA12 = new Isotropic(1500, 0.4);

  private WornFingers() {}

  /** The trough of an order, without its shell. */
  static FingerInPieces trough(Order order) throws DesignRefused {
    return of(order, List.of(volar(order)), Joining.SLIPPING);
  }

  /** An order's trough with its shell. */
  static FingerInPieces both(Order order, Joining joining) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(order.measurements());
    Piece trough = volar(order);
    Piece shell =
        DorsalShell.of(order.design(), digit, bare(order, digit), trough, relief(order, digit));
    return of(order, List.of(trough, shell), joining);
  }

  private static FingerInPieces of(Order order, List<Piece> pieces, Joining joining) {
    Material material = Material.of(order.design().material());
    return new FingerInPieces(
        pieces.get(0).digit(),
        order.measurements().dipAxis(),
        pieces,
        order.design().trough().liner(),
        joining,
        new Isotropic(material.modulus(), material.poisson()));
  }

  private static Piece bare(Order order, DigitSurface digit) throws DesignRefused {
    TroughDesign design = order.design().trough();
    return Trough.of(design, digit, MidlateralCut.of(order.measurements(), design, digit));
  }

  private static Relief relief(Order order, DigitSurface digit) throws DesignRefused {
    return Relief.of(order.measurements(), order.design().relief(), digit);
  }

  private static Piece volar(Order order) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(order.measurements());
    return relief(order, digit).over(bare(order, digit));
  }

  /** A trough moulded on the skin, without flare. */
  static FingerInPieces moulded(Measurements measured) throws DesignRefused {
    return moulded(measured, PA12);
  }

  static FingerInPieces moulded(Measurements measured, Isotropic material) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(measured);
    TroughDesign design =
        new TroughDesign(0.5, 1.6, 0, 0, 3, 3, DistalEnd.OPEN, 4, 4, 0, 5, new VentDesign(0, 8));
    Piece trough = Trough.of(design, digit, MidlateralCut.of(measured, design, digit));
    return new FingerInPieces(
        digit, measured.dipAxis(), List.of(trough), 0, Joining.SLIPPING, material);
  }

  /** Each piece for itself, on edges so many times the usual. */
  static List<FactoredShell> bodies(FingerInPieces worn, double edges)
      throws DesignRefused, NotComputable {
    List<FactoredShell> bodies = new ArrayList<>();
    for (Piece piece : worn.pieces()) {
      FingerShell shell = FingerShell.of(FingerShell.mesh(piece, edges), worn.material());
      bodies.add(FactoredShell.of(shell));
    }
    return bodies;
  }

  /** Linear skin, everywhere the same. */
  static HoldingDesign evenSkin(HoldingDesign usual, double kilopascal, double thickness) {
    TissueDesign tissue = new TissueDesign(kilopascal, 0, thickness);
    SkinDesign skin = new SkinDesign(tissue, tissue, tissue, tissue, 1, 0);
    return new HoldingDesign(
        usual.joint(), skin, usual.liner(), usual.bands(), usual.acrossLayers(), usual.creep());
  }

  /** A strap of some width round the joint. */
  static Fastening strap(FingerInPieces worn, double width, double tension, double stiffness) {
    return new Fastening(width, 1, tension, stiffness, List.of(worn.skin().pipAxis()));
  }

  /** Numbers of a list, for messages. */
  static List<Double> list(double... values) {
    List<Double> list = new ArrayList<>();
    for (double v : values) {
      list.add(v);
    }
    return list;
  }
}
