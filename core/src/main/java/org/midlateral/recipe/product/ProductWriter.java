package org.midlateral.recipe.product;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.Collectors;
import org.midlateral.document.Content;
import org.midlateral.document.WholeFile;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.document.format.SolidSet;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Material;
import org.midlateral.pose.PrintPose;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.record.MadeFile;
import org.midlateral.recipe.record.MakingFigures;
import org.midlateral.recipe.record.MakingRecord;
import org.midlateral.recipe.record.MakingSource;
import org.midlateral.recipe.record.Program;
import org.midlateral.recipe.record.RecordSheet;
import org.midlateral.trough.Trough;

/** A product as files. */
public final class ProductWriter {
  private static final String REPORT = "report.json";

  private ProductWriter() {}

  /**
   * How a product is written.
   *
   * @param formats of the solids' files
   * @param force whether files of the same names may be replaced
   * @param reproducible leaves timing and date out: same input, same bytes
   * @param source what was asked for, for the record of making; empty leaves the record out
   */
  public record Writing(
      Collection<SolidFormat> formats,
      boolean force,
      boolean reproducible,
      Optional<MakingSource> source) {
    public Writing {
      formats = List.copyOf(formats);
    }
  }

  /**
   * Writes all files of a product into a folder, whole or not at all.
   *
   * @param folder that exists
   * @return the report as written
   * @throws IllegalStateException if the design was refused
   * @throws org.midlateral.document.FileProblem if a file cannot be written
   */
  public static Report write(Product product, Path folder, Writing writing) {
    if (!product.isMade()) {
      throw new IllegalStateException("a refused design is not written");
    }
    long start = System.nanoTime();
    PartNames names =
        new PartNames(
            product.order(), writing.source.map(asked -> revision(folder, asked)).orElse(1), false);
    Map<String, Content> together =
        new LinkedHashMap<>(solidFiles(product, writing.formats, names));
    product.documents().ifPresent(drawn -> together.putAll(drawn.files()));
    ForkJoinTask<Report> told =
        ForkJoinPool.commonPool()
            .submit(() -> ProductReport.of(product, writing.formats, names, Optional.empty()));
    // The report is written after them, so that its timing knows the others'.
    Report[] report = new Report[1];
    Map<String, Content> after = new LinkedHashMap<>();
    after.put(
        REPORT,
        out -> {
          double spent = (System.nanoTime() - start) / 1e6;
          Report.Timing timing = product.timing().withWrite(spent);
          report[0] = writing.reproducible ? told.join() : told.join().withTiming(timing);
          out.write(report[0].json().getBytes(StandardCharsets.UTF_8));
        });
    Map<String, MadeFile> made = new ConcurrentHashMap<>();
    writing.source.ifPresent(
        asked -> {
          Optional<Instant> now =
              writing.reproducible ? Optional.empty() : Optional.of(Instant.now());
          MakingRecord.RecordedPlace place =
              new MakingRecord.RecordedPlace(names.revision(), Optional.empty(), now);
          if (product.documents().isPresent()) {
            after.put(
                RecordSheet.FILE,
                out -> out.write(RecordSheet.pdf(record(product, asked, place, made))));
          }
          after.put(
              MakingRecord.FILE,
              out ->
                  out.write(
                      record(product, asked, place, made).json().getBytes(StandardCharsets.UTF_8)));
        });
    WholeFile.writeAll(
        counted(together, folder, made), counted(after, folder, made), writing.force);
    return report[0];
  }

  /**
   * Sees to it, before anything is computed, that no file stands where one is certain to be
   * written.
   *
   * @param partsOnly whether no documents are to be drawn
   * @throws org.midlateral.document.FileProblem about the first that does
   */
  public static void requireRoom(Path folder, Collection<SolidFormat> formats, boolean partsOnly) {
    List<String> names = new ArrayList<>();
    formats.forEach(format -> names.add(format.fileOf(Trough.NAME)));
    names.addAll(List.of(REPORT, MakingRecord.FILE));
    if (!partsOnly) {
      names.addAll(BenchDocuments.CERTAIN);
    }
    WholeFile.requireNone(names.stream().map(folder::resolve).toList());
  }

  /** One more than of the making that lies there, unless that is the same. */
  private static int revision(Path folder, MakingSource asked) {
    return MakingRecord.in(folder)
        .map(former -> former.isOf(asked) ? former.revision() : former.revision() + 1)
        .orElse(1);
  }

  /** Files at their paths, each of which tells what was written when it was. */
  private static Map<Path, Content> counted(
      Map<String, Content> files, Path folder, Map<String, MadeFile> made) {
    Map<Path, Content> placed = new LinkedHashMap<>();
    files.forEach(
        (name, content) ->
            placed.put(
                folder.resolve(name), out -> made.put(name, MadeFile.written(content, out))));
    return placed;
  }

  /**
   * The record of a product.
   *
   * @param made its files
   */
  public static MakingRecord record(
      Product product,
      MakingSource asked,
      MakingRecord.RecordedPlace place,
      Map<String, MadeFile> made) {
    return MakingRecord.of(
        product.order().measurements().reference(),
        Optional.of(product.order()),
        asked,
        new MakingRecord.RecordedResult(
            state(product),
            told(product),
            notes(product),
            product.isMade() ? product.orthosis().orElseThrow().labels() : Map.of(),
            figures(product)),
        place,
        new TreeMap<>(made));
  }

  /** Mass, volume, height and support; empty where nothing is made. */
  private static Optional<MakingFigures> figures(Product product) {
    if (!product.isMade()) {
      return Optional.empty();
    }
    Material material = Material.of(product.order().design().material());
    double volume =
        product.inspection().orElseThrow().pieces().stream()
            .mapToDouble(piece -> piece.audit().volume())
            .sum();
    Collection<PrintPose> poses = product.print().orElseThrow().poses().values();
    return Optional.of(
        new MakingFigures(
            material.title(),
            rounded(volume * material.density() / 1000),
            rounded(volume),
            rounded(poses.stream().mapToDouble(PrintPose::height).max().orElse(0)),
            rounded(poses.stream().mapToDouble(PrintPose::overhang).sum())));
  }

  private static double rounded(double value) {
    return Math.round(100 * value) / 100.0;
  }

  /** What came of it, in a word: {@code made}, {@code partly} or {@code refused}. */
  public static String state(Product product) {
    return product.ok() ? "made" : product.isMade() ? "partly" : "refused";
  }

  /** Its cautions, or why it was refused, in one line. */
  public static String told(Product product) {
    return product.findings().stream()
        .filter(f -> f.severity() != Finding.Severity.NOTE)
        .filter(f -> product.isMade() || f.severity() == Finding.Severity.REFUSAL)
        .map(Finding::text)
        .collect(Collectors.joining(" "));
  }

  /** Its notes, in one line. */
  public static String notes(Product product) {
    return product.findings().stream()
        .filter(f -> f.severity() == Finding.Severity.NOTE)
        .map(Finding::text)
        .collect(Collectors.joining(" "));
  }

  /**
   * The files of a product, by name: the solids', and a report without timing.
   *
   * @param formats of the solids' files; none for a refused design
   */
  public static Map<String, Content> files(Product product, Collection<SolidFormat> formats) {
    return files(product, formats, PartNames.first(product.order()));
  }

  /**
   * The same of any making, with its documents where they were drawn.
   *
   * @param names of parts and files
   */
  public static Map<String, Content> files(
      Product product, Collection<SolidFormat> formats, PartNames names) {
    Map<String, Content> files = new LinkedHashMap<>(solidFiles(product, formats, names));
    product.documents().ifPresent(drawn -> files.putAll(drawn.files()));
    files.put(
        REPORT,
        out -> {
          Report report = ProductReport.of(product, formats, names, Optional.empty());
          out.write(report.json().getBytes(StandardCharsets.UTF_8));
        });
    return files;
  }

  private static Map<String, Content> solidFiles(
      Product product, Collection<SolidFormat> formats, PartNames names) {
    Map<String, Content> files = new LinkedHashMap<>();
    for (SolidFormat format : formats) {
      format
          .files(solids(product, names))
          .forEach(f -> files.put(names.file(f.name()), f.content()));
    }
    return files;
  }

  private static SolidSet solids(Product product, PartNames names) {
    return new SolidSet(
        names.title(),
        ProductReport.tool() + "+" + Program.current().build(),
        Material.of(product.order().design().material()).title(),
        product.orthosis().orElseThrow().solids().stream()
            .map(
                solid ->
                    new NamedSolid(
                        solid.piece().name(),
                        names.title(solid.piece().name()),
                        product
                            .order()
                            .machine()
                            .map(machine -> solid.mesh().scaled(machine.enlargement()))
                            .orElse(solid.mesh()),
                        product.print().orElseThrow().pose(solid.piece().name())))
            .toList());
  }
}
