package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.joint.JointAnswer.PatchPressure;
import org.midlateral.mechanics.joint.JointAnswer.PressedBy;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;
import org.midlateral.mechanics.joint.JointAnswer.Side;
import org.midlateral.mechanics.joint.JointAnswer.StripPull;

/** The pressures on the skin, as small pieces of its surface. */
final class PressureMap {
  private static final double SQUARE_CENTIMETRE = 100;
  private static final double RADIUS = Math.sqrt(SQUARE_CENTIMETRE / Math.PI);

  /** Parts that the skin under a strip is cut into, round the finger. */
  private static final int STRIP_PARTS = 12;

  /**
   * A piece of the skin.
   *
   * @param radius of a disc as large
   */
  private record Spot(
      Vector3D place, double area, double radius, double pressure, PressurePeak peak) {
    Spot(Vector3D place, double area, double pressure, PressurePeak peak) {
      this(place, area, Math.sqrt(area / Math.PI), pressure, peak);
    }
  }

  private final List<Spot> spots = new ArrayList<>();

  /**
   * Of a fitting.
   *
   * @param patches a pressure for each of its patches
   */
  PressureMap(Fitting fitting, List<PatchPressure> patches, List<StripPull> strips) {
    DigitSurface skin = fitting.worn().skin();
    for (int e = 0; e < patches.size(); e++) {
      PatchPressure p = patches.get(e);
      Vector3D place = fitting.patches().get(e).place();
      spots.add(new Spot(place, p.area(), p.pressure(), peak(p, p.pressure())));
    }
    for (StripPull strip : strips) {
      if (strip.area() > 0) {
        lay(skin, strip);
      }
    }
  }

  /** The skin under a strip, about the dorsal midline. */
  private void lay(DigitSurface skin, StripPull strip) {
    double station = (strip.from() + strip.to()) / 2;
    Slice slice = skin.slice(station);
    double round = strip.area() / (strip.to() - strip.from());
    double half = slice.circumference() / 2;
    for (int i = 0; i < STRIP_PARTS; i++) {
      double off = round * ((i + 0.5) / STRIP_PARTS - 0.5);
      double angle = slice.angle(off > 0 ? half - off : -half - off);
      PressurePeak peak =
          new PressurePeak(strip.pressure(), PressedBy.CLOSURE, station, Side.of(angle));
      spots.add(new Spot(slice.point(angle), strip.area() / STRIP_PARTS, strip.pressure(), peak));
    }
  }

  /** The largest on a single piece of the skin. */
  PressurePeak spot() {
    Spot most = spots.get(0);
    for (Spot spot : spots) {
      most = spot.pressure > most.pressure ? spot : most;
    }
    return most.peak;
  }

  /**
   * The places that are pressed most, each the mean over a disc of 1 cm² about a piece of the skin,
   * and none within another's disc.
   *
   * @param most so many at most
   */
  List<PressurePeak> squareCentimetres(int most) {
    double[] means = means();
    List<Spot> taken = new ArrayList<>();
    List<PressurePeak> peaks = new ArrayList<>();
    while (peaks.size() < most) {
      int best = -1;
      for (int i = 0; i < means.length; i++) {
        boolean better = means[i] > 0 && (best < 0 || means[i] > means[best]);
        if (better && isApart(spots.get(i), taken)) {
          best = i;
        }
      }
      if (best < 0) {
        break;
      }
      taken.add(spots.get(best));
      PressurePeak at = spots.get(best).peak;
      peaks.add(new PressurePeak(means[best], at.by(), at.station(), at.side()));
    }
    if (peaks.isEmpty()) {
      PressurePeak none = spots.get(0).peak;
      peaks.add(new PressurePeak(0, none.by(), none.station(), none.side()));
    }
    return peaks;
  }

  private static boolean isApart(Spot spot, List<Spot> taken) {
    return taken.stream().allMatch(other -> other.place.distance(spot.place) > 2 * RADIUS);
  }

  /** The mean about each piece of the skin, found among those near it along the finger. */
  private double[] means() {
    Spot[] pressed =
        spots.stream()
            .filter(spot -> spot.pressure > 0)
            .sorted(Comparator.comparingDouble(spot -> spot.place.getX()))
            .toArray(Spot[]::new);
    double[] along = new double[pressed.length];
    double reach = RADIUS;
    for (int i = 0; i < pressed.length; i++) {
      along[i] = pressed[i].place.getX();
      reach = Math.max(reach, RADIUS + pressed[i].radius);
    }
    double[] means = new double[spots.size()];
    for (int k = 0; k < means.length; k++) {
      double x = spots.get(k).place.getX();
      int from = Arrays.binarySearch(along, x - reach);
      from = from < 0 ? -from - 1 : from;
      for (int i = from; i < pressed.length && along[i] < x + reach; i++) {
        means[k] += force(spots.get(k), pressed[i]) / SQUARE_CENTIMETRE;
      }
    }
    return means;
  }

  /** The force of a piece of the skin within a disc of 1 cm² about another (N). */
  private static double force(Spot middle, Spot spot) {
    double x = spot.place.getX() - middle.place.getX();
    double y = spot.place.getY() - middle.place.getY();
    double z = spot.place.getZ() - middle.place.getZ();
    double square = x * x + y * y + z * z;
    double farthest = RADIUS + spot.radius;
    if (square >= farthest * farthest) {
      return 0;
    }
    // All of a piece lies within the disc, or a share of it across its own width.
    double within = (farthest - Math.sqrt(square)) / (2 * spot.radius);
    return spot.pressure * spot.area * Math.min(1, within);
  }

  /** A peak on a patch. */
  private static PressurePeak peak(PatchPressure patch, double pressure) {
    return new PressurePeak(pressure, by(patch), patch.station(), patch.side());
  }

  /** What presses, of a patch. */
  static PressedBy by(PatchPressure patch) {
    return patch.dorsalShell() ? PressedBy.DORSAL_SHELL : PressedBy.TROUGH;
  }
}
