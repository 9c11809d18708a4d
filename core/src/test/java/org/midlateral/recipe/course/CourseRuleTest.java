package org.midlateral.recipe.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.SorePlace;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.recipe.refit.Refit.Verdict;

/** Each row of the rules: what makes it hold, what just does not, and what it says. */
class CourseRuleTest {

  /** A row by what makes it hold, what just does not, and a part of what it says. */
  private static Arguments row(
      CourseRule rule, Consumer<States> holds, Consumer<States> not, String says) {
    return Arguments.of(rule, holds, not, says);
  }

  private static GirthChange pip(double now) {
    return new GirthChange(Level.PIP, 66, now, false);
  }

  static List<Arguments> rows() {
    return List.of(
        row(
            CourseRule.TIP_IN_DANGER,
            s -> s.tip = Optional.of(TipState.BLUE),
            s -> s.tip = Optional.empty(),
            "blue in the piece: take it off"),
        row(
            CourseRule.EXTENSION_LOST,
            s -> s.deficits = States.readings(5, 17),
            s -> s.deficits = States.readings(5, 14),
            "12° of extension were lost against the best reading, day 0."),
        row(
            CourseRule.SWOLLEN_WITH_IT,
            s -> {
              s.deficits = States.readings(5, 17);
              s.girths = List.of(pip(69));
            },
            s -> {
              s.deficits = States.readings(5, 17);
              s.girths = List.of(pip(68.5));
            },
            "3.0 mm thicker around than what the piece was made for. The joint is swollen as well"),
        row(
            CourseRule.ACTIVE_LOST,
            s -> s.active = States.readings(10, 21),
            s -> s.active = States.readings(10, 19),
            "11° of active extension were lost, while by hand the joint goes as straight"),
        row(
            CourseRule.EXTENSION_REGAINED,
            s -> {
              s.madeFor = 15;
              s.deficits = States.readings(15, 5);
            },
            s -> {
              s.madeFor = 14;
              s.deficits = States.readings(14, 5);
            },
            "10° of extension were regained since the piece was made for 15°"),
        row(
            CourseRule.FLEXION_LOST,
            s -> s.flexions = States.readings(85, 75),
            s -> s.flexions = States.readings(85, 76),
            "10° of PIP flexion were lost"),
        row(
            CourseRule.SKIN_BROKEN,
            s -> {
              s.skin = Optional.of(SkinState.BROKEN);
              s.soreAt = Optional.of(SorePlace.DORSUM);
            },
            s -> s.skin = Optional.of(SkinState.RED_STAYS),
            "The skin at the dorsum is broken"),
        row(
            CourseRule.SWOLLEN,
            s -> {
              s.girths = List.of(pip(70));
              s.refits = List.of(States.refit(Verdict.TIGHT, -0.4, -0.2, 0));
              s.liner = 1;
            },
            s -> s.girths = List.of(pip(70)),
            "The finger is swollen and the trough is tight: do not wear it so, look for the cause; a"
                + " thinner liner"),
        row(
            CourseRule.TIGHT,
            s -> s.refits = List.of(States.refit(Verdict.TIGHT, -0.4, 0.1, 0.1)),
            s -> s.refits = List.of(States.refit(Verdict.FITS, -0.4, 0.1, 0.1)),
            "26.0 mm from the web, 14.0 mm ulnar of the volar midline"),
        row(
            CourseRule.LOOSE_BRIDGED,
            s -> {
              s.girths = List.of(pip(61));
              s.refits = List.of(States.refit(Verdict.LOOSE, 0.3, 1.3, 1.1));
            },
            s -> s.refits = List.of(States.refit(Verdict.LOOSE, 0.3, 1.9, 0.3)),
            "5.0 mm thinner around than what the piece was made for. The swelling went down. The"
                + " trough stands farther off the skin than when it was made. A liner 1.0 mm"
                + " thicker fills the gap."),
        row(
            CourseRule.LOOSE,
            s -> s.refits = List.of(States.refit(Verdict.LOOSE, 0.3, 3.5, 3.4)),
            s -> s.refits = List.of(States.refit(Verdict.LOOSE, 0.3, 1.3, 1.1)),
            "No liner of one thickness fills that gap."),
        row(
            CourseRule.RED_STAYS,
            s -> {
              s.skin = Optional.of(SkinState.RED_STAYS);
              s.soreAt = Optional.of(SorePlace.RADIAL_SIDE);
            },
            s -> s.skin = Optional.of(SkinState.RED_CLEARS),
            "more than 30 minutes at the radial side"),
        row(
            CourseRule.SORE,
            s -> s.soreness = States.readings(1, 3),
            s -> s.soreness = States.readings(1, 2),
            "It is sore, 3 of 10: ask where"),
        row(
            CourseRule.SELDOM_WORN,
            s -> s.hoursWorn = OptionalDouble.of(3.5),
            s -> s.hoursWorn = OptionalDouble.of(4),
            "Hours worn a night: 3.5, less"),
        row(
            CourseRule.NOT_READ,
            s -> s.deficits = List.of(),
            s -> s.flexions = List.of(),
            "Extension was never read"),
        row(
            CourseRule.KEPT,
            s -> s.deficits = States.readings(5, 14),
            s -> s.deficits = States.readings(5, 16),
            "Extension is kept"));
  }

  private static CourseState state(Consumer<States> change) {
    States states = new States();
    change.accept(states);
    return states.state();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void holdsWhereItMustAndNotJustBeside(
      CourseRule rule, Consumer<States> holds, Consumer<States> not, String says) {
    assertThat(rule.holds(state(holds))).isTrue();
    assertThat(rule.holds(state(not))).isFalse();
    assertThat(rule.sentence(state(holds))).contains(says).matches("[A-Z0-9].*\\.");
    assertThat(rule.source()).isNotBlank();
  }

  @ParameterizedTest
  @EnumSource(CourseRule.class)
  void hasARowAbove(CourseRule rule) {
    assertThat(rows()).filteredOn(row -> row.get()[0] == rule).hasSize(1);
  }

  /** Where all is as it was nothing holds but that extension is kept. */
  @Test
  void nothingElseHoldsWhereNothingChanged() {
    assertThat(holding(state(s -> {}))).containsExactly(CourseRule.KEPT);
  }

  private static Set<CourseRule> holding(CourseState state) {
    return Arrays.stream(CourseRule.values())
        .filter(rule -> rule.holds(state))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(CourseRule.class)));
  }

  /** One of the two always holds, so that there is a verdict. */
  @Test
  void alwaysSaysSomethingOfExtension() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      CourseState state =
          state(
              s -> {
                s.madeFor = random.nextInt(40);
                s.deficits = States.readings(random.nextInt(40), random.nextInt(40));
              });
      assertThat(holding(state))
          .containsAnyOf(CourseRule.EXTENSION_LOST, CourseRule.EXTENSION_REGAINED, CourseRule.KEPT);
    }
  }

  /** With the girths as they were, no word of swelling is said, however the angle changed. */
  @Test
  void swellingIsNoWordOfTheAngle() {
    for (double now : new double[] {0, 17, 30}) {
      CourseState state =
          state(
              s -> {
                s.madeFor = 15;
                s.deficits = States.readings(5, now);
              });
      for (CourseRule rule : holding(state)) {
        assertThat(rule.sentence(state)).doesNotContain("swelling").doesNotContain("The finger is");
      }
    }
  }

  /** Lost since the piece was made, though the best reading was no better. */
  @Test
  void whatThePieceWasMadeForCountsToo() {
    CourseState state =
        state(
            s -> {
              s.madeFor = 0;
              s.deficits = States.readings(12, 12);
            });
    assertThat(holding(state)).containsExactly(CourseRule.EXTENSION_LOST);
    assertThat(CourseRule.EXTENSION_LOST.sentence(state))
        .contains("12° of extension were lost against the 0° the piece was made for");
  }

  /** Evening against morning a girth must change by more. */
  @Test
  void theDayTakesItsPartOfAGirth() {
    assertThat(new GirthChange(Level.PIP, 66, 69.5, false).grown()).isTrue();
    assertThat(new GirthChange(Level.PIP, 66, 69.5, true).grown()).isFalse();
    assertThat(new GirthChange(Level.PIP, 66, 70.2, true).grown()).isTrue();
  }

  /** What the sheet says of the best of ten readings of a joint that never changed. */
  @Test
  void theBestOfTenFlattersOneTimeInSeven() {
    Random random = new Random(10);
    int courses = 20_000;
    int lost = 0;
    for (int i = 0; i < courses; i++) {
      double[] readings = new double[10];
      for (int k = 0; k < readings.length; k++) {
        readings[k] = 20 + ReadingError.GONIOMETER.standardError() * random.nextGaussian();
      }
      CourseState state =
          state(
              s -> {
                s.madeFor = 20;
                s.deficits = States.readings(readings);
              });
      boolean byBest = ReadingError.GONIOMETER.tells(state.sinceBest().orElseThrow());
      lost += byBest ? 1 : 0;
    }
    assertThat(lost / (double) courses).isBetween(1 / 8.0, 1 / 6.0);
  }
}
