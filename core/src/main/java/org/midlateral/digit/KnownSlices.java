package org.midlateral.digit;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The same skin, remembering the sections it was asked for last: a mesh asks for few stations very
 * often. Not for use by two threads at once.
 */
public final class KnownSlices implements DigitSurface {
  private static final int PLACES = 1 << 11;

  private final DigitSurface digit;
  private final Slice[] known = new Slice[PLACES];

  public KnownSlices(DigitSurface digit) {
    this.digit = digit;
  }

  @Override
  public Slice slice(double station) {
    long bits = Double.doubleToRawLongBits(station) * 0x9e3779b97f4a7c15L;
    int place = (int) (bits >>> 53);
    Slice slice = known[place];
    if (slice == null || slice.station() != station) {
      slice = digit.slice(station);
      known[place] = slice;
    }
    return slice;
  }

  @Override
  public double circumference(double station) {
    return digit.circumference(station);
  }

  @Override
  public double circumferenceByStation(double station) {
    return digit.circumferenceByStation(station);
  }

  @Override
  public double halfDepth(double station) {
    return digit.halfDepth(station);
  }

  @Override
  public double curvature(double station) {
    return digit.curvature(station);
  }

  @Override
  public double pipAxis() {
    return digit.pipAxis();
  }

  @Override
  public double tip() {
    return digit.tip();
  }

  @Override
  public double pulpEnd() {
    return digit.pulpEnd();
  }

  @Override
  public List<Double> creases() {
    return digit.creases();
  }

  @Override
  public Vector3D centre(double station) {
    return digit.centre(station);
  }

  @Override
  public Vector3D tangent(double station) {
    return digit.tangent(station);
  }
}
