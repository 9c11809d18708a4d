package org.midlateral.recipe.product;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.Slice;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.Measurements;
import org.midlateral.mesh.query.MeshAudit;
import org.midlateral.piece.BridgedStretch;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.FitTogether;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.PrintCheck;
import org.midlateral.recipe.Report;
import org.midlateral.recipe.joint.JointReport;
import org.midlateral.recipe.rigidity.Rigidity;
import org.midlateral.shared.SharedData;
import org.midlateral.shell.DorsumGap;

/** What is told of a product, in the form of a {@link Report}. */
public final class ProductReport {
  private static final String TOOL = "midlateral";

  private final Product product;
  private final Collection<SolidFormat> formats;
  private final PartNames names;
  private final Material material;

  private ProductReport(Product product, Collection<SolidFormat> formats, PartNames names) {
    this.product = product;
    this.formats = formats;
    this.names = names;
    this.material = Material.of(product.order().design().material());
  }

  /**
   * The report.
   *
   * @param formats of the solids' files
   * @param writeMs time spent on writing; empty leaves the timing out
   */
  public static Report of(
      Product product, Collection<SolidFormat> formats, Optional<Double> writeMs) {
    return of(product, formats, PartNames.first(product.order()), writeMs);
  }

  /**
   * The report of files with other names.
   *
   * @param formats of the solids' files
   * @param names of the files
   * @param writeMs time spent on writing; empty leaves the timing out
   */
  public static Report of(
      Product product, Collection<SolidFormat> formats, PartNames names, Optional<Double> writeMs) {
    return new ProductReport(product, formats, names).report(writeMs);
  }

  /** Name and version of the program, as reports and files give them. */
  public static String tool() {
    return TOOL + " " + SharedData.version();
  }

  private Report report(Optional<Double> writeMs) {
    Optional<Inspection> inspection = product.inspection();
    Optional<Documents> documents = product.documents();
    Optional<Rigidity> mechanics = documents.flatMap(Documents::rigidity);
    return new Report(
        new Report.Tool(TOOL, SharedData.version()),
        product.order().measurements().reference(),
        product.order().note().orElse(null),
        Report.CAUTION,
        product.ok(),
        product.findings().stream().map(Report.ReportLine::of).toList(),
        product.orthosis().map(this::levels).orElse(null),
        inspection.map(i -> partLines(i, formats)).orElse(null),
        inspection.map(this::clearance).orElse(null),
        inspection.flatMap(Inspection::together).map(ProductReport::assembly).orElse(null),
        mechanics.flatMap(Rigidity::joint).map(JointReport::of).orElse(null),
        mechanics.map(Rigidity::rigidity).orElse(null),
        mechanics.map(Rigidity::forces).orElse(null),
        documents.map(d -> d.blocks().closure()).orElse(null),
        documents.map(d -> d.blocks().blank()).orElse(null),
        product
            .print()
            .filter(print -> !product.order().byHand())
            .map(this::printBlock)
            .orElse(null),
        writeMs.map(product.timing()::withWrite).orElse(null));
  }

  private Report.Print printBlock(PrintCheck check) {
    Inspection inspected = product.inspection().orElseThrow();
    Double gap = inspected.together().map(fit -> fit.smallest().distance()).orElse(null);
    return check.block(material.title(), partLines(inspected, List.of()), gap);
  }

  private List<Report.LevelLine> levels(Orthosis made) {
    Measurements measured = product.order().measurements();
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
      Inspection inspected, Collection<SolidFormat> named) {
    Map<String, Report.PartLine> lines = new LinkedHashMap<>();
    inspected.pieces().forEach(p -> lines.put(p.solid().piece().name(), partLine(p, named)));
    return lines;
  }

  private Report.PartLine partLine(PieceInspection piece, Collection<SolidFormat> named) {
    String name = piece.solid().piece().name();
    MeshAudit audit = piece.audit();
    Bounds3D box = audit.bounds();
    return new Report.PartLine(
        named.stream().findFirst().map(format -> names.file(format.fileOf(name))).orElse(null),
        audit.triangles(),
        audit.vertices(),
        audit.volume(),
        audit.volume() * material.density() / 1000,
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

  private Report.Clearance clearance(Inspection inspected) {
    var conformance = inspected.trough().conformance();
    Double atCentre = conformance.gapAtSpots().isEmpty() ? null : conformance.gapAtSpots().get(0);
    return new Report.Clearance(
        new Report.TroughClearance(
            conformance.gap().min(), conformance.gap().mean(), conformance.gap().max(), atCentre),
        inspected.dorsalShell().map(p -> dorsum(p.solid().piece())).orElse(null),
        inspected.together().map(FitTogether::fitGap).orElse(null),
        inspected.pieces().stream()
            .map(p -> p.solid().piece())
            .flatMap(p -> BridgedStretch.of(p).stream().map(stretch -> line(p, stretch)))
            .toList());
  }

  private Report.DorsumClearance dorsum(Piece shell) {
    DorsumGap gap = DorsumGap.of(shell);
    return new Report.DorsumClearance(
        product.order().design().dorsalShell().clearance(), gap.min(), gap.max());
  }

  private static Report.BridgeLine line(Piece piece, BridgedStretch stretch) {
    return new Report.BridgeLine(
        piece.name(),
        stretch.from(),
        stretch.to(),
        stretch.rise(),
        stretch.station(),
        stretch.girth());
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
