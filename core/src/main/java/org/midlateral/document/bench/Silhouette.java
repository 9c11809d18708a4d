package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.MeshCut;
import org.midlateral.mechanics.SectionPlane;
import org.midlateral.solid.Solid;

/**
 * How wide and how deep a piece is along the finger, from its cuts.
 *
 * @param rings from the proximal to the distal end
 */
record Silhouette(List<Ring> rings) {
  private static final double STEP = 0.5;

  /** Near the ends, where the outline is round (mm). */
  private static final double FINE_STEP = 0.1;

  private static final double FINE_ZONE = 1.5;

  /**
   * One cut.
   *
   * @param station (mm)
   * @param box x along y of the frame, y dorsally from the centreline (mm)
   */
  record Ring(double station, Envelope box) {}

  static Silhouette of(DigitSurface digit, Solid solid) {
    MeshCut cut = MeshCut.of(solid.mesh());
    double past = 2 * solid.piece().wall() + 3;
    double start = solid.piece().outline().proximal() - past;
    double end = solid.piece().outline().distal() + past;
    List<Ring> coarse = rings(digit, cut, start, end, STEP);
    double first = coarse.get(0).station();
    double last = coarse.get(coarse.size() - 1).station();
    List<Ring> rings = new ArrayList<>();
    rings.addAll(rings(digit, cut, first - STEP, first + FINE_ZONE, FINE_STEP));
    coarse.stream()
        .filter(r -> r.station() > first + FINE_ZONE && r.station() < last - FINE_ZONE)
        .forEach(rings::add);
    rings.addAll(rings(digit, cut, last - FINE_ZONE, last + STEP, FINE_STEP));
    return new Silhouette(rings);
  }

  private static List<Ring> rings(
      DigitSurface digit, MeshCut cut, double from, double to, double step) {
    List<Ring> rings = new ArrayList<>();
    for (double s = from; s <= to; s += step) {
      Envelope box = new Envelope();
      for (Loop loop : cut.at(SectionPlane.at(digit, s))) {
        for (int i = 0; i < loop.size(); i++) {
          box.expandToInclude(loop.y(i), loop.n(i));
        }
      }
      if (!box.isNull()) {
        rings.add(new Ring(s, box));
      }
    }
    return rings;
  }
}
