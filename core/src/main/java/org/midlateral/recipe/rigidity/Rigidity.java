package org.midlateral.recipe.rigidity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.midlateral.document.bench.RigidityPlot;
import org.midlateral.document.bench.RigidityPlot.PlotLevel;
import org.midlateral.document.bench.RigidityPlot.PlotLine;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.Profile;
import org.midlateral.mechanics.RigidityBlock;
import org.midlateral.mechanics.SupportBlock;
import org.midlateral.mechanics.ThreePoint;
import org.midlateral.mechanics.held.HeldShell;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.solid.Solid;

/**
 * The mechanics of one orthosis: its rigidity along the finger, the three forces, and the
 * comparison of wraps, each from a real mesh of the same finger under the same moment.
 *
 * @param orthosis what was made
 * @param joint how it holds the joint; empty where that has no answer
 * @param support the three forces put on its trough to see how the piece bends
 * @param trough the trough's sections along the finger
 * @param bonded trough and dorsal shell as one, where there is a shell
 * @param slipping trough and dorsal shell each for itself, where there is a shell
 * @param rigidity the report's block
 * @param forces the report's block
 * @param curves EI along the finger of each wrap compared
 * @param findings what gives reason to look at
 */
public record Rigidity(
    Orthosis orthosis,
    Optional<JointHeld> joint,
    ThreePoint support,
    Profile trough,
    Optional<Profile> bonded,
    Optional<Profile> slipping,
    RigidityBlock rigidity,
    SupportBlock forces,
    List<Curve> curves,
    List<Finding> findings) {

  /** The wraps compared where none are named; 1 is the closed tube. */
  public static final List<Double> USUAL_WRAPS = List.of(0.25, 0.35, 0.5, 1.0);

  /**
   * EI along the finger at one wrap.
   *
   * @param wrap share of the circumference; 1 for the closed tube
   * @param solids what was compared: the trough, and what closes it
   * @param support the three forces on it
   * @param profile its sections
   * @param held the same wrap under the load by finite elements, as drawn for a right hand; empty
   *     where that could not be computed
   */
  public record Curve(
      double wrap,
      List<Solid> solids,
      ThreePoint support,
      Profile profile,
      Optional<HeldShell> held) {
    public Curve {
      solids = List.copyOf(solids);
    }
  }

  public Rigidity {
    curves = List.copyOf(curves);
    findings = List.copyOf(findings);
  }

  /** EI of the trough at the PIP axis (N·mm²). */
  public double bendingAtPip() {
    double axis = orthosis.digit().pipAxis();
    return trough.panels().stream()
        .min(Comparator.comparingDouble(panel -> Math.abs(panel.middle() - axis)))
        .map(panel -> trough.bending(panel.section()))
        .orElseThrow();
  }

  /** The picture of EI along the finger, wraps compared. */
  public RigidityPlot plot() {
    List<PlotLine> lines = new ArrayList<>();
    for (Curve curve : curves) {
      List<Profile.BeamPanel> panels = curve.profile().panels();
      String label =
          curve.wrap() == 1 ? "closed" : String.format(Locale.ROOT, "%.2f girth", curve.wrap());
      lines.add(
          new PlotLine(
              label,
              panels.stream().map(Profile.BeamPanel::middle).toList(),
              panels.stream().map(panel -> curve.profile().bending(panel.section())).toList()));
    }
    Measurements measured = orthosis.order().measurements();
    return new RigidityPlot(
        measured.reference() + ", " + rigidity.material(),
        "Estimate, for comparison; does not clear a piece for use.",
        lines,
        List.of(
            new PlotLevel("web", 0),
            new PlotLevel("PIP axis", orthosis.digit().pipAxis()),
            new PlotLevel("DIP axis", measured.dipAxis())));
  }
}
