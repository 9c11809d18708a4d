package org.midlateral.measurement.course;

import java.util.List;

/**
 * What was done to the piece at a visit.
 *
 * @param change of it
 * @param choices each {@code KEY=VALUE} of a measurement file, that were changed for a new one
 */
public record PieceWork(PieceChange change, List<String> choices) {
  /** Nothing was done. */
  public static final PieceWork NONE = new PieceWork(PieceChange.SAME, List.of());

  public PieceWork {
    choices = List.copyOf(choices);
  }

  /** How much it was changed. */
  public enum PieceChange {
    SAME,
    ADJUSTED,
    /** Remoulded or reprinted from this visit's readings. */
    NEW
  }

  /** Whether a new piece was made. */
  public boolean isNew() {
    return change == PieceChange.NEW;
  }
}
