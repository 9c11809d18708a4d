package org.midlateral.measurement.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.ClosureDesign;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.DorsalShellDesign;
import org.midlateral.measurement.Design.Make;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.Design.MakingDesign;
import org.midlateral.measurement.Design.MaterialDesign;
import org.midlateral.measurement.Design.Paper;
import org.midlateral.measurement.Design.PrintDesign;
import org.midlateral.measurement.Design.ProcessDesign;
import org.midlateral.measurement.Design.ProximalSign;
import org.midlateral.measurement.Design.ReliefDesign;
import org.midlateral.measurement.Design.SupportDesign;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.Design.VentDesign;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.Room;
import org.midlateral.measurement.entry.Setting;

/** Makes the records from checked settings. */
final class OrderBuilder {

  private final Settings settings;

  OrderBuilder(Settings settings) {
    this.settings = settings;
  }

  /** The whole order; every required setting must be there. */
  Order order() {
    return new Order(measurements(), design(), settings.given("note").map(Setting::word));
  }

  private Measurements measurements() {
    return new Measurements(
        settings.word("reference"),
        word("hand", Hand.class),
        word("digit", Digit.class),
        word("unit", LengthUnit.class),
        byLevel("circumference"),
        byLevel("width"),
        number("length.palmar-crease-to-web"),
        number("length.web-to-pip"),
        number("length.pip-to-dip"),
        number("length.dip-to-tip"),
        Math.toRadians(number("angle.pip-extension-deficit")),
        Math.toRadians(number("angle.dip-flexion")),
        number("axis.pip-distal-of-crease"),
        number("axis.dip-distal-of-crease"),
        byLevel("station"),
        room());
  }

  private Room room() {
    return new Room(
        number("room.swelling"), settings.number("room.radial"), settings.number("room.ulnar"));
  }

  private Map<Level, Double> byLevel(String section) {
    Map<Level, Double> values = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      settings
          .givenNumber(section + "." + level.key())
          .ifPresent(value -> values.put(level, value));
    }
    return values;
  }

  /** What was chosen; without settings, the defaults. */
  Design design() {
    return new Design(
        trough(),
        relief(),
        dorsalShell(),
        closure(),
        material(),
        print(),
        support(),
        new HoldingBuilder(settings).holding(),
        new MakingDesign(word("making", Making.class), word("paper", Paper.class)));
  }

  private TroughDesign trough() {
    return new TroughDesign(
        number("trough.wrap"),
        number("trough.wall"),
        number("trough.clearance"),
        number("trough.liner"),
        number("trough.web-clearance"),
        number("trough.proximal-margin"),
        word("trough.distal", DistalEnd.class),
        number("trough.distal-margin"),
        number("trough.corner"),
        number("trough.flare"),
        number("trough.flare-width"),
        vents("trough.vents"));
  }

  private ReliefDesign relief() {
    List<Bubble> bubbles = new ArrayList<>();
    int items = (int) settings.givenNumber("relief.bubbles").orElse(0);
    for (int i = 0; i < items; i++) {
      String item = "relief.bubbles[" + i + "].";
      bubbles.add(
          new Bubble(
              number(item + "station"),
              number(item + "girth"),
              number(item + "height"),
              settings.number(item + "length").orElseGet(() -> number("relief.length")),
              settings.number(item + "width").orElseGet(() -> number("relief.width"))));
    }
    return new ReliefDesign(
        word("relief.make", Make.class),
        isYes("relief.sore"),
        number("relief.height"),
        number("relief.length"),
        number("relief.width"),
        number("relief.volar-offset"),
        bubbles);
  }

  private DorsalShellDesign dorsalShell() {
    return new DorsalShellDesign(
        isYes("dorsal-shell.make"),
        settings.number("dorsal-shell.length"),
        number("dorsal-shell.overlap"),
        number("dorsal-shell.fit-gap"),
        number("dorsal-shell.clearance"),
        settings.number("dorsal-shell.wall"),
        vents("dorsal-shell.vents"));
  }

  private ClosureDesign closure() {
    return new ClosureDesign(
        word("closure.kind", ClosureKind.class),
        number("closure.width"),
        settings.number("closure.tension"),
        (int) number("closure.layers"),
        number("closure.overlap"),
        number("closure.lap"));
  }

  private MaterialDesign material() {
    return new MaterialDesign(
        settings.word("material.name"),
        settings.number("material.modulus"),
        settings.number("material.poisson"),
        settings.number("material.density"),
        settings.number("material.allowable-strain"));
  }

  private SupportDesign support() {
    return new SupportDesign(
        settings.number("support.moment"),
        number("support.proximal-zone"),
        number("support.distal-zone"));
  }

  private PrintDesign print() {
    return new PrintDesign(
        word("print.process", ProcessDesign.class),
        number("print.edge-length"),
        isYes("print.label"),
        word("print.proximal", ProximalSign.class));
  }

  private VentDesign vents(String section) {
    return new VentDesign(number(section + ".diameter"), number(section + ".spacing"));
  }

  private double number(String path) {
    return settings.number(path).orElseThrow();
  }

  private boolean isYes(String path) {
    return settings.word(path).equals("yes");
  }

  private <E extends Enum<E>> E word(String path, Class<E> type) {
    return Enum.valueOf(type, settings.word(path).toUpperCase(Locale.ROOT));
  }
}
