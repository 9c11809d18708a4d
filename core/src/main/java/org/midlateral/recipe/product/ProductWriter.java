package org.midlateral.recipe.product;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.midlateral.document.Content;
import org.midlateral.document.WholeFile;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.document.format.SolidSet;
import org.midlateral.measurement.Material;
import org.midlateral.recipe.Report;

/** A product as files. */
public final class ProductWriter {
  private static final String REPORT = "report.json";

  private ProductWriter() {}

  /** Writes all files of a product into a folder, the solids in the usual formats. */
  public static Report write(Product product, Path folder, boolean force, boolean reproducible) {
    return write(product, folder, SolidFormat.USUAL, force, reproducible);
  }

  /**
   * Writes all files of a product into a folder, whole or not at all.
   *
   * @param folder that exists
   * @param formats of the solids' files
   * @param force whether files of the same names may be replaced
   * @param reproducible leaves the timing out of the report
   * @return the report as written
   * @throws IllegalStateException if the design was refused
   * @throws org.midlateral.document.FileProblem if a file cannot be written
   */
  public static Report write(
      Product product,
      Path folder,
      Collection<SolidFormat> formats,
      boolean force,
      boolean reproducible) {
    if (!product.isMade()) {
      throw new IllegalStateException("a refused design is not written");
    }
    long start = System.nanoTime();
    Map<Path, Content> all = new LinkedHashMap<>();
    solidFiles(product, formats).forEach((n, content) -> all.put(folder.resolve(n), content));
    product.documents().ifPresent(d -> d.files().forEach((n, c) -> all.put(folder.resolve(n), c)));
    // The report comes last, so that its timing knows the others'.
    Report[] report = new Report[1];
    all.put(
        folder.resolve(REPORT),
        out -> {
          double writing = (System.nanoTime() - start) / 1e6;
          report[0] =
              ProductReport.of(
                  product, formats, reproducible ? Optional.empty() : Optional.of(writing));
          out.write(report[0].json().getBytes(StandardCharsets.UTF_8));
        });
    WholeFile.writeAll(all, force);
    return report[0];
  }

  /**
   * The files of a product, by name: the solids', and a report without timing.
   *
   * @param formats of the solids' files; none for a refused design
   */
  public static Map<String, Content> files(Product product, Collection<SolidFormat> formats) {
    Map<String, Content> files = new LinkedHashMap<>(solidFiles(product, formats));
    Report report = ProductReport.of(product, formats, Optional.empty());
    byte[] json = report.json().getBytes(StandardCharsets.UTF_8);
    files.put(REPORT, out -> out.write(json));
    return files;
  }

  private static Map<String, Content> solidFiles(Product product, Collection<SolidFormat> formats) {
    Map<String, Content> files = new LinkedHashMap<>();
    for (SolidFormat format : formats) {
      format.files(solids(product)).forEach(f -> files.put(f.name(), f.content()));
    }
    return files;
  }

  private static SolidSet solids(Product product) {
    return new SolidSet(
        product.order().measurements().reference(),
        ProductReport.tool(),
        Material.of(product.order().design().material()).title(),
        product.orthosis().orElseThrow().solids().stream()
            .map(
                solid ->
                    new NamedSolid(
                        solid.piece().name(),
                        solid.mesh(),
                        product.print().orElseThrow().pose(solid.piece().name())))
            .toList());
  }
}
