package org.midlateral.recipe.course;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import org.midlateral.measurement.ReadingError;
import org.midlateral.measurement.course.DatedReading;
import org.midlateral.measurement.course.SkinReading.SkinState;
import org.midlateral.measurement.course.SkinReading.TipState;
import org.midlateral.measurement.course.VisitTime;
import org.midlateral.recipe.refit.Refit;
import org.midlateral.recipe.refit.Refit.Verdict;

/**
 * The rules by which a course comes to its verdict, one a row: when it holds, what it says, and
 * where it comes from. The angle stands before how the piece sits, and only a danger stands before
 * the angle. Swelling is said only where a girth grew by more than a tape can tell.
 */
public enum CourseRule {
  TIP_IN_DANGER(
      CourseVerdict.REVIEW,
      s -> s.tip().orElse(TipState.USUAL) != TipState.USUAL,
      s ->
          "The fingertip is "
              + s.tip().orElseThrow().name().toLowerCase(Locale.ROOT)
              + " in the piece: take it off and seek advice at once.",
      "the caution remove-it; common practice, no source"),

  EXTENSION_LOST(
      CourseVerdict.REVIEW,
      s -> lost(s.sinceBest()) || lost(s.sinceMade()),
      CourseRule::extensionLost,
      "the smallest change that counts, as stated; common practice, no source"),

  SWOLLEN_WITH_IT(
      CourseVerdict.REVIEW,
      s -> EXTENSION_LOST.holds(s) && s.grown().isPresent(),
      s -> girth(s.grown().orElseThrow(), s) + " The joint is swollen as well: look for the cause.",
      "common practice, no source"),

  ACTIVE_LOST(
      CourseVerdict.REVIEW,
      s -> lost(s.activeSinceBest()) && !EXTENSION_LOST.holds(s),
      s ->
          String.format(
              Locale.ROOT,
              "%.0f° of active extension were lost, while by hand the joint goes as straight as"
                  + " before: the piece is not the cause. Ask what happened, and have the"
                  + " extensor tendon examined.",
              s.activeSinceBest().orElseThrow()),
      "common practice, no source"),

  EXTENSION_REGAINED(
      CourseVerdict.REMAKE,
      s -> regained(s.sinceMade()),
      s ->
          String.format(
              Locale.ROOT,
              "%.0f° of extension were regained since the piece was made for %.0f°: it still"
                  + " holds the former angle, not the one regained.",
              -s.sinceMade().orElseThrow(),
              s.madeFor().orElseThrow()),
      "the smallest change that counts, as stated; common practice, no source"),

  FLEXION_LOST(
      CourseVerdict.REVIEW,
      s -> lost(s.flexionLost()),
      s ->
          String.format(
              Locale.ROOT,
              "%.0f° of PIP flexion were lost against its best: nights in extension may be the"
                  + " cause. Ask how much the joint is bent by day, and review the hours of"
                  + " wear.",
              s.flexionLost().orElseThrow()),
      "the smallest change that counts, as stated; common practice, no source"),

  SKIN_BROKEN(
      CourseVerdict.REVIEW,
      s -> s.skin().orElse(SkinState.CLEAR) == SkinState.BROKEN,
      s -> "The skin" + at(s) + " is broken: leave the piece off until it has healed.",
      "the caution not-for; common practice, no source"),

  SWOLLEN(
      CourseVerdict.REMAKE,
      s -> s.sits(Verdict.TIGHT).isPresent() && s.grown().isPresent(),
      s ->
          girth(s.grown().orElseThrow(), s)
              + " The finger is swollen and the "
              + name(s.sits(Verdict.TIGHT).orElseThrow())
              + " is tight: do not wear it so, look for the cause"
              + (thinner(s) ? "; a thinner liner gives it room until then." : "."),
      "common practice, no source"),

  TIGHT(
      CourseVerdict.ADJUST,
      s -> s.sits(Verdict.TIGHT).isPresent() && s.grown().isEmpty(),
      s ->
          "The "
              + name(s.sits(Verdict.TIGHT).orElseThrow())
              + " is pressed into the skin "
              + where(s.sits(Verdict.TIGHT).orElseThrow(), s)
              + ", though no girth grew by more than a tape can tell: measure again, and relieve it"
              + " there.",
      "common practice, no source"),

  LOOSE_BRIDGED(
      CourseVerdict.ADJUST,
      s -> loose(s) && s.bridge().isPresent(),
      s ->
          standsOff(s)
              + String.format(
                  Locale.ROOT, " A liner %.1f mm thicker fills the gap.", s.bridge().orElseThrow()),
      "steps and thickness of liners: common practice, no source"),

  LOOSE(
      CourseVerdict.REMAKE,
      s -> loose(s) && s.bridge().isEmpty(),
      s -> standsOff(s) + " No liner of one thickness fills that gap.",
      "common practice, no source"),

  RED_STAYS(
      CourseVerdict.ADJUST,
      s -> s.skin().orElse(SkinState.CLEAR) == SkinState.RED_STAYS,
      s ->
          "Redness stays for more than 30 minutes"
              + at(s)
              + ": relieve or pad the piece there, and"
              + " check again after every wear.",
      "the caution skin-check; common practice, no source"),

  SORE(
      CourseVerdict.ADJUST,
      s -> s.sore() >= Limits.SORE || s.sore() - leastSore(s) >= Limits.MORE_SORE,
      s ->
          String.format(
              Locale.ROOT,
              "It is sore%s, %.0f of 10: %srelieve the piece there.",
              at(s),
              s.sore(),
              s.soreAt().isPresent() ? "" : "ask where, and "),
      "2 points of 10 are a change that patients notice: Farrar et al., Pain 94 (2001) 149-158, from"
          + " memory; 4 is moderate, common practice"),

  SELDOM_WORN(
      CourseVerdict.ADJUST,
      s -> s.hoursWorn().isPresent() && s.hoursWorn().getAsDouble() < Limits.HOURS,
      s ->
          "Hours worn a night: "
              + String.format(Locale.ROOT, "%.1f", s.hoursWorn().orElseThrow()).replace(".0", "")
              + ", less than half of one. Ask why it is not worn, and solve that first.",
      "half of a night of eight hours; common practice, no source"),

  NOT_READ(
      CourseVerdict.KEEP,
      s -> s.deficits().isEmpty(),
      s -> "Extension was never read: whether it is kept is not known.",
      "common practice, no source"),

  KEPT(
      CourseVerdict.KEEP,
      s -> !s.deficits().isEmpty() && !EXTENSION_LOST.holds(s) && !EXTENSION_REGAINED.holds(s),
      CourseRule::kept,
      "the smallest change that counts, as stated");

  /** Where a rule begins to hold. */
  private static final class Limits {
    static final double SORE = 4;
    static final double MORE_SORE = 2;
    static final double HOURS = 4;
  }

  private final CourseVerdict verdict;
  private final Predicate<CourseState> when;
  private final Function<CourseState, String> sentence;
  private final String source;

  CourseRule(
      CourseVerdict verdict,
      Predicate<CourseState> when,
      Function<CourseState, String> sentence,
      String source) {
    this.verdict = verdict;
    this.when = when;
    this.sentence = sentence;
    this.source = source;
  }

  /** What it comes to where it holds. */
  public CourseVerdict verdict() {
    return verdict;
  }

  /** Where it comes from. */
  public String source() {
    return source;
  }

  /** Whether it holds. */
  boolean holds(CourseState state) {
    return when.test(state);
  }

  /** What it says of a state in which it holds. */
  String sentence(CourseState state) {
    return sentence.apply(state);
  }

  private static boolean lost(OptionalDouble change) {
    return change.isPresent()
        && change.getAsDouble() > 0
        && ReadingError.GONIOMETER.tells(change.getAsDouble());
  }

  private static boolean regained(OptionalDouble change) {
    return change.isPresent()
        && change.getAsDouble() < 0
        && ReadingError.GONIOMETER.tells(change.getAsDouble());
  }

  private static String extensionLost(CourseState s) {
    double made = s.sinceMade().orElse(Double.NEGATIVE_INFINITY);
    double best = s.sinceBest().orElseThrow();
    String against =
        best >= made
            ? "against the best reading, " + s.best().map(VisitTime::shown).orElseThrow()
            : String.format(
                Locale.ROOT, "against the %.0f° the piece was made for", s.madeFor().orElseThrow());
    return String.format(
        Locale.ROOT,
        "%.0f° of extension were lost %s. Read it once more. If it is so, do not force the piece"
            + " on: ask how long it was worn, whether the joint hurts or is swollen, and what"
            + " happened.",
        Math.max(made, best),
        against);
  }

  private static String kept(CourseState s) {
    double first = s.sinceFirst().orElseThrow();
    return "Extension is kept: it differs from what the piece was made for by no more than a"
        + " goniometer can tell."
        + (ReadingError.GONIOMETER.tells(first)
            ? String.format(
                Locale.ROOT,
                " Since the first visit %.0f° were %s.",
                Math.abs(first),
                first < 0 ? "gained" : "lost")
            : "");
  }

  private static String girth(GirthChange change, CourseState s) {
    return "The "
        + change.level().words()
        + " is "
        + s.lengths().with(Math.abs(change.change()))
        + (change.change() > 0 ? " thicker" : " thinner")
        + " around than what the piece was made for.";
  }

  private static String name(Refit refit) {
    return refit.piece().replace('-', ' ');
  }

  private static boolean thinner(CourseState s) {
    Refit tight = s.sits(Verdict.TIGHT).orElseThrow();
    return !tight.piece().contains("shell") && s.liner() > 0 && -tight.min() <= s.liner();
  }

  private static String where(Refit refit, CourseState s) {
    return String.format(
        Locale.ROOT,
        "%s %s the web, %s %s of the volar midline",
        s.lengths().with(Math.abs(refit.minStation())),
        refit.minStation() >= 0 ? "from" : "proximal of",
        s.lengths().with(Math.abs(refit.minGirth())),
        refit.minGirth() >= 0 ? "radial" : "ulnar");
  }

  private static boolean loose(CourseState s) {
    return s.sits(Verdict.LOOSE).isPresent() && s.sits(Verdict.TIGHT).isEmpty();
  }

  private static String standsOff(CourseState s) {
    return s.fallen().map(fallen -> girth(fallen, s) + " The swelling went down. ").orElse("")
        + "The "
        + name(s.sits(Verdict.LOOSE).orElseThrow())
        + " stands farther off the skin than when it was made.";
  }

  private static String at(CourseState s) {
    return s.soreAt().map(place -> " at the " + place.shown()).orElse("");
  }

  private static double leastSore(CourseState s) {
    return s.soreness().stream().mapToDouble(DatedReading::value).min().orElse(0);
  }
}
