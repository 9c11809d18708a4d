package org.midlateral.document.drawing;

import java.util.List;

/** How a line is drawn, and on which layer of a DXF file it lies. */
public enum Pen {
  /** Cut along it. */
  CUT(0.60, List.of()),
  /** Fold, bend or close along it. */
  FOLD(0.35, List.of(3.0, 1.5)),
  /** A line of reference: midline, axis, level. */
  AXIS(0.25, List.of(5.0, 1.2, 0.8, 1.2)),
  /** A tick to be carried over to the sheet or the skin. */
  MARK(0.45, List.of()),
  /** A dimension, a table's rule, a leader. */
  FINE(0.15, List.of()),
  /** An edge seen in a view. */
  EDGE(0.35, List.of()),
  /** Something shown for orientation only. */
  GHOST(0.20, List.of(0.5, 1.0));

  private final double weight;
  private final List<Double> dashes;

  Pen(double weight, List<Double> dashes) {
    this.weight = weight;
    this.dashes = dashes;
  }

  /** Width of the line (mm). */
  public double weight() {
    return weight;
  }

  /** Lengths of dashes and gaps in turn (mm); empty is solid. */
  public List<Double> dashes() {
    return dashes;
  }
}
