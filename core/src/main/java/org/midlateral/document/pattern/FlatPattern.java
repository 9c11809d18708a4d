package org.midlateral.document.pattern;

import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Order;
import org.midlateral.solid.Solid;

/**
 * The flat pattern of one order.
 *
 * @param blank to cut from a cold sheet
 * @param template the finished trough laid flat
 * @param marks of each level
 * @param dorsal blank for the dorsal piece by hand; empty where there is none
 */
public record FlatPattern(
    Blank blank, TraceTemplate template, List<LevelMark> marks, Optional<DorsalBlank> dorsal) {
  public FlatPattern {
    marks = List.copyOf(marks);
  }

  /**
   * The pattern of an order whose trough is made.
   *
   * @param solids the trough, and the dorsal shell where there is one
   */
  public static FlatPattern of(Order order, List<Solid> solids) {
    Solid trough = solids.get(0);
    TroughDesign design = order.design().trough();
    return new FlatPattern(
        Blank.of(order.measurements(), design, trough.piece()),
        TraceTemplate.of(trough),
        LevelMark.of(order.measurements(), design, trough.piece()),
        solids.stream()
            .skip(1)
            .findFirst()
            .map(shell -> DorsalBlank.of(order, trough.piece(), shell.piece())));
  }
}
