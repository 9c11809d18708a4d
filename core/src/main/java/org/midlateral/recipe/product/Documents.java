package org.midlateral.recipe.product;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;
import org.midlateral.document.Content;
import org.midlateral.document.bench.BenchBlocks;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.bench.BenchDrawings;
import org.midlateral.document.bench.NeighbourRoom;
import org.midlateral.document.bench.SheetFigures;
import org.midlateral.document.bench.SheetFigures.PressedPlace;
import org.midlateral.document.bench.SheetFigures.ThreeForces;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.drawing.PdfFile;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.JointBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.closure.Closure;
import org.midlateral.mechanics.joint.JointAnswer.PressurePeak;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointReport;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.rigidity.Comparison;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.recipe.rigidity.RigidityRecipe;
import org.midlateral.work.Interruption;

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

  public Documents {
    files = Map.copyOf(files);
    findings = List.copyOf(findings);
  }

  /**
   * Computes the mechanics and draws all documents.
   *
   * @param comparison of the same order, on its way
   */
  public static Documents of(Orthosis made, Comparison comparison) {
    List<Finding> findings = new ArrayList<>();
    ForkJoinTask<BenchDrawings> laidFlat =
        begin(
            () ->
                BenchDrawings.of(
                    made.order(),
                    made.digit(),
                    made.relief(),
                    made.solids(),
                    PaperSize.of(made.order())));
    ForkJoinTask<Boolean> prepared = begin(Documents::prepare);
    ForkJoinTask<Map<String, Content>> patientPage = begin(() -> laidFlat.join().patientPage());
    Optional<Rigidity> rigidity = rigidity(made, comparison, findings);
    prepared.join();
    BenchDrawings drawings = laidFlat.join();
    findings.addAll(ofClosureAndRoom(made, drawings.closure()));
    Interruption.ifInterrupted();
    ForkJoinTask<Map<String, Content>> pattern = begin(drawings::patternFiles);
    Map<String, Content> sheet =
        drawings.sheet(rigidity.map(Documents::sheet).orElse(SheetFigures.NONE));
    BenchDocuments bench = drawings.together(List.of(sheet, patientPage.join(), pattern.join()));
    Map<String, Content> files = new LinkedHashMap<>(bench.files());
    rigidity
        .map(r -> r.plot().svg())
        .ifPresent(plot -> files.put("rigidity.svg", out -> out.write(plot)));
    return new Documents(rigidity, BenchBlocks.of(bench), files, findings);
  }

  private static <T> ForkJoinTask<T> begin(Supplier<T> work) {
    Interruption asked = Interruption.current();
    return ForkJoinPool.commonPool().submit(() -> asked.during(work::get));
  }

  /** Makes ready for what is drawn and written last, which little can be done beside then. */
  private static boolean prepare() {
    PdfFile.prepare();
    return true;
  }

  /** The findings alone, which take a third of the time. */
  static List<Finding> findings(Orthosis made) {
    List<Finding> findings = new ArrayList<>();
    try {
      findings.addAll(RigidityRecipe.findings(made, Rigidity.USUAL_WRAPS));
    } catch (DesignRefused refused) {
      findings.add(withoutForces(refused));
    }
    Closure closure = Closure.of(made.order(), made.digit(), made.relief(), made.solids());
    findings.addAll(ofClosureAndRoom(made, closure));
    return findings;
  }

  private static List<Finding> ofClosureAndRoom(Orthosis made, Closure closure) {
    List<Finding> findings = new ArrayList<>(closure.findings());
    findings.addAll(
        NeighbourRoom.of(made.order().measurements(), made.digit(), made.solids()).findings());
    return findings;
  }

  /** The mechanics, whose findings are added to others. */
  private static Optional<Rigidity> rigidity(
      Orthosis made, Comparison comparison, List<Finding> findings) {
    try {
      Rigidity rigidity = RigidityRecipe.of(made, comparison);
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

  private static SheetFigures sheet(Rigidity rigidity) {
    return rigidity
        .joint()
        .map(Documents::held)
        .orElseGet(
            () ->
                new SheetFigures(
                    Optional.empty(), Optional.empty(), Optional.of(byHand(rigidity.forces()))));
  }

  /** How the joint is held. */
  private static SheetFigures held(JointHeld held) {
    JointWords words = new JointWords(held);
    JointBlock.Forces forces = JointReport.of(held).forces();
    return new SheetFigures(
        Optional.of(words.angle()),
        held.answer().worst().stream().findFirst().map(peak -> place(peak, words)),
        Optional.of(
            new ThreeForces(
                forces.proximal().force(), forces.pip().force(), forces.distal().force())));
  }

  private static PressedPlace place(PressurePeak peak, JointWords words) {
    int height =
        switch (peak.side()) {
          case DORSAL -> 1;
          case RADIAL, ULNAR -> 0;
          case VOLAR -> -1;
        };
    return new PressedPlace(peak.station(), height, KPA * peak.pressure(), words.place(peak));
  }

  /** The three forces put by hand, where those that hold the joint are not known. */
  private static ThreeForces byHand(SupportBlock block) {
    return new ThreeForces(
        block.forces().proximal(), block.forces().pip(), block.forces().distal());
  }
}
