package org.midlateral.viewer.scene;

import java.util.List;
import org.midlateral.mechanics.Loop;
import org.midlateral.mechanics.Sections;
import org.midlateral.recipe.Orthosis;

/** The sections of a design's pieces; cut up when first asked for, after its picture is drawn. */
public final class DesignSections {
  private final Orthosis orthosis;

  /** Made twice, by two threads, it is the same. */
  private Sections sections;

  DesignSections(Orthosis orthosis) {
    this.orthosis = orthosis;
  }

  /** The loops of each piece at a station (mm), in the pieces' order. */
  public List<List<Loop>> loops(double station) {
    Sections made = sections;
    if (made == null) {
      made = Sections.of(orthosis.digit(), orthosis.solids());
      sections = made;
    }
    return made.loops(station);
  }
}
