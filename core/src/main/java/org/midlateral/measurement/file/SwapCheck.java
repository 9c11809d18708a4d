package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.entry.Setting;

/**
 * Readings that could all be right, and look as if two of them had been swapped or one had slipped:
 * cautions only. Limits: common practice, no source.
 */
final class SwapCheck {
  /** The proximal phalanx may be rounder than the PIP joint by this (mm). */
  private static final double FLESHY = 3;

  /** Taped so near to the web, as a share of the way to the PIP crease, it may be far rounder. */
  private static final double AT_THE_WEB = 0.35;

  /** The palm's part of the finger is not longer than this share of web to PIP crease. */
  private static final double LONG_PALM = 1.25;

  /** From web to PIP crease is usually about as far as from there to the DIP crease, times this. */
  private static final double WEB_TO_PIP = 1.08;

  private final Settings settings;
  private final List<Finding> cautions = new ArrayList<>();

  private SwapCheck(Settings settings) {
    this.settings = settings;
  }

  /** Cautions about readings that look swapped. */
  static List<Finding> check(Settings settings) {
    SwapCheck check = new SwapCheck(settings);
    check.middle();
    check.proximal();
    check.lengths();
    return check.cautions;
  }

  /** A PIP joint slimmer than the middle phalanx. */
  private void middle() {
    OptionalDouble pip = settings.number("circumference.pip");
    OptionalDouble middle = settings.number("circumference.middle-phalanx");
    if (pip.isPresent() && middle.isPresent() && pip.getAsDouble() < middle.getAsDouble()) {
      caution(
          "circumference.pip",
          "circumference.middle-phalanx",
          "the PIP joint is usually the larger of the two",
          pip.getAsDouble(),
          middle.getAsDouble());
    }
  }

  /** A proximal phalanx much rounder than the PIP joint, unless it was taped close to the web. */
  private void proximal() {
    OptionalDouble pip = settings.number("circumference.pip");
    OptionalDouble proximal = settings.number("circumference.proximal-phalanx");
    OptionalDouble station = settings.number("station.proximal-phalanx");
    OptionalDouble length = settings.number("length.web-to-pip");
    if (pip.isEmpty() || proximal.isEmpty()) {
      return;
    }
    boolean nearWeb =
        station.isPresent()
            && length.isPresent()
            && station.getAsDouble() < AT_THE_WEB * length.getAsDouble();
    if (proximal.getAsDouble() > pip.getAsDouble() + FLESHY && !nearWeb) {
      caution(
          "circumference.proximal-phalanx",
          "circumference.pip",
          "midway to the web the finger is usually no more than 3 mm rounder than at the joint",
          proximal.getAsDouble(),
          pip.getAsDouble() + FLESHY);
    }
  }

  /** Palmar crease to web longer than web to PIP, where the other way round would fit better. */
  private void lengths() {
    OptionalDouble palm = settings.number("length.palmar-crease-to-web");
    OptionalDouble web = settings.number("length.web-to-pip");
    OptionalDouble middle = settings.number("length.pip-to-dip");
    if (palm.isEmpty() || web.isEmpty() || middle.isEmpty()) {
      return;
    }
    double usual = WEB_TO_PIP * middle.getAsDouble();
    double asRead = Math.abs(Math.log(web.getAsDouble() / usual));
    double swapped = Math.abs(Math.log(palm.getAsDouble() / usual));
    if (palm.getAsDouble() > LONG_PALM * web.getAsDouble() && swapped < asRead) {
      caution(
          "length.palmar-crease-to-web",
          "length.web-to-pip",
          "from the palmar crease to the web is usually the shorter way",
          palm.getAsDouble(),
          LONG_PALM * web.getAsDouble());
    }
  }

  private void caution(String key, String other, String why, double value, double limit) {
    Optional<Setting> setting = settings.given(key);
    Optional<Setting> beside = settings.given(other);
    if (setting.isEmpty() || beside.isEmpty()) {
      return;
    }
    String text =
        String.format(
            Locale.ROOT,
            "%s: %s beside %s at %s looks as if the two had been swapped, or one misread: %s."
                + " Measure both again.",
            key,
            setting.get().written(),
            beside.get().written(),
            other,
            why);
    cautions.add(Finding.caution("looks-swapped", key, text, value, limit));
  }
}
