package org.midlateral.mechanics.closure;

import java.util.List;
import org.midlateral.measurement.Design.ClosureDesign;
import org.midlateral.measurement.Level;

/**
 * An elastic band wound along the finger.
 *
 * @param width of the band (mm)
 * @param tension it is laid with (N)
 * @param turns in each pass
 * @param passes along the finger
 * @param length that is laid, stretched as it lies, with one end lapped (mm)
 * @param layers lying on one another, on the whole
 * @param pressures by level
 */
public record ElasticWrap(
    double width,
    double tension,
    int turns,
    int passes,
    double length,
    double layers,
    List<LevelPressure> pressures) {

  public ElasticWrap {
    pressures = List.copyOf(pressures);
  }

  /**
   * Pressure at a level.
   *
   * @param level of the finger
   * @param pressure (MPa)
   */
  public record LevelPressure(Level level, double pressure) {}

  /**
   * Winds a band from one end of the orthosis to the other, as often as the layers ask for.
   *
   * @param laid how it lies along the finger
   */
  static ElasticWrap of(
      ClosureDesign design, ClosureLayout laid, OuterGirth girth, List<LevelGirth> levels) {
    double from = laid.from();
    double to = laid.to();
    int turns = laid.turns();
    double step = design.width() * (1 - design.overlap());
    double span = Math.max(0, to - from - design.width());
    double length = 0;
    for (int k = 0; k < turns; k++) {
      double middle = from + Math.min((to - from) / 2, design.width() / 2);
      double station = turns == 1 ? (from + to) / 2 : middle + k * span / (turns - 1);
      length += Math.hypot(girth.at(station), turns == 1 ? 0 : step);
    }
    List<LevelPressure> pressures =
        levels.stream()
            .map(
                level ->
                    new LevelPressure(
                        level.level(),
                        Laplace.pressure(
                            laid.layers(), laid.tension(), design.width(), level.worn())))
            .toList();
    return new ElasticWrap(
        design.width(),
        laid.tension(),
        turns,
        laid.passes(),
        laid.passes() * length + design.lap(),
        laid.layers(),
        pressures);
  }
}
