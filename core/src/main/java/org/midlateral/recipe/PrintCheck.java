package org.midlateral.recipe;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Machine;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.pose.PoseSearch;
import org.midlateral.pose.PrintPose;

/**
 * Whether the pieces suit the process they are printed by, and how they lie on its bed.
 *
 * @param process chosen
 * @param poses by piece
 * @param findings cautions where a wall or a gap is under what the process holds
 */
public record PrintCheck(
    PrintProcess process, Map<String, PrintPose> poses, List<Finding> findings) {
  public PrintCheck {
    poses = Collections.unmodifiableMap(new LinkedHashMap<>(poses));
    findings = List.copyOf(findings);
  }

  /** Section on the bed below which a brim is usual (mm²); common practice, no source. */
  private static final double SMALL_FOOTING = 100;

  /** Where layers lie more across the length than along it (degrees). */
  private static final double UPRIGHT = 45;

  /** Looks at what was inspected. */
  public static PrintCheck of(Orthosis made, Inspection inspected) {
    PrintProcess process = made.order().process();
    Map<String, PrintPose> poses = new LinkedHashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (PieceInspection piece : inspected.pieces()) {
      String name = piece.solid().piece().name();
      poses.put(name, PoseSearch.of(piece.solid(), process));
      if (process.stands()) {
        standing(name, poses.get(name), findings);
      }
      double wall = piece.conformance().minWall();
      if (wall < process.leastWall()) {
        String text =
            "The wall of the %s is %.2f mm at its thinnest; %s needs at least %.2f mm" + " (%s).";
        findings.add(
            caution(
                "print-wall",
                name + ".wall",
                process,
                "least-wall",
                wall,
                text,
                name.replace('-', ' ')));
      }
    }
    inspected
        .together()
        .map(fit -> fit.smallest().distance())
        .filter(gap -> gap < process.leastGap())
        .ifPresent(
            gap ->
                findings.add(
                    caution(
                        "print-gap",
                        "dorsal-shell.fit-gap",
                        process,
                        "least-gap",
                        gap,
                        "The gap of the %s is %.2f mm at its smallest; %s needs at least %.2f mm"
                            + " (%s).",
                        "two pieces")));
    inspected
        .together()
        .map(fit -> fit.smallest().distance())
        .flatMap(gap -> tight(gap, process))
        .ifPresent(findings::add);
    made.order().machine().ifPresent(machine -> ofMachine(machine, inspected, poses, findings));
    return new PrintCheck(process, poses, findings);
  }

  /** A gap that the process holds, and that guides would have wider. */
  private static Optional<Finding> tight(double gap, PrintProcess process) {
    if (gap < process.leastGap() || gap >= process.usualGap()) {
      return Optional.empty();
    }
    String text =
        String.format(
            Locale.ROOT,
            "The gap of the two pieces is %.2f mm at its smallest; guides for %s ask for %.2f mm"
                + " and more between parts that slide (%s). Print one pair first, or widen it.",
            gap,
            process.name(),
            process.usualGap(),
            process.sources().get("usual-gap"));
    return Optional.of(
        Finding.note("print-gap-tight", "dorsal-shell.fit-gap", text, gap, process.usualGap()));
  }

  /** What a machine's own bed and shrinkage come to. */
  private static void ofMachine(
      Machine machine, Inspection inspected, Map<String, PrintPose> poses, List<Finding> findings) {
    for (PieceInspection piece : inspected.pieces()) {
      String name = piece.solid().piece().name();
      double[] box = box(piece.solid().mesh(), poses.get(name).pose());
      if (!machine.holds(box[0], box[1], box[2])) {
        String text =
            String.format(
                Locale.ROOT,
                "The %s takes %.0f x %.0f x %.0f mm as it lies on the bed; %s has room for %.0f x"
                    + " %.0f x %.0f mm, less %.0f mm at its edges.",
                name.replace('-', ' '),
                box[0],
                box[1],
                box[2],
                machine.name(),
                machine.bed().width(),
                machine.bed().depth(),
                machine.bed().height(),
                machine.margin());
        findings.add(
            Finding.caution("print-bed", "print.process", text, box[2], machine.bed().height()));
      }
    }
    if (machine.shrinkage() > 0) {
      String text =
          String.format(
              Locale.ROOT,
              "The parts in the files are %.2f %% larger than the parts will be, since %s shrinks"
                  + " them by as much; all figures given are those of the parts.",
              100 * (machine.enlargement() - 1),
              machine.name());
      findings.add(
          Finding.note(
              "print-shrinkage", "print.process", text, 100 * machine.shrinkage(), Double.NaN));
    }
  }

  /** Size of a turned mesh along the bed's axes (mm). */
  private static double[] box(TriangleMesh mesh, AffineTransformMatrix3D pose) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double[] place = pose.apply(mesh.vertex(v)).toArray();
      for (int axis = 0; axis < 3; axis++) {
        low[axis] = Math.min(low[axis], place[axis]);
        high[axis] = Math.max(high[axis], place[axis]);
      }
    }
    return new double[] {high[0] - low[0], high[1] - low[1], high[2] - low[2]};
  }

  /** What to look at where a piece grows upward from a bed. */
  private static void standing(String name, PrintPose pose, List<Finding> findings) {
    if (pose.footing() < SMALL_FOOTING) {
      String text =
          String.format(
              Locale.ROOT,
              "The %s stands on %.0f mm² of its blunt edge; give it a brim or a raft.",
              name.replace('-', ' '),
              pose.footing());
      findings.add(
          Finding.note("print-footing", "print.process", text, pose.footing(), SMALL_FOOTING));
    }
    if (pose.upright() > UPRIGHT) {
      String text =
          String.format(
              Locale.ROOT,
              "The %s is turned for least support, %.0f° from lying down: its layers lie across"
                  + " the finger's length, where bending separates them more easily than the"
                  + " figures say.",
              name.replace('-', ' '),
              pose.upright());
      findings.add(Finding.note("print-layers", "print.process", text, pose.upright(), UPRIGHT));
    }
  }

  private static Finding caution(
      String code,
      String key,
      PrintProcess process,
      String limitName,
      double value,
      String text,
      String what) {
    double limit = limitName.equals("least-wall") ? process.leastWall() : process.leastGap();
    String source = process.sources().get(limitName);
    String sentence = String.format(Locale.ROOT, text, what, value, process.name(), limit, source);
    return Finding.caution(code, key, sentence, value, limit);
  }

  /** The turn of a piece on the bed. */
  public AffineTransformMatrix3D pose(String piece) {
    return poses.get(piece).pose();
  }

  /** The block of the report. */
  public Report.Print block(String material, Map<String, Report.PartLine> parts, Double gap) {
    Map<String, Report.PrintPart> lines = new LinkedHashMap<>();
    poses.forEach(
        (name, chosen) -> {
          double[] p = chosen.pose().toArray();
          lines.put(
              name,
              new Report.PrintPart(
                  parts.get(name).minWall(),
                  parts.get(name).mass(),
                  chosen.overhang(),
                  chosen.skinOverhang(),
                  chosen.height(),
                  chosen.footing(),
                  chosen.upright(),
                  List.of(p[0], p[1], p[2], p[4], p[5], p[6], p[8], p[9], p[10])));
        });
    return new Report.Print(
        process.name(),
        material,
        PoseSearch.CRITERION,
        new Report.PrintLimits(
            process.leastWall(), process.leastGap(), process.overhang(), process.sources()),
        gap,
        lines);
  }
}
