package org.midlateral.recipe.product;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.document.Content;
import org.midlateral.document.bench.BenchBlocks;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.bench.SheetFigure;
import org.midlateral.document.bench.SheetFigures;
import org.midlateral.document.bench.SheetFigures.Draws;
import org.midlateral.document.bench.SheetFigures.PressedPlace;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.JointBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;
import org.midlateral.recipe.Concurrent;
import org.midlateral.recipe.Interruption;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointReport;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.rigidity.Bands;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;

/**
 * The mechanics of one orthosis and the documents for the bench.
 *
 * @param rigidity the mechanics; empty where the trough has no room for three forces
 * @param blocks what the report says of closure and blank
 * @param files by name, ready to be written
 * @param findings cautions of mechanics and closures
 */
public record Documents(
    Optional<Rigidity> rigidity,
    BenchBlocks blocks,
    Map<String, Content> files,
    List<Finding> findings) {

  private static final double KPA = 1000;

  /** Samples behind each band, and the seed they are drawn from. */
  private static final int SAMPLES = 100;

  private static final long SEED = 1;

  /** Standard deviation of a tape reading (mm); an assumption, from memory. */
  private static final double TAPE_ERROR = 1;

  public Documents {
    files = Map.copyOf(files);
    findings = List.copyOf(findings);
  }

  /** Computes the mechanics and draws all documents. */
  public static Documents of(Orthosis made) {
    Concurrent<Bands> bands =
        Concurrent.begin(() -> Bands.estimate(made, SAMPLES, SEED, TAPE_ERROR));
    List<Finding> findings = new ArrayList<>();
    Optional<Rigidity> rigidity = rigidity(made, findings);
    findings.addAll(ofClosure(made));
    Interruption.ifInterrupted();
    BenchDocuments bench =
        BenchDocuments.of(
            made.order(),
            made.digit(),
            made.relief(),
            made.solids(),
            rigidity.map(r -> sheet(r, ended(bands))).orElse(SheetFigures.NONE),
            PaperSize.usualWith(made.order().measurements().unit()));
    Map<String, Content> files = new LinkedHashMap<>(bench.files());
    rigidity.ifPresent(r -> files.put("rigidity.svg", plot(r)));
    return new Documents(rigidity, BenchBlocks.of(bench), files, findings);
  }

  /** The findings alone, which take a third of the time. */
  static List<Finding> findings(Orthosis made) {
    List<Finding> findings = new ArrayList<>();
    try {
      findings.addAll(RigidityRecipe.findings(made, Rigidity.USUAL_WRAPS));
    } catch (DesignRefused refused) {
      findings.add(withoutForces(refused));
    }
    findings.addAll(ofClosure(made));
    return findings;
  }

  private static List<Finding> ofClosure(Orthosis made) {
    return Closure.of(made.order(), made.digit(), made.relief(), made.solids()).findings();
  }

  /** The mechanics, whose findings are added to others. */
  private static Optional<Rigidity> rigidity(Orthosis made, List<Finding> findings) {
    try {
      Rigidity rigidity = RigidityRecipe.of(made, Rigidity.USUAL_WRAPS);
      findings.addAll(rigidity.findings());
      return Optional.of(rigidity);
    } catch (DesignRefused refused) {
      findings.add(withoutForces(refused));
      return Optional.empty();
    }
  }

  /** The pieces can be made all the same: only the forces on them cannot be told. */
  private static Finding withoutForces(DesignRefused refused) {
    Finding f = refused.finding();
    return Finding.caution(f.code(), f.key(), f.text(), f.value(), f.limit());
  }

  private static Content plot(Rigidity rigidity) {
    try {
      byte[] picture = rigidity.plot().getBytes(StandardCharsets.UTF_8);
      return out -> out.write(picture);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Bands of the figures; empty where the order can be made but no sample of it. */
  private static Optional<Bands> ended(Concurrent<Bands> bands) {
    try {
      return Optional.of(bands.end());
    } catch (DesignRefused e) {
      return Optional.empty();
    }
  }

  private static SheetFigures sheet(Rigidity rigidity, Optional<Bands> bands) {
    return new SheetFigures(
        rigidity.joint().map(held -> new JointWords(held).line()),
        rigidity.joint().map(Documents::pressed).orElse(List.of()),
        figures(rigidity, bands),
        bands.map(b -> new Draws(b.samples(), b.seed(), b.tapeError(), b.refused())));
  }

  private static List<SheetFigure> figures(Rigidity rigidity, Optional<Bands> bands) {
    SupportBlock forces = rigidity.forces();
    List<SheetFigure> figures = new ArrayList<>();
    rigidity.joint().ifPresent(held -> joint(JointReport.of(held), figures));
    figures.add(plain("Moment about the PIP axis", forces.moment(), "N·mm"));
    if (rigidity.joint().isEmpty()) {
      byHand(forces, bands, figures);
    }
    figures.add(
        banded(
            "EI at the PIP axis, trough",
            rigidity.bendingAtPip() / 1e6,
            bands.map(b -> scaled(b.bendingAtPip(), 1e-6)),
            "N·m²"));
    figures.add(
        banded(
            "Bend of the piece, as a beam",
            forces.extensionLost(),
            bands.map(Bands::extensionLost),
            "°"));
    if (forces.finiteElements() != null) {
      figures.add(
          plain(
              "The same, finite elements", forces.finiteElements().trough().extensionLost(), "°"));
    }
    bands.ifPresent(
        b ->
            figures.add(
                new SheetFigure(
                    "Least clearance, median",
                    b.clearance().median(),
                    b.clearance().low(),
                    b.clearance().high(),
                    "mm")));
    return figures;
  }

  private static List<PressedPlace> pressed(JointHeld held) {
    List<PressedPlace> places = new ArrayList<>();
    for (PressurePeak peak : held.answer().worst()) {
      int height =
          switch (peak.side()) {
            case DORSAL -> 1;
            case RADIAL, ULNAR -> 0;
            case VOLAR -> -1;
          };
      places.add(new PressedPlace(peak.station(), height, KPA * peak.pressure()));
    }
    return places;
  }

  /** The three forces put by hand, where those that hold the joint are not known. */
  private static void byHand(
      SupportBlock forces, Optional<Bands> bands, List<SheetFigure> figures) {
    figures.add(
        banded(
            "Force, proximal end",
            forces.forces().proximal(),
            bands.map(Bands::proximalForce),
            "N"));
    figures.add(
        banded("Force, distal end", forces.forces().distal(), bands.map(Bands::distalForce), "N"));
    figures.add(
        banded("Force over the PIP joint", forces.forces().pip(), bands.map(Bands::pipForce), "N"));
  }

  /** How the joint is held. */
  private static void joint(JointBlock joint, List<SheetFigure> figures) {
    boolean bands = joint.bands() != null;
    figures.add(
        new SheetFigure(
            "Joint held at, beyond what was reached",
            joint.angleHeld(),
            bands ? joint.bands().angleHeld().get(0) : Double.NaN,
            bands ? joint.bands().angleHeld().get(1) : Double.NaN,
            "°"));
    figures.add(plain("– of it skin squeezed", joint.of().skin(), "°"));
    figures.add(plain("– of it closure stretched", joint.of().closure(), "°"));
    figures.add(plain("– of it plastic bent", joint.of().plastic(), "°"));
    if (joint.overnight() != null) {
      figures.add(
          new SheetFigure(
              "In the morning, 8 h at 34 °C",
              joint.overnight().angleHeld(),
              Math.min(joint.overnight().band().get(0), joint.overnight().band().get(1)),
              Math.max(joint.overnight().band().get(0), joint.overnight().band().get(1)),
              "°"));
    }
    figures.add(
        new SheetFigure(
            "Largest pressure, over 1 cm²",
            KPA * joint.peakPressure().value(),
            bands ? KPA * joint.bands().peakPressure().get(0) : Double.NaN,
            bands ? KPA * joint.bands().peakPressure().get(1) : Double.NaN,
            "kPa"));
    figures.add(plain("Force, proximal end", joint.forces().proximal().force(), "N"));
    figures.add(plain("Force, distal end", joint.forces().distal().force(), "N"));
    figures.add(plain("Force over the PIP joint", joint.forces().pip().force(), "N"));
  }

  private static Bands.Band scaled(Bands.Band band, double by) {
    return new Bands.Band(band.low() * by, band.median() * by, band.high() * by);
  }

  private static SheetFigure plain(String what, double value, String unit) {
    return new SheetFigure(what, value, Double.NaN, Double.NaN, unit);
  }

  private static SheetFigure banded(
      String what, double value, Optional<Bands.Band> band, String unit) {
    return new SheetFigure(
        what,
        value,
        band.map(Bands.Band::low).orElse(Double.NaN),
        band.map(Bands.Band::high).orElse(Double.NaN),
        unit);
  }
}
