package org.midlateral.viewer.lesson;

import org.midlateral.mechanics.Loading;
import org.midlateral.mechanics.Loading.Force;
import org.midlateral.mechanics.Profile;
import org.midlateral.mechanics.SteppedBeam;
import org.midlateral.mechanics.ThreePoint;

/** The deflected line of a trough taken as a beam, over the chord through its two end supports. */
final class BeamDeflection {
  private static final double STEP = 2;

  private final double from;
  private final double[] rise;

  private BeamDeflection(double from, double[] rise) {
    this.from = from;
    this.rise = rise;
  }

  static BeamDeflection of(ThreePoint support, Profile profile) {
    SteppedBeam beam = profile.beam();
    double from = profile.panels().get(0).from();
    double to = profile.panels().get(profile.panels().size() - 1).to();
    double[] rise = new double[(int) Math.ceil((to - from) / STEP) + 1];
    for (int i = 0; i < rise.length; i++) {
      double s = Math.min(from + STEP * i, to);
      rise[i] = beam.work(support.loading(), unit(support, s));
    }
    return new BeamDeflection(from, rise);
  }

  /** A force of 1 at a station, balanced at the two supports. */
  private static Loading unit(ThreePoint support, double s) {
    double p = support.proximal().middle();
    double d = support.distal().middle();
    return Loading.of(
        new Force(-(d - s) / (d - p), p, 0),
        new Force(1, s, 0),
        new Force(-(s - p) / (d - p), d, 0));
  }

  /** Dorsal deflection at a station (mm); beyond the ends as at the end. */
  double rise(double station) {
    double at = Math.max(0, Math.min(rise.length - 1, (station - from) / STEP));
    int k = Math.min((int) at, rise.length - 2);
    return rise[k] + (at - k) * (rise[k + 1] - rise[k]);
  }

  /** Its slope along the finger (1). */
  double slope(double station) {
    double at = (station - from) / STEP;
    int k = (int) Math.max(0, Math.min(rise.length - 2, Math.floor(at)));
    return (rise[k + 1] - rise[k]) / STEP;
  }
}
