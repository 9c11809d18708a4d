package org.midlateral.cli.text;

import java.util.Locale;
import org.midlateral.mechanics.JointBlock.JointFigures;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.rigidity.AdviceText;
import org.midlateral.recipe.rigidity.Adviser;
import org.midlateral.recipe.rigidity.Bands;
import org.midlateral.recipe.rigidity.Rigidity;

/** Rigidity as tables for a person. */
public final class RigidityTable {
  /** Stations are computed about every millimetre; a person is shown every so many. */
  private static final int EVERY = 5;

  private final StringBuilder text = new StringBuilder();

  private RigidityTable() {}

  /**
   * The text, ending with a line feed.
   *
   * @param advice or null
   * @param bands or null
   */
  public static String text(Rigidity rigidity, Adviser.DesignAdvice advice, Bands bands) {
    RigidityTable table = new RigidityTable();
    rigidity.joint().map(JointWords::new).ifPresent(table::joint);
    if (advice != null) {
      table.advice(advice);
    }
    table.head(rigidity);
    table.stations(rigidity.rigidity());
    table.wraps(rigidity.rigidity());
    table.support(rigidity.forces());
    table.sensitivity(rigidity.forces());
    if (bands != null) {
      table.bands(bands);
    }
    table.line("");
    table.line("Estimate, for comparison; does not clear a piece for use.");
    table.line("%s", rigidity.rigidity().note());
    return table.text.toString();
  }

  private void line(String form, Object... values) {
    text.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  private void joint(JointWords words) {
    line("%s", words.line());
    line("");
    words.more().forEach(more -> line("%s", more));
    line("");
  }

  private void advice(Adviser.DesignAdvice advice) {
    AdviceText.lines(advice).forEach(one -> line("%s", one));
    line("");
  }

  private void head(Rigidity rigidity) {
    line("Rigidity of %s", rigidity.orthosis().order().measurements().reference());
    RigidityBlock block = rigidity.rigidity();
    line(
        "material %s, modulus %.0f MPa (%s)",
        block.material(), block.modulus(), block.modulusSource());
    block.materialCautions().forEach(caution -> line("%s", caution));
  }

  private void stations(RigidityBlock block) {
    boolean shell = block.stations().stream().anyMatch(station -> station.bonded() != null);
    line("");
    line("Along the finger, from the web; I and EI about the medio-lateral axis");
    line(
        "%9s %9s %9s %9s %11s %11s%s",
        "from web", "area", "I", "J", "EI", "GJ", shell ? "   EI bonded EI slipping" : "");
    line(
        "%9s %9s %9s %9s %11s %11s%s",
        "mm", "mm²", "mm⁴", "mm⁴", "N·mm²", "N·mm²", shell ? "       N·mm²       N·mm²" : "");
    for (int i = EVERY / 2; i < block.stations().size(); i += EVERY) {
      RigidityBlock.Station s = block.stations().get(i);
      RigidityBlock.Figures f = s.trough();
      line(
          "%9.1f %9.1f %9.1f %9.1f %11.0f %11.0f%s",
          s.station(),
          f.area(),
          f.secondMoment(),
          f.torsion(),
          f.bendingRigidity(),
          f.torsionalRigidity(),
          s.bonded() == null
              ? ""
              : String.format(
                  Locale.ROOT,
                  " %11.0f %11.0f",
                  s.bonded().bendingRigidity(),
                  s.slipping().bendingRigidity()));
    }
  }

  private void wraps(RigidityBlock block) {
    if (block.stations().stream().anyMatch(station -> station.bonded() != null)) {
      line("Bonded: trough and shell as one piece. Slipping: each of them bends by itself.");
    }
    line("");
    line(
        "Troughs compared by the share of the girth that they cover: the trough alone in its"
            + " closure");
    line(
        "%9s %8s %9s %11s %9s %11s %11s %9s %10s",
        "of girth",
        "beyond",
        "pressure",
        "EI at PIP",
        "to half",
        "GJ at PIP",
        "weakest EI",
        "there",
        "bend");
    line(
        "%9s %8s %9s %11s %9s %11s %11s %9s %10s",
        "", "degrees", "kPa", "N·mm²", "", "N·mm²", "N·mm²", "mm", "degrees");
    for (RigidityBlock.Wrap wrap : block.wraps()) {
      line(
          "%9s %8s %9s %11.0f %9.3f %11.0f %11.0f %9.1f %10.2f",
          wrap.wrap() == 1 ? "closed" : String.format(Locale.ROOT, "%.2f", wrap.wrap()),
          angle(wrap.joint()),
          pressure(wrap.joint()),
          wrap.bendingAtPip(),
          wrap.relativeToHalf(),
          wrap.torsionalAtPip(),
          wrap.weakest().bendingRigidity(),
          wrap.weakest().station(),
          wrap.extensionLost());
    }
    line(
        "Beyond: how far the joint goes beyond the angle measured by hand. To half: EI as a share of the EI over half of the girth. Bend: of the piece alone, as a"
            + " beam; that its section opens or closes is not counted.");
  }

  private void support(SupportBlock block) {
    line("");
    line("Bend of the piece under three given forces, for %.1f N·mm", block.moment());
    line("%34s %10s %10s %10s", "", "proximal", "distal", "PIP");
    arms("lever arm, mm", block.leverArms());
    row("force, N", block.forces(), 1);
    row("mean pressure, kPa", block.pressures(), 1000);
    if (block.castLength() != null) {
      arms("cut as short as a cast: arm, mm", block.castLength().leverArms());
      row("force, N", block.castLength().forces(), 1);
      row("mean pressure, kPa", block.castLength().pressures(), 1000);
      line(
          "%34s the joint goes %s degrees beyond, %s kPa over 1 cm²",
          "",
          angle(block.castLength().joint()).strip(),
          pressure(block.castLength().joint()).strip());
    }
    line("");
    line("Bend of the piece as a beam   deflection at PIP, mm   extension lost, degrees");
    response("trough alone", block.deflectionAtPip(), block.extensionLost());
    if (block.bonded() != null) {
      response(
          "with the shell, bonded",
          block.bonded().deflectionAtPip(),
          block.bonded().extensionLost());
      response(
          "with the shell, slipping",
          block.slipping().deflectionAtPip(),
          block.slipping().extensionLost());
    }
  }

  private void response(String name, double deflection, double lost) {
    line("%-25s %25.2f %25.2f", name, deflection, lost);
  }

  private void arms(String name, SupportBlock.LeverArms arms) {
    line("%34s %10.1f %10.1f", name, arms.proximal(), arms.distal());
  }

  private void row(String name, SupportBlock.Contacts contacts, double factor) {
    line(
        "%34s %10.2f %10.2f %10.2f",
        name, factor * contacts.proximal(), factor * contacts.distal(), factor * contacts.pip());
  }

  private void sensitivity(SupportBlock block) {
    line("");
    line(
        "%-40s %8s %9s %11s %10s",
        "What a change would do, trough alone", "beyond", "pressure", "EI at PIP", "bend");
    line("%-40s %8s %9s %11s %10s", "", "degrees", "kPa", "N·mm²", "degrees");
    for (SupportBlock.Change change : block.sensitivity()) {
      line(
          "%-40s %8s %9s %11.0f %10.2f",
          change.change(),
          angle(change.joint()),
          pressure(change.joint()),
          change.bendingAtPip(),
          change.extensionLost());
    }
  }

  private static String angle(JointFigures joint) {
    return joint == null ? "–" : String.format(Locale.ROOT, "%.1f", joint.angleHeld());
  }

  private static String pressure(JointFigures joint) {
    return joint == null ? "–" : String.format(Locale.ROOT, "%.1f", 1000 * joint.peakPressure());
  }

  private void bands(Bands bands) {
    line("");
    line(
        "Ranges over %d samples (seed %d), every reading with an error of %.2f mm (standard"
            + " deviation); %d could not be made",
        bands.samples(), bands.seed(), bands.tapeError(), bands.refused());
    line("%-34s %11s %11s %11s", "", "5 %", "median", "95 %");
    band("least clearance on the finger, mm", bands.clearance(), "%11.2f");
    band("EI at PIP, N·mm²", bands.bendingAtPip(), "%11.0f");
    band("force proximal, N", bands.proximalForce(), "%11.2f");
    band("force distal, N", bands.distalForce(), "%11.2f");
    band("force at PIP, N", bands.pipForce(), "%11.2f");
    band("bend as a beam, degrees", bands.extensionLost(), "%11.2f");
  }

  private void band(String name, Bands.Band band, String form) {
    line("%-34s " + form + " " + form + " " + form, name, band.low(), band.median(), band.high());
  }
}
