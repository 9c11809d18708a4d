package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.midlateral.measurement.EllipsePerimeter;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.entry.Setting;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.Shown;

/** Checks values against each other; what was refused on its own is passed over. */
final class CrossCheck {

  /** Neighbouring circumferences further apart than this are taken for a mix-up. */
  private static final double REFUSED_RATIO = 1.6;

  private static final double UNUSUAL_RATIO = 1.3;

  /** Depth over width of a finger's section: 0.87 to 0.89 is the mean; these are far outside. */
  private static final AllowedRange DEPTH_TO_WIDTH = new AllowedRange(0.6, 1.2);

  /** Circumference over width where only a width is known, at a depth of 0.9 of it. */
  private static final double AROUND_WIDTH = 2.986;

  /** Levels closer than this along the finger cannot be told apart (mm). */
  private static final double CLOSEST = 1.0;

  /** Material left between two vents (mm). */
  private static final double BETWEEN_VENTS = 2.0;

  private final Settings settings;
  private final List<InputError> errors = new ArrayList<>();
  private final List<Finding> cautions = new ArrayList<>();

  /**
   * What came of it.
   *
   * @param errors values that cannot stand together
   * @param cautions values that are unusual together
   */
  record CrossChecked(List<InputError> errors, List<Finding> cautions) {}

  private CrossCheck(Settings settings) {
    this.settings = settings;
  }

  static CrossChecked check(Settings settings) {
    CrossCheck check = new CrossCheck(settings);
    check.circumferences();
    check.widths();
    check.stations();
    check.vents("trough.vents");
    check.vents("dorsal-shell.vents");
    check.making();
    check.process();
    check.gauge();
    return new CrossChecked(check.errors, check.cautions);
  }

  private void circumferences() {
    Map<Level, Double> around = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      numberAt("circumference", level).ifPresent(value -> around.put(level, value));
    }
    List<Level> levels = List.copyOf(around.keySet());
    for (int i = 1; i < levels.size(); i++) {
      Level level = levels.get(i);
      Level before = levels.get(i - 1);
      neighbours(
          "circumference." + level.key(),
          around.get(level),
          "circumference." + before.key(),
          around.get(before));
    }
    OptionalDouble web = numberAt("width", Level.WEB);
    if (web.isPresent() && around.containsKey(Level.PROXIMAL_PHALANX)) {
      neighbours(
          "width.web",
          web.getAsDouble() * AROUND_WIDTH,
          "circumference.proximal-phalanx",
          around.get(Level.PROXIMAL_PHALANX));
    }
  }

  private void neighbours(String key, double value, String other, double otherValue) {
    double ratio = Math.max(value, otherValue) / Math.min(value, otherValue);
    Setting setting = settings.given(key).orElseThrow();
    String with = settings.given(other).orElseThrow().written();
    String pair = setting.written() + " beside " + with + " at " + other;
    if (ratio > REFUSED_RATIO) {
      String allowed = "circumferences of neighbours within " + REFUSED_RATIO + " of each other";
      String text = pair + " looks like a mix-up; allowed: " + allowed;
      errors.add(setting.place().error(key, setting.written(), allowed, text));
    } else if (ratio > UNUSUAL_RATIO) {
      String text = key + ": " + pair + " is an unusual difference; measure both again.";
      cautions.add(Finding.caution("unusual-step", key, text, ratio, UNUSUAL_RATIO));
    }
  }

  private void widths() {
    for (Level level : Level.values()) {
      OptionalDouble width = numberAt("width", level);
      OptionalDouble around = numberAt("circumference", level);
      if (width.isPresent() && around.isPresent()) {
        ellipse(level, width.getAsDouble(), around.getAsDouble());
      } else if (width.isPresent() && level == Level.DIP) {
        String text = "width.dip: it is of no use without circumference.dip; write that too.";
        double none = Double.NaN;
        cautions.add(Finding.caution("unused-width", "width.dip", text, width.getAsDouble(), none));
      }
    }
  }

  private void ellipse(Level level, double width, double around) {
    double half = width / 2;
    double least = EllipsePerimeter.of(half, half * DEPTH_TO_WIDTH.low());
    double most = EllipsePerimeter.of(half, half * DEPTH_TO_WIDTH.high());
    if (around >= least && around <= most) {
      return;
    }
    String key = "width." + level.key();
    Setting setting = settings.given(key).orElseThrow();
    String with = settings.given("circumference." + level.key()).orElseThrow().written();
    AllowedRange fitting = new AllowedRange(width * around / most, width * around / least);
    String allowed = Shown.range(fitting, setting.key(), LengthUnit.MM) + " for that circumference";
    String text =
        setting.written()
            + " and a circumference of "
            + with
            + " do not fit together in one section of a finger; allowed: "
            + allowed;
    errors.add(setting.place().error(key, setting.written(), allowed, text));
  }

  /** Levels, and joints, must follow each other along the finger. */
  private void stations() {
    OptionalDouble web = settings.number("length.web-to-pip");
    OptionalDouble dip = settings.number("length.pip-to-dip");
    OptionalDouble tip = settings.number("length.dip-to-tip");
    OptionalDouble pipAxis = settings.number("axis.pip-distal-of-crease");
    OptionalDouble dipAxis = settings.number("axis.dip-distal-of-crease");
    if (web.isEmpty() || dip.isEmpty() || tip.isEmpty() || pipAxis.isEmpty() || dipAxis.isEmpty()) {
      return;
    }
    double pipCrease = web.getAsDouble();
    double dipCrease = pipCrease + dip.getAsDouble();
    double end = dipCrease + tip.getAsDouble();
    double pip = pipCrease + pipAxis.getAsDouble();
    double joint = dipCrease + dipAxis.getAsDouble();
    station(Level.PROXIMAL_PHALANX, pipCrease / 2, "the web", 0, "the PIP joint's axis", pip);
    double middle = pipCrease + dip.getAsDouble() / 2;
    String dipName = "the DIP joint's axis";
    station(Level.MIDDLE_PHALANX, middle, "the PIP joint's axis", pip, dipName, joint);
    double pulp = dipCrease + tip.getAsDouble() / 2;
    station(Level.TIP, pulp, dipName, joint, "the end of the pulp", end);
  }

  private void station(Level level, double usual, String from, double low, String to, double high) {
    String key = "station." + level.key();
    double station = settings.number(key).orElse(usual);
    if (station >= low + CLOSEST && station <= high - CLOSEST) {
      return;
    }
    String blamed = settings.given(key).isPresent() ? key : blamed(level);
    settings
        .given(blamed)
        .ifPresent(
            setting -> {
              String allowed =
                  String.format(
                      Locale.ROOT,
                      "more than %s (%s mm) and less than %s (%s mm), by 1 mm at least",
                      from,
                      Shown.number(low),
                      to,
                      Shown.number(high));
              boolean byAxis =
                  level == Level.TIP && settings.given("axis.dip-distal-of-crease").isEmpty();
              String text =
                  String.format(
                      Locale.ROOT,
                      "%s puts the %s level %s mm from the web; allowed: %s%s",
                      setting.written(),
                      level.key(),
                      Shown.number(station),
                      allowed,
                      byAxis ? "; axis.dip-distal-of-crease moves that axis" : "");
              errors.add(setting.place().error(blamed, setting.written(), allowed, text));
            });
  }

  private static String blamed(Level level) {
    return switch (level) {
      case PROXIMAL_PHALANX -> "length.web-to-pip";
      case MIDDLE_PHALANX -> "length.pip-to-dip";
      default -> "length.dip-to-tip";
    };
  }

  private void vents(String section) {
    OptionalDouble diameter = settings.number(section + ".diameter");
    OptionalDouble spacing = settings.number(section + ".spacing");
    if (diameter.isEmpty() || spacing.isEmpty() || diameter.getAsDouble() == 0) {
      return;
    }
    double least = diameter.getAsDouble() + BETWEEN_VENTS;
    String key =
        settings.given(section + ".spacing").isPresent()
            ? section + ".spacing"
            : section + ".diameter";
    if (spacing.getAsDouble() < least && settings.given(key).isPresent()) {
      Setting setting = settings.given(key).orElseThrow();
      String allowed = "a spacing of the diameter and 2 mm at least";
      String text =
          setting.written() + " would let the vents run into each other; allowed: " + allowed;
      errors.add(setting.place().error(key, setting.written(), allowed, text));
    }
  }

  /** A way of making that the material is not made by. An own modulus is of an own material. */
  private void making() {
    String making = settings.word("making");
    Material material = Material.named(settings.word("material.name"));
    boolean fits =
        making.equals("auto")
            || making.equals("hand") == material.moulded()
            || settings.given("material.modulus").isPresent();
    if (!fits) {
      String text =
          String.format(
              "making: %s does not go with %s, which is %s; choose making and material.name to go"
                  + " together: material.name=%s, or making=%s.",
              making,
              material.name(),
              material.moulded() ? "moulded by hand from a sheet" : "printed and no sheet to mould",
              materialMade(making),
              material.moulded() ? "hand" : "print");
      double none = Double.NaN;
      cautions.add(Finding.caution("making-and-material", "making", text, none, none));
    }
  }

  /** The table's first material that is made so, printed by the process that is asked for. */
  private String materialMade(String making) {
    String by = making.equals("hand") ? Material.MOULDING : settings.word("print.process");
    return Material.all().stream()
        .filter(material -> material.madeBy().contains(by))
        .findFirst()
        .orElseThrow()
        .name();
  }

  /**
   * Printing by a process that the material is not usually printed by. Whoever states a modulus has
   * a material of his own, of which the table knows no process.
   */
  private void process() {
    if (settings.word("making").equals("hand")) {
      return;
    }
    moulded();
    if (settings.given("material.modulus").isPresent()) {
      return;
    }
    Material material = Material.named(settings.word("material.name"));
    String process = settings.word("print.process");
    if (!material.goesWith(process)) {
      String text =
          String.format(
              "print.process: %s is not usually printed by %s, but by %s; its limits and figures may"
                  + " not hold. Choose print.process and material.name to go together.",
              material.name(), process, String.join(" or ", material.madeBy()));
      double none = Double.NaN;
      cautions.add(Finding.caution("process-and-material", "print.process", text, none, none));
    }
  }

  /** A process chosen for a piece that is moulded by hand; the usual one may just stand there. */
  private void moulded() {
    Material material = Material.named(settings.word("material.name"));
    String process = settings.word("print.process");
    InputKey key = KeyTable.standard().find("print.process").orElseThrow();
    boolean asked = settings.word("making").equals("auto");
    if (asked && material.moulded() && !process.equals(key.standard().orElseThrow())) {
      String text =
          String.format(
              "print.process: %s does not go with %s, which is moulded by hand and not printed;"
                  + " choose the material that is printed, or leave print.process out.",
              process, material.name());
      double none = Double.NaN;
      cautions.add(Finding.caution("process-and-material", "print.process", text, none, none));
    }
  }

  /** A reading of a gauge needs both force and distance. */
  private void gauge() {
    String[] keys = {"joint.gauge.force", "joint.gauge.distance"};
    for (String key : new String[] {keys[0], keys[1], "joint.gauge.angle"}) {
      for (String needed : keys) {
        if (settings.given(key).isPresent() && settings.given(needed).isEmpty()) {
          Setting setting = settings.given(key).orElseThrow();
          String allowed = "a reading with both " + keys[0] + " and " + keys[1];
          String text = setting.written() + " is given without " + needed + "; allowed: " + allowed;
          errors.add(setting.place().error(key, setting.written(), allowed, text));
        }
      }
    }
  }

  private OptionalDouble numberAt(String section, Level level) {
    return settings.givenNumber(section + "." + level.key());
  }
}
