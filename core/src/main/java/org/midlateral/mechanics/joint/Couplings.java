package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.midlateral.mechanics.joint.Fitting.Lever;
import org.midlateral.piece.Piece;

/** Lists the springs between a finger, its pieces and a closure. */
final class Couplings {
  /** Tape or a wrap keeps a dorsal shell from sliding on the trough (N/mm). A choice. */
  private static final double ADHESION = 5;

  /** A layer's shear modulus over its modulus: incompressible. */
  private static final double SHEAR = 1 / 3.0;

  private final Fitting fitting;
  private final PressedPieces pieces;
  private final Tissue tissue;
  private final List<SoftLayer> liner;
  private final Fastening fastening;
  private final DoubleUnaryOperator thicker;

  /**
   * Springs under a closure.
   *
   * @param liner of the trough, or none
   * @param thicker by how much the finger is, by station (mm)
   */
  Couplings(
      PressedPieces pieces,
      Fitting fitting,
      Tissue tissue,
      List<SoftLayer> liner,
      Fastening fastening,
      DoubleUnaryOperator thicker) {
    this.pieces = pieces;
    this.fitting = fitting;
    this.tissue = tissue;
    this.liner = liner;
    this.fastening = fastening;
    this.thicker = thicker;
  }

  /** While it is laid: every band pulls as it is laid, however the finger lies. */
  List<Coupling> laying() {
    return all(new double[0]);
  }

  /**
   * Once it is laid.
   *
   * @param laid where each strip was laid
   */
  List<Coupling> held(double[] laid) {
    return all(laid);
  }

  private List<Coupling> all(double[] laid) {
    List<Coupling> all = new ArrayList<>();
    for (int k = 0; k < fitting.patches().size(); k++) {
      all.add(skin(fitting.patches().get(k), fitting.patchLevers().get(k)));
    }
    for (int k = 0; k < fitting.overlaps().size(); k++) {
      SpringLaw walls = SpringLaw.stop(stop(fitting.overlaps().get(k)));
      all.add(Coupling.fixed(walls, fitting.overlapGaps().get(k)));
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      all.add(strip(k, laid.length > 0, laid.length > 0 ? laid[k] : 0));
    }
    SpringLaw grip = SpringLaw.linear(grip());
    all.add(Coupling.fixed(grip, 0));
    all.add(Coupling.fixed(grip, 0));
    if (fitting.worn().apart()) {
      all.add(Coupling.fixed(SpringLaw.linear(ADHESION), 0));
      all.add(Coupling.fixed(SpringLaw.linear(ADHESION), 0));
    }
    return all;
  }

  private Coupling skin(SkinPatch patch, Lever lever) {
    List<SoftLayer> layers = new ArrayList<>();
    layers.add(tissue.at(patch.station(), patch.radius(), patch.angle()));
    double gap = patch.gap() - thicker.applyAsDouble(patch.station());
    if (patch.piece() == 0) {
      layers.addAll(liner);
      for (SoftLayer l : liner) {
        gap -= l.thickness();
      }
    }
    return new Coupling(new SoftContact(layers, patch.area()), lever.even(), lever.odd(), gap);
  }

  private Coupling strip(int k, boolean laid, double reference) {
    TautBand band = fitting.strips().get(k);
    Lever lever = fitting.stripLevers().get(k);
    double bands = fastening.bands(band.from(), band.to());
    if (bands == 0) {
      return new Coupling(SpringLaw.constant(0), lever.even(), lever.odd(), 0);
    }
    List<SoftLayer> skin =
        band.onSkin() ? List.of(tissue.at(band.station(), band.radius(), Math.PI)) : List.of();
    Hoop hoop =
        new Hoop(
            bands,
            fastening.tension(),
            laid ? fastening.stiffness() / band.length() : 0,
            reference,
            band.curving(),
            skin,
            band.onSkin() ? band.arc() : 0,
            band.area());
    return new Coupling(hoop, lever.even(), lever.odd(), 0);
  }

  /** Two walls pressed together (N/mm). */
  private double stop(SkinPatch overlap) {
    double walls = fitting.worn().pieces().stream().mapToDouble(Piece::wall).sum();
    return fitting.worn().material().modulus() * overlap.area() / walls;
  }

  /** The skin of the floor sheared (N/mm). */
  private double grip() {
    double grip = 0;
    for (SkinPatch patch : pieces.gripped()) {
      SoftLayer layer = tissue.at(patch.station(), patch.radius(), patch.angle());
      grip += patch.area() * SHEAR * layer.modulus() / layer.thickness();
    }
    return grip;
  }
}
