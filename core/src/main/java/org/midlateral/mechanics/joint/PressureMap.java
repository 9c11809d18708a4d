package org.midlateral.mechanics.joint;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.joint.JointAnswer.PatchPressure;
import org.midlateral.mechanics.joint.JointAnswer.PressedBy;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;
import org.midlateral.mechanics.joint.JointAnswer.StripPull;

/** The pressures on the skin, as small pieces of its surface. */
final class PressureMap {
  private static final double SQUARE_CENTIMETRE = 100;

  /** Parts that the skin under a strip is cut into, round the finger. */
  private static final int STRIP_PARTS = 12;

  /** A piece of the skin. */
  private record Spot(Vector3D place, double area, double pressure, PressurePeak peak) {}

  private final List<Spot> spots = new ArrayList<>();

  PressureMap(Fitting fitting, List<PatchPressure> patches, List<StripPull> strips) {
    DigitSurface skin = fitting.worn().skin();
    for (PatchPressure p : patches) {
      Vector3D place = place(skin, p.station(), p.girth());
      spots.add(new Spot(place, p.area(), p.pressure(), Reading.peak(p, p.pressure())));
    }
    for (StripPull strip : strips) {
      if (strip.area() > 0) {
        lay(skin, strip);
      }
    }
  }

  private static Vector3D place(DigitSurface skin, double station, double girth) {
    Slice slice = skin.slice(station);
    return slice.point(slice.angle(girth));
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

  /** The largest force within a disc of 1 cm² about a piece of the skin, over 1 cm². */
  PressurePeak squareCentimetre() {
    double radius = Math.sqrt(SQUARE_CENTIMETRE / Math.PI);
    Spot most = spots.get(0);
    double largest = -1;
    for (Spot middle : spots) {
      double force = 0;
      for (Spot spot : spots) {
        force += spot.pressure * spot.area * within(radius, middle, spot);
      }
      if (force > largest) {
        largest = force;
        most = middle;
      }
    }
    PressurePeak at = most.peak;
    return new PressurePeak(largest / SQUARE_CENTIMETRE, at.by(), at.station(), at.side());
  }

  /** Which share of a piece lies within a disc: all, none, or in between across its own width. */
  private static double within(double radius, Spot middle, Spot spot) {
    double own = Math.sqrt(spot.area / Math.PI);
    double distance = middle.place.distance(spot.place);
    return Math.max(0, Math.min(1, (radius + own - distance) / (2 * own)));
  }
}
