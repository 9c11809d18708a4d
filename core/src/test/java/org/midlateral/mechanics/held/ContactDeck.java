package org.midlateral.mechanics.held;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.SurfacePoint;

/**
 * A trough of quadratic wedges with round rims, pulled by bands, on soft bricks round rigid bones,
 * in contact without friction; written for CalculiX (Debian package calculix-ccx). The bones are
 * held, the distal one turned about the joint's axis, and what holds them there is read back. Knows
 * nothing of springs in place of tissue, of shell elements or of condensation.
 */
public final class ContactDeck {
  private static final long TIME_LIMIT = 600;

  /** Pressure per overlap of the two surfaces (MPa/mm): some three hundred times the skin's. */
  private static final double CONTACT = 4;

  /** So often a place on the trough's outside is looked for from the one found before. */
  private static final int LOOKS = 4;

  private final FingerShell shell;
  private final PieceDeck piece;
  private final DigitSurface skin;
  private final Vector3D centre;
  private final Vector3D raised;
  private final SkinBricks bricks;
  private final StringBuilder grips = new StringBuilder();
  private int elements;

  /**
   * The bricks' material; it does not widen when it is squeezed.
   *
   * @param thickness of the layer by its law, as a share of the mean radius
   * @param modulus MPa
   * @param columns whether no brick feels its neighbours, and each is squeezed only outward; else
   *     it is one skin, which reaches beyond the trough and slides under it
   */
  public record Tissue(double thickness, double modulus, boolean columns) {}

  /**
   * A node on a bone.
   *
   * @param id number
   * @param place mm
   * @param station mm
   * @param distal whether it turns with the joint
   */
  public record Bone(int id, Vector3D place, double station, boolean distal) {}

  /**
   * A brick's face on a bone.
   *
   * @param nodes on it
   * @param skin the place on the skin over its middle (mm)
   * @param out normal of the skin there
   * @param area of skin over it (mm²)
   */
  public record Cell(List<Integer> nodes, Vector3D skin, Vector3D out, double area) {
    public Cell {
      nodes = List.copyOf(nodes);
    }
  }

  /**
   * A trough on a finger.
   *
   * @param shell the trough alone
   * @param raised how far the trough is raised into the skin to begin with (mm)
   */
  public ContactDeck(FingerShell shell, Tissue tissue, Vector3D raised) {
    this.shell = shell;
    this.raised = raised;
    skin = shell.digit();
    centre = skin.centre(skin.pipAxis());
    piece = new PieceDeck(shell);
    UnderTrough under = new UnderTrough(shell.trough().piece());
    bricks = new SkinBricks(under, skin, tissue, piece.places().size(), piece.elementCount());
    elements = bricks.lastElement();
  }

  /**
   * A force on the outside or the rim of the trough.
   *
   * @param station of the band's section (mm)
   * @param at where it acts (mm)
   * @param force N
   */
  public void pull(double station, Vector3D at, Vector3D force) {
    ShellLayer trough = shell.layer(0);
    double s = station;
    SurfacePoint spot = shell.on(0, s, ShellLayer.turn(trough.solid.piece(), s, at));
    // The wall leans: what lies outside of a station's middle is off the section's plane.
    for (int k = 0; k < LOOKS; k++) {
      Vector3D there = Vector3D.ZERO;
      for (int c = 0; c < 3; c++) {
        there = there.add(piece.places().get(outside(spot, c)).multiply(spot.weights()[c]));
      }
      s += there.vectorTo(at).dot(skin.tangent(s));
      spot = shell.on(0, s, ShellLayer.turn(trough.solid.piece(), s, at));
    }
    for (int c = 0; c < 3; c++) {
      piece.add(outside(spot, c), force.multiply(spot.weights()[c]));
    }
  }

  private int outside(SurfacePoint spot, int corner) {
    ShellLayer trough = shell.layer(0);
    int node = trough.corners[3 * spot.triangle() + corner];
    return node < trough.inner ? piece.wallNode(0, node, 1) : piece.crest(0, node - trough.inner);
  }

  /** Springs along the finger and across it from a vertex of the inside to the ground (N/mm). */
  public void grip(int vertex, double stiffness) {
    for (int axis = 1; axis <= 2; axis++) {
      String set = "GRIP" + ++elements;
      grips
          .append("*ELEMENT, TYPE=SPRING1, ELSET=" + set + "\n" + elements + ",")
          .append(piece.wallNode(0, vertex, -1) + "\n*SPRING, ELSET=" + set + "\n" + axis + "\n")
          .append(String.format(Locale.ROOT, "%.9e%n", stiffness));
    }
  }

  /** The nodes on the bones. */
  public List<Bone> bones() {
    return bricks.bones();
  }

  /** The bricks' faces on the bones. */
  public List<Cell> cells() {
    return bricks.cells();
  }

  /** A place of the distal part once the joint has flexed by an angle (mm, rad). */
  public Vector3D turned(Vector3D at, double angle) {
    Vector3D arm = centre.vectorTo(at);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return centre.add(
        Vector3D.of(
            cos * arm.getX() + sin * arm.getZ(), arm.getY(), cos * arm.getZ() - sin * arm.getX()));
  }

  /**
   * Turns the distal bone.
   *
   * @param angle rad
   * @return what each of {@link #bones} is held with (N)
   */
  public Map<Integer, Vector3D> turn(double angle, Path directory)
      throws IOException, InterruptedException {
    Files.writeString(directory.resolve("contact.inp"), write(angle));
    ProcessBuilder builder = new ProcessBuilder("ccx", "contact");
    builder.environment().put("OMP_NUM_THREADS", "1");
    Process process =
        builder
            .directory(directory.toFile())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log").toFile())
            .start();
    if (!process.waitFor(TIME_LIMIT, TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("ccx failed: " + Files.readString(directory.resolve("log")));
    }
    Map<Integer, Vector3D> forces = new HashMap<>();
    for (String line : Files.readAllLines(directory.resolve("contact.dat"))) {
      String[] w = line.trim().split("\\s+");
      if (w.length == 4 && w[0].matches("\\d+")) {
        double[] f = {Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3])};
        forces.put(Integer.parseInt(w[0]), Vector3D.of(f));
      }
    }
    return forces;
  }

  private String write(double angle) {
    StringBuilder text = new StringBuilder("*NODE, NSET=ALL\n");
    piece.places().forEach((id, p) -> write(text, "%d,%.9e,%.9e,%.9e%n", id, p.add(raised)));
    text.append(bricks.nodes());
    text.append("*ELEMENT, TYPE=C3D15, ELSET=TROUGH\n").append(piece.elements());
    text.append(bricks.elements()).append(grips);
    Isotropic material = shell.model().material();
    text.append("*MATERIAL, NAME=HARD\n*ELASTIC\n");
    text.append(material.modulus() + "," + material.poisson() + "\n");
    text.append("*SOLID SECTION, ELSET=TROUGH, MATERIAL=HARD\n").append(bricks.sections());
    text.append("*SURFACE, NAME=INSIDE\n");
    for (int t = 1; t <= shell.trough().innerTriangles(); t++) {
      text.append(t).append(",S1\n");
    }
    text.append("*SURFACE, NAME=SKIN\n").append(bricks.outside());
    text.append("*SURFACE INTERACTION, NAME=TOUCH\n");
    text.append("*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR\n" + CONTACT + "\n");
    text.append("*CONTACT PAIR, INTERACTION=TOUCH, TYPE=SURFACE TO SURFACE\nSKIN,INSIDE\n");
    text.append("*NSET, NSET=BONE\n");
    bones().forEach(bone -> text.append(bone.id()).append(",\n"));
    text.append("*STEP, INC=200\n*STATIC\n1,1,1e-5,1\n*BOUNDARY\n");
    for (Bone bone : bones()) {
      Vector3D moved = moved(bone.place(), bone.distal(), angle);
      write(text, "%1$d,1,1,%2$.9e%n%1$d,2,2,%3$.9e%n%1$d,3,3,%4$.9e%n", bone.id(), moved);
    }
    for (SkinBricks.Guided node : bricks.guided()) {
      Vector3D moved = moved(node.place(), node.distal(), angle);
      Vector3D own = Vector3D.of(0, moved.dot(node.round()), moved.dot(node.along()));
      write(text, "%1$d,2,2,%3$.9e%n%1$d,3,3,%4$.9e%n", node.id(), own);
    }
    text.append("*CLOAD\n");
    piece
        .loads()
        .forEach((id, f) -> write(text, "%1$d,1,%2$.9e%n%1$d,2,%3$.9e%n%1$d,3,%4$.9e%n", id, f));
    return text.append("*NODE PRINT, NSET=BONE, FREQUENCY=999\nRF\n*END STEP\n").toString();
  }

  private Vector3D moved(Vector3D at, boolean distal, double angle) {
    return distal ? at.vectorTo(turned(at, angle)) : Vector3D.ZERO;
  }

  private static void write(StringBuilder text, String format, int id, Vector3D v) {
    text.append(String.format(Locale.ROOT, format, id, v.getX(), v.getY(), v.getZ()));
  }
}
