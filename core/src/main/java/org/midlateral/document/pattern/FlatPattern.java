package org.midlateral.document.pattern;

import java.util.List;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Order;
import org.midlateral.solid.Solid;

/**
 * The flat pattern of one order.
 *
 * @param blank to cut from a cold sheet
 * @param template the trimmed trough, to trace
 * @param marks of each level
 */
public record FlatPattern(Blank blank, TraceTemplate template, List<LevelMark> marks) {
  public FlatPattern {
    marks = List.copyOf(marks);
  }

  /** The pattern of an order whose trough is made. */
  public static FlatPattern of(Order order, Solid trough) {
    TroughDesign design = order.design().trough();
    return new FlatPattern(
        Blank.of(order.measurements(), design, trough.piece()),
        TraceTemplate.of(trough),
        LevelMark.of(order.measurements(), design, trough.piece()));
  }
}
