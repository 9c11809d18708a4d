package org.midlateral.mechanics.closure;

import java.util.List;

/**
 * Adhesive tape round the closed shell: one turn at each place, on itself at the end.
 *
 * @param stations of the turns (mm)
 * @param lengths of the pieces, once round and the lap (mm)
 * @param width of the tape (mm)
 */
public record Tape(List<Double> stations, List<Double> lengths, double width) {
  public Tape {
    stations = List.copyOf(stations);
    lengths = List.copyOf(lengths);
  }
}
