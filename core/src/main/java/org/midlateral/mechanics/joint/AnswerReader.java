package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.joint.JointAnswer.AngleSplit;
import org.midlateral.mechanics.joint.JointAnswer.EnergyTerms;
import org.midlateral.mechanics.joint.JointAnswer.PatchPressure;
import org.midlateral.mechanics.joint.JointAnswer.Search;
import org.midlateral.mechanics.joint.JointAnswer.Side;
import org.midlateral.mechanics.joint.JointAnswer.StripPull;

/** Reads the figures off a joint that is held. */
final class AnswerReader {
  /** The joint is pulled so much harder to see how it goes with its moment. */
  private static final double MORE = 0.01;

  /** So many of the places that are pressed most are told. */
  private static final int WORST = 3;

  private final Fitting fitting;
  private final PressedPieces pieces;
  private final HeldState held;
  private final Resting resting;

  AnswerReader(HeldState held) {
    this.held = held;
    fitting = held.fitting();
    pieces = held.pieces();
    resting = held.resting();
  }

  /** All of it. */
  JointAnswer answer(AngleSplit split) {
    return answer(split, Math.toDegrees(friction()));
  }

  /** Neither split nor with what friction may do. */
  JointAnswer whole() {
    return answer(new AngleSplit(Double.NaN, Double.NaN, Double.NaN, Double.NaN), Double.NaN);
  }

  private JointAnswer answer(AngleSplit split, double friction) {
    List<PatchPressure> patches = patches();
    List<StripPull> strips = strips();
    PressureMap map = new PressureMap(fitting, patches, strips);
    return new JointAnswer(
        Math.min(JointAnswer.FARTHEST, Math.toDegrees(resting.angle())),
        split,
        held.system().moment().at(resting.angle()),
        friction,
        patches,
        strips,
        map.spot(),
        map.squareCentimetres(WORST),
        NetForces.of(held).resultants(),
        new EnergyTerms(
            resting.energy(0, pieces.firstOverlap()),
            resting.energy(pieces.firstStrip(), pieces.firstGrip()),
            resting.bent()),
        Math.abs(resting.force(pieces.firstGrip())),
        new Search(held.laid().steps(), resting.steps(), resting.miss()));
  }

  private List<PatchPressure> patches() {
    List<PatchPressure> patches = new ArrayList<>();
    for (int e = 0; e < fitting.patches().size(); e++) {
      SkinPatch patch = fitting.patches().get(e);
      patches.add(
          new PatchPressure(
              patch.piece() == 1,
              patch.station(),
              patch.girth(),
              Side.of(patch.angle()),
              patch.area(),
              resting.force(e) / patch.area()));
    }
    return patches;
  }

  private List<StripPull> strips() {
    List<StripPull> strips = new ArrayList<>();
    for (int k = 0; k < fitting.strips().size(); k++) {
      int e = pieces.firstStrip() + k;
      TautBand band = fitting.strips().get(k);
      if (held.system().couplings().get(e).law() instanceof Hoop hoop) {
        double x = resting.closing(e);
        double area = band.onSkin() ? band.area() : 0;
        strips.add(new StripPull(band.from(), band.to(), hoop.tension(x), area, hoop.pressure(x)));
      }
    }
    return strips;
  }

  /**
   * Skin slides on the trough where the joint turns, and rubs against it: the friction's moment,
   * and how far the joint goes with its moment. Trough and finger part share the turning between
   * the two sides of the joint, so that half of the friction works on each degree.
   */
  private double friction() {
    double rubbing = 0;
    for (int e = 0; e < fitting.patches().size(); e++) {
      for (SkinVertex v : fitting.patches().get(e).parts()) {
        Vector3D arm = pieces.centre().vectorTo(v.skin());
        double off = Math.abs(arm.dot(fitting.worn().skin().dorsal(v.station())));
        rubbing += resting.force(e) * fitting.patches().get(e).share(v) * off / 2;
      }
    }
    JointMoment moment = held.system().moment();
    if (moment.atLimit() == 0 || resting.angle() >= HeldSystem.FARTHEST) {
      return 0;
    }
    Resting harder = Equilibrium.of(held.system().with(moment.times(1 + MORE)), resting);
    double perMoment = (harder.angle() - resting.angle()) / (MORE * moment.at(resting.angle()));
    return perMoment * held.holding().skin().friction() * rubbing;
  }
}
