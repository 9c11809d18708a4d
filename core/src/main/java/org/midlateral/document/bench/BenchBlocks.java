package org.midlateral.document.bench;

import java.util.List;
import java.util.Locale;
import org.midlateral.mechanics.closure.Closure;

/**
 * What the report says of closure and blank; lengths in mm, pressures in MPa.
 *
 * @param closure how it is held on
 * @param blank what to cut from a cold sheet
 */
public record BenchBlocks(ClosureBlock closure, BlankBlock blank) {

  /**
   * The closures.
   *
   * @param kind that was chosen
   * @param wrapLength of an elastic wrap, as laid
   * @param wrapTurns of it, all passes together
   * @param wrapPressures by level
   * @param sleeve girth by level, over the orthosis
   * @param straps to cut; none where a strap is not advised
   */
  public record ClosureBlock(
      String kind,
      double wrapLength,
      int wrapTurns,
      List<PressureLine> wrapPressures,
      List<SleeveLine> sleeve,
      List<StrapLine> straps) {}

  /** Pressure of the wrap at a level. */
  public record PressureLine(String level, double pressure) {}

  /** Girth at a level, and the width of a sleeve laid flat that just fits it. */
  public record SleeveLine(String level, double girth, double flatWidth) {}

  /**
   * One strap.
   *
   * @param width of the band that both straps are cut from, along its middle
   * @param free hook that the other strap leaves it to land on
   */
  public record StrapLine(
      double station,
      double girth,
      double length,
      double width,
      double hook,
      double attached,
      double free) {}

  /** The blank. */
  public record BlankBlock(double length, double width, double thickness) {}

  /** Both blocks of the documents of one order. */
  public static BenchBlocks of(BenchDocuments documents) {
    var blank = documents.pattern().blank();
    return new BenchBlocks(
        closure(documents.closure()),
        new BlankBlock(blank.length(), blank.width(), blank.thickness()));
  }

  private static ClosureBlock closure(Closure closure) {
    return new ClosureBlock(
        closure.kind().name().toLowerCase(Locale.ROOT),
        closure.wrap().length(),
        closure.wrap().turns() * closure.wrap().passes(),
        closure.wrap().pressures().stream()
            .map(p -> new PressureLine(p.level().key(), p.pressure()))
            .toList(),
        closure.sleeve().levels().stream()
            .map(l -> new SleeveLine(l.level().key(), l.worn(), l.worn() / 2))
            .toList(),
        closure.straps().stream()
            .map(
                s ->
                    new StrapLine(
                        s.station(),
                        s.girth(),
                        s.length(),
                        s.width(),
                        s.hook(),
                        s.attached(),
                        s.free()))
            .toList());
  }
}
