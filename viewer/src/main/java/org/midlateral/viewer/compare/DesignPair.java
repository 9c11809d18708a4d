package org.midlateral.viewer.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.joint.JointAnswer;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.section.CrossSection;

/**
 * A design that was kept and the one there is now.
 *
 * @param kept with its shapes
 * @param now with its shapes
 */
public record DesignPair(MadeDraft kept, MadeDraft now) {
  private static final double KPA = 1000;
  private static final int MOST_KEYS = 3;

  /** What was changed, and what that does to the joint, the skin and the trough, in a line. */
  public String difference() {
    List<String> keys = keys();
    if (keys.isEmpty()) {
      return "Both are the same design.";
    }
    DesignShapes before = kept.shapes().orElseThrow();
    DesignShapes after = now.shapes().orElseThrow();
    List<String> told = new ArrayList<>();
    Optional<JointAnswer> first = joint(before);
    Optional<JointAnswer> second = joint(after);
    if (first.isPresent() && second.isPresent()) {
      told.add(angles(first.get(), second.get()));
      told.add(
          from(
              "%.0f",
              KPA * first.get().squareCentimetre().pressure(),
              KPA * second.get().squareCentimetre().pressure(),
              " kPa at most"));
    } else {
      told.add("how the joint is held cannot be computed for both");
    }
    told.add("trough's EI at the PIP \u00d7 " + Scale.text(atPip(after) / atPip(before)));
    return String.join(", ", keys) + ": " + String.join("; ", told) + ". Estimates.";
  }

  private static String angles(JointAnswer first, JointAnswer second) {
    if (!first.held() || !second.held()) {
      return (first.held() ? "held" : "not held")
          + " \u2192 "
          + (second.held() ? "held" : "not held");
    }
    return "beyond the angle measured by " + from("%.1f", first.angle(), second.angle(), "°");
  }

  private static String from(String form, double before, double after, String unit) {
    String was = String.format(Locale.ROOT, form, before);
    String is = String.format(Locale.ROOT, form, after);
    return was.equals(is) ? is + unit + " as before" : was + " \u2192 " + is + unit;
  }

  /** The keys that differ, with their values. */
  private List<String> keys() {
    Set<String> paths = new LinkedHashSet<>(kept.draft().values().keySet());
    paths.addAll(now.draft().values().keySet());
    List<String> keys = new ArrayList<>();
    for (String path : paths) {
      if (!value(kept.draft(), path).equals(value(now.draft(), path))) {
        keys.add(path + " " + value(kept.draft(), path) + " \u2192 " + value(now.draft(), path));
      }
    }
    if (keys.size() > MOST_KEYS) {
      List<String> few = new ArrayList<>(keys.subList(0, MOST_KEYS));
      few.add(keys.size() - MOST_KEYS + " more");
      return few;
    }
    return keys;
  }

  /** As typed, or what is taken where nothing is. */
  private static String value(Draft draft, String path) {
    String typed = draft.get(path);
    return typed.isEmpty() ? Draft.key(path).flatMap(k -> k.standard()).orElse("none") : typed;
  }

  private static Optional<JointAnswer> joint(DesignShapes design) {
    try {
      return Optional.of(JointHeld.withoutBands(design.orthosis()).answer());
    } catch (DesignRefused | NotComputable e) {
      return Optional.empty();
    }
  }

  private static double atPip(DesignShapes design) {
    CrossSection section = CrossSection.of(design, design.orthosis().digit().pipAxis());
    return section.cut(false).orElseThrow().figures().rigidity();
  }
}
