package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.SorePlace;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.recipe.refit.Refit;

/** States of invented courses, each by what it differs in from one in which all is as it was. */
final class States {
  List<DatedReading> deficits = readings(5, 5);
  List<DatedReading> active = readings(10, 10);
  List<DatedReading> flexions = readings(85, 85);
  List<DatedReading> soreness = readings(1, 1);
  double madeFor = 5;
  Optional<TipState> tip = Optional.of(TipState.USUAL);
  Optional<SkinState> skin = Optional.of(SkinState.CLEAR);
  Optional<SorePlace> soreAt = Optional.empty();
  OptionalDouble hoursWorn = OptionalDouble.of(8);
  List<GirthChange> girths = List.of(new GirthChange(Level.PIP, 66, 66, false));
  double liner;
  List<Refit> refits = List.of(refit(Refit.Verdict.FITS, 0.2, 0.3, 0.3));

  /** Readings a week apart. */
  static List<DatedReading> readings(double... values) {
    List<DatedReading> readings = new ArrayList<>();
    for (double value : values) {
      VisitTime time = new VisitTime(7 * readings.size(), Optional.empty(), Optional.empty());
      readings.add(new DatedReading(time, value));
    }
    return readings;
  }

  /** A trough that sits so, with mean gaps at two levels (mm), made with 0.3. */
  static Refit refit(Refit.Verdict verdict, double min, double pip, double middle) {
    return new Refit(
        "trough",
        0.3,
        min,
        26,
        -14,
        (pip + middle) / 2,
        0,
        0,
        0,
        List.of(
            new Refit.AtLevel("pip", min, pip, 0.3, 0),
            new Refit.AtLevel("middle-phalanx", min, middle, 0.3, 0)),
        verdict,
        "invented");
  }

  CourseState state() {
    return new CourseState(
        deficits,
        OptionalDouble.of(madeFor),
        active,
        flexions,
        tip,
        skin,
        soreness,
        soreAt,
        hoursWorn,
        girths,
        liner,
        refits,
        new Lengths(LengthUnit.MM));
  }
}
