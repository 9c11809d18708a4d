package org.midlateral.mechanics.held;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.mechanics.element.Isotropic;

/**
 * A trough of quadratic wedges with round rims, pressed by bands, on a finger of soft bricks round
 * rigid bones, in contact without friction; written for CalculiX (Debian package calculix-ccx). The
 * bones are held, and the distal one is turned about the joint's axis step by step; what holds it
 * there is read back. Knows nothing of springs in place of tissue, of shells or of condensation.
 */
public final class ContactDeck {
  private static final double STEP = 1.4;
  private static final double AROUND = Math.toRadians(115);
  private static final int DEEP = 2;
  private static final long TIME_LIMIT = 1200;

  /** Pressure per overlap of the two surfaces (MPa/mm): two hundred times as stiff as the skin. */
  private static final double CONTACT = 4;

  private final FingerShell shell;
  private final PieceDeck piece;
  private final DigitSurface skin;
  private final double depth;
  private final double modulus;
  private final Vector3D raised;
  private final Map<Integer, Vector3D> layer = new HashMap<>();
  private final StringBuilder bricks = new StringBuilder();
  private final StringBuilder outside = new StringBuilder();
  private final List<Bone> bones = new ArrayList<>();
  private final StringBuilder grips = new StringBuilder();
  private int nodes;
  private int elements;

  /**
   * A node on the bone.
   *
   * @param id number
   * @param place mm
   * @param skin the place on the skin over it (mm)
   * @param station mm
   * @param out normal of the skin
   * @param area of skin over it (mm²)
   * @param distal whether it turns
   */
  public record Bone(
      int id,
      Vector3D place,
      Vector3D skin,
      double station,
      Vector3D out,
      double area,
      boolean distal) {}

  /**
   * A trough on a finger.
   *
   * @param shell the trough alone
   * @param depth of the soft layer, as a share of the mean radius
   * @param modulus of the layer (MPa); it does not widen when squeezed
   * @param raised how far the trough is raised into the skin to begin with (mm)
   */
  public ContactDeck(FingerShell shell, double depth, double modulus, Vector3D raised) {
    this.shell = shell;
    this.skin = shell.digit();
    this.depth = depth;
    this.modulus = modulus;
    this.raised = raised;
    piece = new PieceDeck(shell);
    nodes = piece.places().size();
    elements = piece.elementCount();
    double from = shell.trough().piece().outline().proximal() - 3;
    double to = Math.min(shell.trough().piece().outline().distal() + 2, skin.pulpEnd() - 1.5);
    int along = (int) Math.ceil((to - from) / STEP);
    double radius = skin.circumference(skin.pipAxis()) / (2 * Math.PI);
    int across = 2 * (int) Math.ceil(AROUND * radius / STEP);
    int[][][] grid = new int[along + 1][across + 1][DEEP + 1];
    for (int i = 0; i <= along; i++) {
      for (int j = 0; j <= across; j++) {
        double s = from + (to - from) * i / along;
        double t = AROUND * (2.0 * j / across - 1);
        double cell = (to - from) / along * 2 * AROUND / across;
        place(grid[i][j], s, t, cell * (i % along == 0 ? 0.5 : 1) * (j % across == 0 ? 0.5 : 1));
      }
    }
    for (int i = 0; i < along; i++) {
      for (int j = 0; j < across; j++) {
        brick(grid, i, j);
      }
    }
  }

  private void place(int[] column, double s, double t, double cell) {
    double[] jet = new double[18];
    Slice slice = skin.slice(s);
    slice.jet(t, jet);
    Vector3D p = Vector3D.of(jet[0], jet[1], jet[2]);
    Vector3D normal =
        Vector3D.of(jet[3], jet[4], jet[5]).cross(Vector3D.of(jet[6], jet[7], jet[8]));
    Vector3D out = normal.normalize();
    double deep = depth * slice.circumference() / (2 * Math.PI);
    for (int k = 0; k <= DEEP; k++) {
      column[k] = ++nodes;
      Vector3D at = p.subtract(out.multiply(deep * (DEEP - k) / DEEP));
      layer.put(nodes, at);
      if (k == 0) {
        bones.add(new Bone(nodes, at, p, s, out, cell * normal.norm(), s > skin.pipAxis()));
      }
    }
  }

  private void brick(int[][][] grid, int i, int j) {
    for (int k = 0; k < DEEP; k++) {
      bricks.append(++elements);
      // Counter-clockwise seen from outside is from proximal to distal, then back along the girth.
      int[][] round = {{i, j}, {i, j + 1}, {i + 1, j + 1}, {i + 1, j}};
      for (int up = 0; up < 2; up++) {
        for (int[] c : round) {
          bricks.append(",").append(grid[c[0]][c[1]][k + up]);
        }
      }
      bricks.append("\n");
      if (k == DEEP - 1) {
        outside.append(elements).append(",S2\n");
      }
    }
  }

  /** A force on the outside or the rim of the trough, on the nearest node. */
  public void pull(Vector3D at, Vector3D force) {
    ShellLayer trough = shell.layer(0);
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < trough.inner; i++) {
      for (int crest = 0; crest < (i < trough.nodeCount() - trough.inner ? 2 : 1); crest++) {
        int id = crest == 1 ? piece.crest(0, i) : piece.wallNode(0, i, 1);
        double distance = piece.places().get(id).distance(at);
        if (distance < least) {
          least = distance;
          best = id;
        }
      }
    }
    piece.add(best, force);
  }

  /** A spring along the finger to the ground on the inside of the trough (N/mm). */
  public void grip(int vertex, double stiffness) {
    String set = "GRIP" + ++elements;
    grips
        .append("*ELEMENT, TYPE=SPRING1, ELSET=" + set + "\n" + elements + ",")
        .append(piece.wallNode(0, vertex, -1) + "\n*SPRING, ELSET=" + set + "\n1\n")
        .append(String.format(Locale.ROOT, "%.9e%n", stiffness));
  }

  /** The nodes on the bones. */
  public List<Bone> bones() {
    return bones;
  }

  /**
   * Turns the distal bone to some angles, one after the other.
   *
   * @param angles rad, rising
   * @return by angle, what each of {@link #bones} is held with (N)
   */
  public List<Map<Integer, Vector3D>> turn(double[] angles, Path directory)
      throws IOException, InterruptedException {
    Files.writeString(directory.resolve("contact.inp"), write(angles));
    ProcessBuilder builder = new ProcessBuilder("ccx", "contact");
    builder.environment().put("OMP_NUM_THREADS", "2");
    Process process =
        builder
            .directory(directory.toFile())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log").toFile())
            .start();
    if (!process.waitFor(TIME_LIMIT, TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("ccx failed: " + directory.resolve("log"));
    }
    return read(Files.readAllLines(directory.resolve("contact.dat")));
  }

  private static List<Map<Integer, Vector3D>> read(List<String> lines) {
    List<Map<Integer, Vector3D>> steps = new ArrayList<>();
    for (String line : lines) {
      if (line.contains("forces")) {
        steps.add(new HashMap<>());
      }
      String[] w = line.trim().split("\\s+");
      if (w.length == 4 && w[0].matches("\\d+")) {
        steps
            .get(steps.size() - 1)
            .put(
                Integer.parseInt(w[0]),
                Vector3D.of(
                    Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3])));
      }
    }
    return steps;
  }

  private String write(double[] angles) {
    StringBuilder text = new StringBuilder("*NODE, NSET=ALL\n");
    piece.places().forEach((id, p) -> node(text, id, p.add(raised)));
    layer.forEach((id, p) -> node(text, id, p));
    text.append("*ELEMENT, TYPE=C3D15, ELSET=TROUGH\n").append(piece.elements());
    text.append("*ELEMENT, TYPE=C3D8, ELSET=TISSUE\n").append(bricks).append(grips);
    Isotropic material = shell.model().material();
    text.append("*MATERIAL, NAME=HARD\n*ELASTIC\n");
    text.append(material.modulus() + "," + material.poisson() + "\n");
    text.append("*SOLID SECTION, ELSET=TROUGH, MATERIAL=HARD\n");
    text.append("*MATERIAL, NAME=SOFT\n*ELASTIC\n" + modulus + ",0\n");
    text.append("*SOLID SECTION, ELSET=TISSUE, MATERIAL=SOFT\n");
    text.append("*SURFACE, NAME=INSIDE\n");
    for (int t = 1; t <= shell.trough().innerTriangles(); t++) {
      text.append(t).append(",S1\n");
    }
    text.append("*SURFACE, NAME=SKIN\n").append(outside);
    text.append("*SURFACE INTERACTION, NAME=TOUCH\n");
    text.append("*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR\n" + CONTACT + "\n");
    text.append("*CONTACT PAIR, INTERACTION=TOUCH, TYPE=SURFACE TO SURFACE\nSKIN,INSIDE\n");
    text.append("*NSET, NSET=BONE\n");
    bones.forEach(bone -> text.append(bone.id()).append(",\n"));
    Vector3D centre = skin.centre(skin.pipAxis());
    for (int k = 0; k < angles.length; k++) {
      text.append("*STEP, INC=200\n*STATIC\n" + (k == 0 ? "0.2" : "1") + ",1,1e-5,1\n*BOUNDARY\n");
      for (Bone bone : bones) {
        Vector3D moved = bone.distal() ? turned(centre, bone.place(), angles[k]) : Vector3D.ZERO;
        double[] u = moved.toArray();
        for (int axis = 0; axis < 3; axis++) {
          text.append(
              String.format(
                  Locale.ROOT, "%d,%d,%d,%.9e%n", bone.id(), axis + 1, axis + 1, u[axis]));
        }
      }
      if (k == 0) {
        text.append("*CLOAD\n");
        piece
            .loads()
            .forEach(
                (id, f) -> {
                  double[] parts = f.toArray();
                  for (int axis = 0; axis < 3; axis++) {
                    text.append(
                        String.format(Locale.ROOT, "%d,%d,%.9e%n", id, axis + 1, parts[axis]));
                  }
                });
      }
      text.append("*NODE PRINT, NSET=BONE, FREQUENCY=999\nRF\n*END STEP\n");
    }
    return text.toString();
  }

  private static void node(StringBuilder text, int id, Vector3D p) {
    text.append(
        String.format(Locale.ROOT, "%d,%.9e,%.9e,%.9e%n", id, p.getX(), p.getY(), p.getZ()));
  }

  private static Vector3D turned(Vector3D centre, Vector3D at, double angle) {
    Vector3D arm = centre.vectorTo(at);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return Vector3D.of(
        (cos - 1) * arm.getX() + sin * arm.getZ(), 0, (cos - 1) * arm.getZ() - sin * arm.getX());
  }
}
