package org.midlateral.recipe;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.cut.DesignRefused;
import org.midlateral.document.Content;
import org.midlateral.document.bench.BenchBlocks;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.bench.SheetFigure;
import org.midlateral.document.drawing.Paper;
import org.midlateral.measurement.Finding;
import org.midlateral.mechanics.SupportBlock;

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

  public Documents {
    files = Map.copyOf(files);
    findings = List.copyOf(findings);
  }

  /** Computes the mechanics and draws all documents. */
  public static Documents of(Orthosis made) {
    List<Finding> findings = new ArrayList<>();
    Optional<Rigidity> rigidity = Optional.empty();
    try {
      rigidity = Optional.of(Rigidity.of(made, Rigidity.USUAL_WRAPS));
      findings.addAll(rigidity.get().findings());
    } catch (DesignRefused refused) {
      // The pieces can be made all the same: only the forces on them cannot be told.
      Finding f = refused.finding();
      findings.add(Finding.caution(f.code(), f.key(), f.text(), f.value(), f.limit()));
    }
    BenchDocuments bench =
        BenchDocuments.of(
            made.order(),
            made.digit(),
            made.relief(),
            made.solids(),
            rigidity.map(r -> figures(r.forces())).orElse(List.of()),
            Paper.usualWith(made.order().measurements().unit()));
    findings.addAll(bench.closure().findings());
    Map<String, Content> files = new LinkedHashMap<>(bench.files());
    rigidity.ifPresent(r -> files.put("rigidity.svg", plot(r)));
    return new Documents(rigidity, BenchBlocks.of(bench), files, findings);
  }

  private static Content plot(Rigidity rigidity) {
    try {
      byte[] picture = rigidity.plot().getBytes(StandardCharsets.UTF_8);
      return out -> out.write(picture);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<SheetFigure> figures(SupportBlock forces) {
    List<SheetFigure> figures = new ArrayList<>();
    figures.add(figure("Moment about the PIP axis", forces.moment(), "N·mm"));
    figures.add(figure("Lever arm, proximal", forces.leverArms().proximal(), "mm"));
    figures.add(figure("Lever arm, distal", forces.leverArms().distal(), "mm"));
    figures.add(figure("Force, proximal end", forces.forces().proximal(), "N"));
    figures.add(figure("Force, distal end", forces.forces().distal(), "N"));
    figures.add(figure("Force over the PIP joint", forces.forces().pip(), "N"));
    if (forces.finiteElements() != null) {
      figures.add(
          figure(
              "Extension lost, trough alone",
              forces.finiteElements().trough().extensionLost(),
              "°"));
      if (forces.finiteElements().bonded() != null) {
        figures.add(
            figure(
                "Extension lost, shell bonded on",
                forces.finiteElements().bonded().extensionLost(),
                "°"));
      }
    }
    return figures;
  }

  private static SheetFigure figure(String what, double value, String unit) {
    return new SheetFigure(what, value, Double.NaN, Double.NaN, unit);
  }
}
