package org.midlateral.recipe.product;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ForkJoinPool;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.Slice;
import org.midlateral.document.Content;
import org.midlateral.document.WholeFile;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.document.format.SolidSet;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.recipe.FitTogether;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Interruption;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.PrintCheck;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.Stopwatch;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.shared.SharedData;

/**
 * The main job on one order: made, inspected, and ready to be written.
 *
 * @param order what was asked for
 * @param orthosis what was made; empty where the design has no room on the finger
 * @param inspection what was measured on it
 * @param documents mechanics and bench documents; empty where they were not asked for
 * @param print whether it suits the process it is printed by, and how it lies on the bed
 * @param findings cautions about the input, then what making and inspecting found
 * @param timing where the time went so far
 */
public record Product(
    Order order,
    Optional<Orthosis> orthosis,
    Optional<Inspection> inspection,
    Optional<PrintCheck> print,
    Optional<Documents> documents,
    List<Finding> findings,
    Report.Timing timing) {

  private static final String TOOL = "midlateral";

  /** A mesh that misses a bound is made again, finer. */
  private static final double[] FINENESS = {1, 0.85, 0.7};

  public Product {
    findings = List.copyOf(findings);
  }

  /**
   * Makes and inspects an order, on two threads.
   *
   * @param cautions found on reading it
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public static Product make(Order order, List<Finding> cautions) {
    return make(order, cautions, ForkJoinPool.commonPool());
  }

  /**
   * Makes and inspects an order.
   *
   * @param cautions found on reading it
   * @param beside takes what can be done beside the rest
   */
  public static Product make(Order order, List<Finding> cautions, Executor beside) {
    List<Finding> findings = new ArrayList<>(cautions);
    Stopwatch watch = new Stopwatch();
    try {
      Orthosis orthosis = null;
      Inspection inspection = null;
      boolean mendable = true;
      for (int i = 0; i < FINENESS.length && mendable; i++) {
        Interruption.ifInterrupted();
        Orthosis made = Orthosis.make(order, FINENESS[i]);
        watch.geometryEnds();
        Interruption.ifInterrupted();
        Inspection found = Inspection.of(made, beside);
        watch.checksEnd();
        mendable = found.mendable();
        // Where none passes, the best of them is told, which need not be the finest.
        if (inspection == null || found.isBetterThan(inspection)) {
          orthosis = made;
          inspection = found;
        }
      }
      findings.addAll(orthosis.findings());
      findings.addAll(inspection.findings());
      PrintCheck print = PrintCheck.of(orthosis, inspection);
      findings.addAll(print.findings());
      watch.checksEnd();
      return new Product(
          order,
          Optional.of(orthosis),
          Optional.of(inspection),
          Optional.of(print),
          Optional.empty(),
          findings,
          watch.timing());
    } catch (DesignRefused refused) {
      watch.geometryEnds();
      findings.add(refused.finding());
      return new Product(
          order,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          findings,
          watch.timing());
    }
  }

  /**
   * The same with the mechanics computed and the documents drawn; as it is where it was refused.
   *
   * @throws java.util.concurrent.CancellationException where the thread is interrupted meanwhile
   */
  public Product withDocuments() {
    if (!ok()) {
      return this;
    }
    long start = System.nanoTime();
    Documents drawn = Documents.of(orthosis.orElseThrow());
    Report.Timing with = timing.withDocuments((System.nanoTime() - start) / 1e6);
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(drawn.findings());
    return new Product(order, orthosis, inspection, print, Optional.of(drawn), all, with);
  }

  /** Whether it may be written. */
  public boolean ok() {
    return findings.stream().noneMatch(f -> f.severity() == Finding.Severity.REFUSAL);
  }

  /** Writes all files of the order into a folder, the solids in the usual formats. */
  public Report write(Path folder, boolean force, boolean reproducible) {
    return write(folder, SolidFormat.USUAL, force, reproducible);
  }

  /**
   * Writes all files of the order into a folder, whole or not at all.
   *
   * @param folder that exists
   * @param formats of the solids' files
   * @param force whether files of the same names may be replaced
   * @param reproducible leaves the timing out of the report
   * @return the report as written
   * @throws IllegalStateException if the design was refused
   * @throws org.midlateral.document.FileProblem if a file cannot be written
   */
  public Report write(
      Path folder, Collection<SolidFormat> formats, boolean force, boolean reproducible) {
    if (!ok()) {
      throw new IllegalStateException("a refused design is not written");
    }
    long start = System.nanoTime();
    Map<Path, Content> all = new LinkedHashMap<>();
    solidFiles(formats).forEach((name, content) -> all.put(folder.resolve(name), content));
    documents.ifPresent(d -> d.files().forEach((n, c) -> all.put(folder.resolve(n), c)));
    // The report comes last, so that its timing knows the others'.
    Report[] report = new Report[1];
    all.put(
        folder.resolve("report.json"),
        out -> {
          double writing = (System.nanoTime() - start) / 1e6;
          report[0] = report(formats, reproducible ? Optional.empty() : Optional.of(writing));
          out.write(report[0].json().getBytes(StandardCharsets.UTF_8));
        });
    WholeFile.writeAll(all, force);
    return report[0];
  }

  /**
   * The files of the order, by name: the solids', and a report without timing.
   *
   * @param formats of the solids' files; none for a refused design
   */
  public Map<String, Content> files(Collection<SolidFormat> formats) {
    Map<String, Content> files = new LinkedHashMap<>(solidFiles(formats));
    byte[] report = report(formats, Optional.empty()).json().getBytes(StandardCharsets.UTF_8);
    files.put("report.json", out -> out.write(report));
    return files;
  }

  private Map<String, Content> solidFiles(Collection<SolidFormat> formats) {
    Map<String, Content> files = new LinkedHashMap<>();
    for (SolidFormat format : formats) {
      format.files(solids()).forEach(f -> files.put(f.name(), f.content()));
    }
    return files;
  }

  /** Name and version of the program that makes products. */
  public static String tool() {
    return TOOL + " " + SharedData.version();
  }

  private SolidSet solids() {
    return new SolidSet(
        order.measurements().reference(),
        tool(),
        material().title(),
        orthosis.orElseThrow().solids().stream()
            .map(
                solid ->
                    new NamedSolid(
                        solid.piece().name(),
                        solid.mesh(),
                        print.orElseThrow().pose(solid.piece().name())))
            .toList());
  }

  private Material material() {
    return Material.of(order.design().material());
  }

  /**
   * The report.
   *
   * @param formats of the solids' files
   * @param writeMs time spent on writing; empty leaves the timing out
   */
  public Report report(Collection<SolidFormat> formats, Optional<Double> writeMs) {
    return new Report(
        new Report.Tool(TOOL, SharedData.version()),
        order.measurements().reference(),
        order.note().orElse(null),
        ok(),
        findings.stream().map(Report.ReportLine::of).toList(),
        orthosis.map(this::levels).orElse(null),
        inspection.map(i -> partLines(i, formats)).orElse(null),
        inspection.map(Product::clearance).orElse(null),
        inspection.flatMap(Inspection::together).map(Product::assembly).orElse(null),
        mechanics().map(Rigidity::rigidity).orElse(null),
        mechanics().map(Rigidity::forces).orElse(null),
        documents.map(d -> d.blocks().closure()).orElse(null),
        documents.map(d -> d.blocks().blank()).orElse(null),
        print.map(this::printBlock).orElse(null),
        writeMs.map(timing::withWrite).orElse(null));
  }

  private Report.Print printBlock(PrintCheck check) {
    Inspection inspected = inspection.orElseThrow();
    Double gap = inspected.together().map(fit -> fit.smallest().distance()).orElse(null);
    return check.block(material().title(), partLines(inspected, List.of()), gap);
  }

  private Optional<Rigidity> mechanics() {
    return documents.flatMap(Documents::rigidity);
  }

  private List<Report.LevelLine> levels(Orthosis made) {
    Measurements measured = order.measurements();
    return measured.circumference().keySet().stream()
        .map(
            level -> {
              double station = measured.stationOf(level);
              Slice slice = made.digit().slice(station);
              return new Report.LevelLine(
                  level.key(),
                  station,
                  slice.circumference(),
                  2 * slice.halfWidth(),
                  2 * slice.halfDepth(),
                  slice.circumference() / 4);
            })
        .toList();
  }

  private Map<String, Report.PartLine> partLines(
      Inspection inspected, Collection<SolidFormat> formats) {
    Map<String, Report.PartLine> lines = new LinkedHashMap<>();
    inspected.pieces().forEach(p -> lines.put(p.solid().piece().name(), partLine(p, formats)));
    return lines;
  }

  private Report.PartLine partLine(PieceInspection piece, Collection<SolidFormat> formats) {
    String name = piece.solid().piece().name();
    MeshAudit audit = piece.audit();
    Bounds3D box = audit.bounds();
    return new Report.PartLine(
        formats.stream().findFirst().map(format -> format.fileOf(name)).orElse(null),
        audit.triangles(),
        audit.vertices(),
        audit.volume(),
        audit.volume() * material().density() / 1000,
        audit.area(),
        audit.watertight(),
        audit.shells(),
        audit.holes(),
        piece.conformance().minWall(),
        audit.minAngle(),
        piece.conformance().chordError(),
        new Report.Bounds(numbers(box.getMin()), numbers(box.getMax())));
  }

  private static List<Double> numbers(Vector3D v) {
    return List.of(v.getX(), v.getY(), v.getZ());
  }

  private static Report.Clearance clearance(Inspection inspected) {
    var conformance = inspected.trough().conformance();
    Double atCentre = conformance.gapAtSpots().isEmpty() ? null : conformance.gapAtSpots().get(0);
    return new Report.Clearance(
        new Report.TroughClearance(
            conformance.gap().min(), conformance.gap().mean(), conformance.gap().max(), atCentre),
        inspected.together().map(FitTogether::fitGap).orElse(null));
  }

  private static Report.Assembly assembly(FitTogether fit) {
    return new Report.Assembly(
        fit.goingOn().mouth(),
        fit.goingOn().widest(),
        fit.goingOn().spread(),
        fit.goingOn().strain(),
        fit.allowable());
  }
}
