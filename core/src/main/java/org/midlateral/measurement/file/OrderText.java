package org.midlateral.measurement.file;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Design.Bubble;
import org.midlateral.measurement.Design.VentDesign;
import org.midlateral.measurement.HoldingDesign;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.entry.LengthText;
import org.midlateral.measurement.entry.YamlLines;

/** Writes an order as a measurement file; reading it back gives an equal order. */
public final class OrderText {

  /** The reference of an order that is to tell nobody whose it is. */
  static final String NAMELESS = "left-out";

  private final Order order;
  private final LengthUnit unit;
  private final YamlLines lines = new YamlLines();

  private OrderText(Order order) {
    this.order = order;
    this.unit = order.measurements().unit();
  }

  /**
   * The file, without comments, in the unit the order was measured in.
   *
   * @return YAML
   */
  public static String write(Order order) {
    OrderText text = new OrderText(order);
    text.lines.value("reference", '"' + order.measurements().reference() + '"');
    order.note().ifPresent(note -> text.lines.value("note", quoted(note)));
    return text.rest();
  }

  /**
   * The file without what may tell whose finger it is: with another reference, and without the
   * note.
   *
   * @return YAML
   */
  public static String nameless(Order order) {
    OrderText text = new OrderText(order);
    text.lines.value("reference", NAMELESS);
    return text.rest();
  }

  /**
   * All keys of an order by their whole paths, defaults among them, as {@link #write} has them.
   *
   * @return values as a file states them, in its order
   */
  public static Map<String, String> settings(Order order) {
    Map<String, String> settings = new LinkedHashMap<>();
    EntryReader.read(write(order), "", "").entries().stream()
        .filter(entry -> entry.shape() == NodeShape.SCALAR)
        .forEach(entry -> settings.put(entry.path(), entry.text()));
    return settings;
  }

  private String rest() {
    measurements(order.measurements());
    trough();
    relief();
    dorsalShell();
    others();
    holding();
    return lines.text();
  }

  private void measurements(Measurements m) {
    word("making", order.design().making().way());
    word("paper", order.design().making().paper());
    word("hand", m.hand());
    word("digit", m.digit());
    lines.value("unit", unit.symbol());
    byLevel("circumference", m.circumference());
    length("length.palmar-crease-to-web", m.palmarCreaseToWeb());
    length("length.web-to-pip", m.webToPip());
    length("length.pip-to-dip", m.pipToDip());
    length("length.dip-to-tip", m.dipToTip());
    byLevel("width", m.width());
    lines.value("angle.pip-extension-deficit", degrees(m.pipExtensionDeficit()));
    lines.value("angle.dip-flexion", degrees(m.dipFlexion()));
    length("axis.pip-distal-of-crease", m.pipAxisDistalOfCrease());
    length("axis.dip-distal-of-crease", m.dipAxisDistalOfCrease());
    byLevel("station", m.station());
    length("room.swelling", m.room().swelling());
    m.room().radial().ifPresent(value -> length("room.radial", value));
    m.room().ulnar().ifPresent(value -> length("room.ulnar", value));
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private void byLevel(String section, Map<Level, Double> values) {
    values.forEach((level, value) -> length(section + "." + level.key(), value));
  }

  private void trough() {
    Design.TroughDesign trough = order.design().trough();
    number("trough.wrap", trough.wrap());
    length("trough.wall", trough.wall());
    length("trough.clearance", trough.clearance());
    length("trough.liner", trough.liner());
    length("trough.web-clearance", trough.webClearance());
    length("trough.proximal-margin", trough.proximalMargin());
    word("trough.distal", trough.distal());
    length("trough.distal-margin", trough.distalMargin());
    length("trough.corner", trough.corner());
    length("trough.flare", trough.flare());
    length("trough.flare-width", trough.flareWidth());
    vents("trough.vents", trough.vents());
  }

  private void relief() {
    Design.ReliefDesign relief = order.design().relief();
    word("relief.make", relief.make());
    yesNo("relief.sore", relief.sore());
    length("relief.height", relief.height());
    length("relief.length", relief.length());
    length("relief.width", relief.width());
    length("relief.volar-offset", relief.volarOffset());
    StringBuilder bubbles = new StringBuilder();
    for (Bubble bubble : relief.bubbles()) {
      bubbles
          .append(bubbles.length() == 0 ? "" : ", ")
          .append("{station: " + text(bubble.station()))
          .append(", girth: " + text(bubble.girth()))
          .append(", height: " + text(bubble.height()))
          .append(", length: " + text(bubble.length()))
          .append(", width: " + text(bubble.width()) + "}");
    }
    lines.value("relief.bubbles", "[" + bubbles + "]");
  }

  private void dorsalShell() {
    Design.DorsalShellDesign shell = order.design().dorsalShell();
    yesNo("dorsal-shell.make", shell.make());
    lengthOrAuto("dorsal-shell.length", shell.length());
    length("dorsal-shell.overlap", shell.overlap());
    length("dorsal-shell.fit-gap", shell.fitGap());
    length("dorsal-shell.clearance", shell.clearance());
    lengthOrAuto("dorsal-shell.wall", shell.wall());
    vents("dorsal-shell.vents", shell.vents());
  }

  private void others() {
    Design.ClosureDesign closure = order.design().closure();
    word("closure.kind", closure.kind());
    length("closure.width", closure.width());
    lines.value(
        "closure.tension",
        closure.tension().isPresent() ? Double.toString(closure.tension().getAsDouble()) : "auto");
    lines.value("closure.layers", Integer.toString(closure.layers()));
    number("closure.overlap", closure.overlap());
    length("closure.lap", closure.lap());
    numberOrNone("closure.stiffness", order.design().holding().bands().stiffness());
    number("closure.tape-tension", order.design().holding().bands().tapeTension());
    Design.MaterialDesign material = order.design().material();
    lines.value("material.name", material.name());
    material.modulus().ifPresent(value -> number("material.modulus", value));
    material.poisson().ifPresent(value -> number("material.poisson", value));
    material.density().ifPresent(value -> number("material.density", value));
    material.allowableStrain().ifPresent(value -> number("material.allowable-strain", value));
    number("material.across-layers", order.design().holding().acrossLayers());
    numberOrNone("material.creep", order.design().holding().creep());
    Design.PrintDesign print = order.design().print();
    word("print.process", print.process());
    length("print.edge-length", print.edgeLength());
    yesNo("print.label", print.label());
    word("print.proximal", print.proximal());
    Design.SupportDesign support = order.design().support();
    support.moment().ifPresent(value -> number("support.moment", value));
    length("support.proximal-zone", support.proximalZone());
    length("support.distal-zone", support.distalZone());
  }

  private void holding() {
    HoldingDesign holding = order.design().holding();
    HoldingDesign.JointDesign joint = holding.joint();
    numberOrNone("joint.moment", joint.moment());
    numberOrNone("joint.slope", joint.slope());
    lines.value("joint.within", degrees(joint.within()));
    numberOrNone("joint.gauge.force", joint.gauge().force());
    joint.gauge().distance().ifPresent(value -> length("joint.gauge.distance", value));
    joint.gauge().angle().ifPresent(value -> lines.value("joint.gauge.angle", degrees(value)));
    number("skin.over-joint", holding.skin().overJoint());
    number("skin.friction", holding.skin().friction());
    tissue("volar", holding.skin().volar());
    tissue("pulp", holding.skin().pulp());
    tissue("side", holding.skin().side());
    tissue("dorsum", holding.skin().dorsum());
    number("liner.modulus", holding.liner().modulus());
    number("liner.stiffening", holding.liner().stiffening());
  }

  private void tissue(String region, HoldingDesign.TissueDesign tissue) {
    number("skin." + region + ".modulus", tissue.modulus());
    number("skin." + region + ".stiffening", tissue.stiffening());
    number("skin." + region + ".thickness", tissue.thickness());
  }

  /** What is left out follows of itself. */
  private void numberOrNone(String path, OptionalDouble value) {
    value.ifPresent(stated -> number(path, stated));
  }

  private void vents(String section, VentDesign vents) {
    length(section + ".diameter", vents.diameter());
    length(section + ".spacing", vents.spacing());
  }

  private void length(String path, double millimetres) {
    lines.value(path, text(millimetres));
  }

  private void lengthOrAuto(String path, OptionalDouble millimetres) {
    lines.value(path, millimetres.isPresent() ? text(millimetres.getAsDouble()) : "auto");
  }

  private String text(double millimetres) {
    return LengthText.write(millimetres, unit);
  }

  private void number(String path, double value) {
    lines.value(path, Double.toString(value));
  }

  private void word(String path, Enum<?> word) {
    lines.value(path, word.name().toLowerCase(Locale.ROOT));
  }

  private void yesNo(String path, boolean yes) {
    lines.value(path, yes ? "yes" : "no");
  }

  /** Degrees that turn back into the same radians: the shortest such number near by. */
  static String degrees(double radians) {
    double degrees = Math.toDegrees(radians);
    double round = Math.rint(degrees * 1e9) / 1e9;
    for (double candidate : new double[] {round, degrees, Math.nextUp(degrees)}) {
      if (Math.toRadians(candidate) == radians) {
        return Double.toString(candidate);
      }
    }
    return Double.toString(Math.nextDown(degrees));
  }
}
