package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
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
    for (SkinPatch patch : fitting.patches()) {
      all.add(skin(patch));
    }
    for (SkinPatch overlap : fitting.overlaps()) {
      all.add(Coupling.fixed(SpringLaw.stop(stop(overlap)), fit(overlap)));
    }
    for (int k = 0; k < fitting.strips().size(); k++) {
      all.add(strip(fitting.strips().get(k), laid.length > 0, laid.length > 0 ? laid[k] : 0));
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

  private Coupling skin(SkinPatch patch) {
    List<SoftLayer> layers = new ArrayList<>();
    layers.add(layer(patch.station(), patch.angle()));
    double gap = patch.gap() - thicker.applyAsDouble(patch.station());
    if (patch.piece() == 0) {
      layers.addAll(liner);
      for (SoftLayer l : liner) {
        gap -= l.thickness();
      }
    }
    double even = 0;
    double odd = 0;
    for (SkinVertex v : patch.parts()) {
      if (fitting.worn().distal(v.station())) {
        Vector3D out = v.out().multiply(patch.share(v));
        even += even(v.skin(), out);
        odd += odd(v.skin(), out);
      }
    }
    return new Coupling(new SoftContact(layers, patch.area()), even, odd, gap);
  }

  private SoftLayer layer(double station, double angle) {
    return tissue.at(fitting.worn().skin().slice(station), angle);
  }

  /** What a turning of the joint moves a place along a direction: the part with cos a - 1. */
  private double even(Vector3D at, Vector3D direction) {
    Vector3D arm = pieces.centre().vectorTo(at);
    return direction.getX() * arm.getX() + direction.getZ() * arm.getZ();
  }

  /** The part with sin a. */
  private double odd(Vector3D at, Vector3D direction) {
    Vector3D arm = pieces.centre().vectorTo(at);
    return direction.getX() * arm.getZ() - direction.getZ() * arm.getX();
  }

  private Coupling strip(TautBand band, boolean laid, double reference) {
    double even = 0;
    double odd = 0;
    for (TautBand.BandBend bend : band.bends()) {
      if (bend.piece() < 0 && fitting.worn().distal(band.station())) {
        even -= even(bend.at(), bend.pull());
        odd -= odd(bend.at(), bend.pull());
      }
    }
    double bands = fastening.bands(band.from(), band.to());
    if (bands == 0) {
      return new Coupling(SpringLaw.constant(0), even, odd, 0);
    }
    List<SoftLayer> skin = band.onSkin() ? List.of(layer(band.station(), Math.PI)) : List.of();
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
    return new Coupling(hoop, even, odd, 0);
  }

  /** Gap between the two pieces (mm). */
  private double fit(SkinPatch overlap) {
    Piece trough = fitting.worn().pieces().get(0);
    double[] jet = new double[3];
    double sum = 0;
    for (SkinVertex v : overlap.parts()) {
      trough.gap().jet(v.girth(), v.station(), jet);
      // A sloping wall is thicker along the skin's normal than along its own.
      double wall = trough.wall() * Math.sqrt(1 + jet[1] * jet[1] + jet[2] * jet[2]);
      sum += overlap.share(v) * (v.gap() - jet[0] - wall);
    }
    return Math.max(0, sum);
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
      SoftLayer layer = layer(patch.station(), patch.angle());
      grip += patch.area() * SHEAR * layer.modulus() / layer.thickness();
    }
    return grip;
  }
}
