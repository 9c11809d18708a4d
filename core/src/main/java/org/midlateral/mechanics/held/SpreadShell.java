package org.midlateral.mechanics.held;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.cut.Outline;
import org.midlateral.measurement.NotComputable;
import org.midlateral.mechanics.finite.ShellLoad;
import org.midlateral.mechanics.finite.ShellModel;
import org.midlateral.mechanics.finite.ShellResult;
import org.midlateral.mechanics.finite.StrainField;

/**
 * A dorsal shell spread at its two rims by even forces over the whole length of its flanks, as a
 * shell in space: unlike a strip of it, its ends and its uneven girth hold it together.
 *
 * @param perForce mean opening of its rims for a force of 1 N on each of them (mm/N)
 * @param strainPerForce largest strain that this force costs, as a share (1/N)
 */
public record SpreadShell(double perForce, double strainPerForce) {

  /**
   * Spreads a shell.
   *
   * @param alone the shell alone
   * @throws NotComputable where it has no rims
   */
  public static SpreadShell of(FactoredShell alone) throws NotComputable {
    FingerShell mesh = alone.shell();
    ShellModel model = mesh.model();
    Outline outline = mesh.trough().piece().outline();
    HeldJoint.Zone flanks = new HeldJoint.Zone(outline.flankStart(), outline.flankEnd());
    ShellLoad load = rim(mesh, model, flanks, 1).plus(rim(mesh, model, flanks, -1));
    ShellResult spread = alone.solver().solve(load);
    // The work of both forces is the force times the mean opening, and half of it is stored.
    return new SpreadShell(2 * spread.strainEnergy(), new StrainField(spread).largest());
  }

  /** 1 N outward on one rim. */
  private static ShellLoad rim(
      FingerShell mesh, ShellModel model, HeldJoint.Zone flanks, double side) throws NotComputable {
    List<RimSegment> parts = RimSegment.of(mesh, flanks, side);
    double y = parts.stream().mapToDouble(p -> model.coordinate(p.crestA(), 1)).sum();
    return RimSegment.load(model, parts, Vector3D.Unit.PLUS_Y.multiply(Math.signum(y)));
  }

  /** Largest strain when it is open by so much (mm), as a share. */
  public double strain(double spread) {
    return strainPerForce * force(spread);
  }

  /** Force on each rim that opens it by so much (N). */
  public double force(double spread) {
    return spread / perForce;
  }
}
