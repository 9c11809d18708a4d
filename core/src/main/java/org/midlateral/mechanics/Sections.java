package org.midlateral.mechanics;

import java.util.List;
import org.midlateral.digit.DigitSurface;
import org.midlateral.solid.Solid;

/** The sections of the solids on one finger, at any station. Immutable. */
public final class Sections {
  private final DigitSurface digit;
  private final List<MeshCut> cuts;

  private Sections(DigitSurface digit, List<MeshCut> cuts) {
    this.digit = digit;
    this.cuts = cuts;
  }

  /**
   * The sections of some solids.
   *
   * @param digit the finger they lie on
   * @param solids one or more
   */
  public static Sections of(DigitSurface digit, List<Solid> solids) {
    return new Sections(digit, solids.stream().map(solid -> MeshCut.of(solid.mesh())).toList());
  }

  /** The loops of each solid at a station (mm), in the solids' order. */
  public List<List<Loop>> loops(double station) {
    SectionPlane plane = SectionPlane.at(digit, station);
    return cuts.stream().map(cut -> cut.at(plane)).toList();
  }

  /**
   * The section at a station (mm). Pieces that do not close round the finger there, as at a shell's
   * corners, have nothing to be bonded by and count as slipping.
   */
  public Section at(double station, Joining joining) {
    return joined(loops(station), joining);
  }

  /** The section of the loops of each solid, cut before. */
  public static Section joined(List<List<Loop>> pieces, Joining joining) {
    List<List<Loop>> there = pieces.stream().filter(loops -> !loops.isEmpty()).toList();
    if (joining == Joining.BONDED && there.size() > 1) {
      Section whole = Section.bonded(there);
      if (whole.closed()) {
        return whole;
      }
    }
    return pieces.stream().map(Section::of).reduce(Section.NONE, Section::slippingWith);
  }
}
