package org.midlateral.mechanics.held;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.mechanics.element.Isotropic;
import org.midlateral.mechanics.finite.ClippedTriangle;
import org.midlateral.mechanics.finite.Constraint;
import org.midlateral.mechanics.finite.RigidMotion;
import org.midlateral.mechanics.finite.SurfacePoint;

/**
 * The real pieces as solids of 15 nodes, one wedge through the wall over each triangle of the
 * mid-surface, and round the edge one wedge for each of its sides whose section is the rim's own
 * half disc. The dorsal shell is tied, face on face, to the trough. Written for CalculiX (Debian
 * package calculix-ccx) and read back. Knows nothing of the shell element, its strip at the rim or
 * its ties.
 */
final class PieceDeck {
  private final FingerShell shell;
  private final Map<String, Integer> ids = new LinkedHashMap<>();
  private final Map<Integer, Vector3D> places = new LinkedHashMap<>();
  private final Map<Integer, Vector3D> loads = new HashMap<>();
  private final StringBuilder elements = new StringBuilder();
  private final StringBuilder below = new StringBuilder();
  private final StringBuilder above = new StringBuilder();
  private int elementCount;

  PieceDeck(FingerShell shell) {
    this.shell = shell;
    for (int k = 0; k < (shell.closed() ? 2 : 1); k++) {
      ShellLayer layer = shell.layer(k);
      int wallTriangles = layer.solid.innerTriangles();
      for (int t = 0; t < wallTriangles; t++) {
        wallWedge(k, layer, t);
      }
      for (int e = 0; e < layer.crest.length; e += 2) {
        rimWedge(k, layer.crest[e] - layer.inner, layer.crest[e + 1] - layer.inner);
      }
    }
  }

  /** The number of a node, placed where it is first asked for. */
  private int id(String name, Vector3D place) {
    return ids.computeIfAbsent(
        name,
        n -> {
          places.put(ids.size() + 1, place);
          return ids.size() + 1;
        });
  }

  /** Height -1 is the inner, 0 the middle, 1 the outer surface. */
  int wallNode(int k, int i, int height) {
    ShellLayer layer = shell.layer(k);
    Vector3D place = layer.node(i).add(layer.normal(i).multiply(height * layer.wall[i] / 2));
    return id(k + " " + height + " " + i, place);
  }

  /** The middle of an edge, on the cubic that is square to both ends' normals. */
  private int wallMiddle(int k, int i, int j, int height) {
    ShellLayer layer = shell.layer(k);
    Vector3D na = layer.normal(i);
    Vector3D nb = layer.normal(j);
    Vector3D half = na.add(nb).normalize().multiply((layer.wall[i] + layer.wall[j]) / 4);
    Vector3D place = middle(layer, i, j).add(half.multiply(height));
    return id(k + " " + height + " " + Math.min(i, j) + "-" + Math.max(i, j), place);
  }

  private static Vector3D middle(ShellLayer layer, int i, int j) {
    Vector3D a = layer.node(i);
    Vector3D b = layer.node(j);
    Vector3D chord = a.vectorTo(b);
    Vector3D na = layer.normal(i);
    Vector3D nb = layer.normal(j);
    Vector3D bend = nb.multiply(chord.dot(nb)).subtract(na.multiply(chord.dot(na)));
    return a.add(b).multiply(0.5).add(bend.multiply(1 / 8.0));
  }

  private static Vector3D out(ShellLayer layer, int i) {
    return layer.node(i).vectorTo(layer.node(layer.inner + i));
  }

  int crest(int k, int i) {
    ShellLayer layer = shell.layer(k);
    return id(k + " crest " + i, layer.node(layer.inner + i));
  }

  private int crestMiddle(int k, int i, int j) {
    ShellLayer layer = shell.layer(k);
    Vector3D out = out(layer, i).add(out(layer, j)).multiply(0.5);
    return id(k + " crest " + Math.min(i, j) + "-" + Math.max(i, j), middle(layer, i, j).add(out));
  }

  /** The middle of the quarter round between the inner (-1) or outer (1) edge and the crest. */
  private int quarter(int k, int i, int height) {
    ShellLayer layer = shell.layer(k);
    Vector3D up = layer.normal(i).multiply(height * layer.wall[i] / 2);
    Vector3D place = layer.node(i).add(up.add(out(layer, i)).multiply(Math.sqrt(0.5)));
    return id(k + " quarter " + height + " " + i, place);
  }

  private void wallWedge(int k, ShellLayer layer, int t) {
    int[] c = {layer.corners[3 * t], layer.corners[3 * t + 1], layer.corners[3 * t + 2]};
    int[] nodes = new int[15];
    for (int h = 0; h < 2; h++) {
      for (int i = 0; i < 3; i++) {
        nodes[3 * h + i] = wallNode(k, c[i], 2 * h - 1);
        nodes[6 + 3 * h + i] = wallMiddle(k, c[i], c[(i + 1) % 3], 2 * h - 1);
        nodes[12 + i] = wallNode(k, c[i], 0);
      }
    }
    element(nodes);
    (k == 0 ? above : below).append(elementCount).append(k == 0 ? ",S2\n" : ",S1\n");
  }

  private void rimWedge(int k, int a, int b) {
    int[] nodes = new int[15];
    int[] ends = {a, b};
    for (int e = 0; e < 2; e++) {
      int i = ends[e];
      nodes[3 * e] = wallNode(k, i, -1);
      nodes[3 * e + 1] = wallNode(k, i, 1);
      nodes[3 * e + 2] = crest(k, i);
      nodes[6 + 3 * e] = wallNode(k, i, 0);
      nodes[6 + 3 * e + 1] = quarter(k, i, 1);
      nodes[6 + 3 * e + 2] = quarter(k, i, -1);
    }
    nodes[12] = wallMiddle(k, a, b, -1);
    nodes[13] = wallMiddle(k, a, b, 1);
    nodes[14] = crestMiddle(k, a, b);
    element(nodes);
  }

  private void element(int[] nodes) {
    elements.append(++elementCount);
    for (int i = 0; i < 15; i++) {
      elements.append(i == 10 ? ",\n" : ",").append(nodes[i]);
    }
    elements.append("\n");
  }

  /** An even traction on the inside of parts of a piece's triangles. */
  void press(int k, List<ClippedTriangle> parts, Vector3D total) {
    ShellLayer layer = shell.layer(k);
    int before = k == 0 ? 0 : shell.layer(0).corners.length / 3;
    double area = 0;
    for (ClippedTriangle part : parts) {
      for (double share : part.shares()) {
        area += share * shell.model().area(part.triangle());
      }
    }
    for (ClippedTriangle part : parts) {
      int t = part.triangle() - before;
      Vector3D pull = total.multiply(shell.model().area(part.triangle()) / area);
      if (t < layer.solid.innerTriangles()) {
        pressWall(k, layer, t, part.polygon(), pull);
      } else {
        pressStrip(k, layer, t, part.shares(), pull);
      }
    }
  }

  private void pressWall(int k, ShellLayer layer, int t, List<double[]> polygon, Vector3D pull) {
    for (int i = 1; i + 1 < polygon.size(); i++) {
      double[][] fan = {polygon.get(0), polygon.get(i), polygon.get(i + 1)};
      double area =
          Math.abs(
              (fan[1][1] - fan[0][1]) * (fan[2][2] - fan[0][2])
                  - (fan[2][1] - fan[0][1]) * (fan[1][2] - fan[0][2]));
      for (int m = 0; m < 3; m++) {
        double[] w = new double[3];
        for (int c = 0; c < 3; c++) {
          w[c] = (fan[m][c] + fan[(m + 1) % 3][c]) / 2;
        }
        for (int c = 0; c < 3; c++) {
          int a = layer.corners[3 * t + c];
          int b = layer.corners[3 * t + (c + 1) % 3];
          add(wallNode(k, a, -1), pull.multiply(area / 3 * w[c] * (2 * w[c] - 1)));
          add(wallMiddle(k, a, b, -1), pull.multiply(area / 3 * 4 * w[c] * w[(c + 1) % 3]));
        }
      }
    }
  }

  /** What the shell's strip takes, on the inner edge and the crest beside it. */
  private void pressStrip(int k, ShellLayer layer, int t, double[] shares, Vector3D pull) {
    for (int c = 0; c < 3; c++) {
      int i = layer.corners[3 * t + c];
      int node = i < layer.inner ? wallNode(k, i, -1) : crest(k, i - layer.inner);
      add(node, pull.multiply(shares[c]));
    }
  }

  /** An even pull round the rim: where its resultant lies, on the crest and both edges. */
  void pullRim(List<RimSegment> parts, Vector3D total) {
    double length = parts.stream().mapToDouble(p -> p.length(shell.model())).sum();
    for (RimSegment p : parts) {
      Vector3D pull = total.multiply(p.length(shell.model()) / length);
      double[] at = {p.from(), (p.from() + p.to()) / 2, p.to()};
      double[] simpson = {1 / 6.0, 4 / 6.0, 1 / 6.0};
      for (int s = 0; s < 3; s++) {
        double x = at[s];
        double[] n = {(1 - x) * (1 - 2 * x), x * (2 * x - 1), 4 * x * (1 - x)};
        Vector3D here = pull.multiply(simpson[s]);
        Vector3D crest = here.multiply(2 / Math.PI);
        add(crest(0, p.a()), crest.multiply(n[0]));
        add(crest(0, p.b()), crest.multiply(n[1]));
        add(crestMiddle(0, p.a(), p.b()), crest.multiply(n[2]));
        Vector3D edge = here.multiply((1 - 2 / Math.PI) / 2);
        for (int height = -1; height <= 1; height += 2) {
          add(wallNode(0, p.a(), height), edge.multiply(n[0]));
          add(wallNode(0, p.b(), height), edge.multiply(n[1]));
          add(wallMiddle(0, p.a(), p.b(), height), edge.multiply(n[2]));
        }
      }
    }
  }

  void add(int id, Vector3D force) {
    loads.merge(id, force, Vector3D::add);
  }

  /** Nodes and where they are. */
  Map<Integer, Vector3D> places() {
    return places;
  }

  /** Forces on nodes. */
  Map<Integer, Vector3D> loads() {
    return loads;
  }

  /** The elements, those over the wall's triangles first, each with its inside as face S1. */
  String elements() {
    return elements.toString();
  }

  int elementCount() {
    return elementCount;
  }

  int unknowns() {
    return 3 * places.size();
  }

  /** Puts the load on, runs the solver and gives how each node of the mid-surface moves. */
  static SurfacePoint.Motion solve(FingerShell shell, BalancedLoad load, Path directory)
      throws IOException, InterruptedException {
    PieceDeck deck = new PieceDeck(shell);
    deck.press(0, load.proximalFloor, load.proximal);
    deck.press(0, load.distalFloor, load.distal);
    for (int side = 0; side < 2; side++) {
      if (shell.closed()) {
        deck.press(1, load.roof(side), load.closure[side]);
      } else {
        deck.pullRim(load.rim(side), load.closure[side]);
      }
    }
    Map<Integer, Vector3D> moved = deck.run(directory);
    return (node, arm) -> moved.get(deck.shellNode(node));
  }

  private int shellNode(int node) {
    int first = shell.layer(0).nodeCount();
    int k = node < first ? 0 : 1;
    int own = node - k * first;
    int inner = shell.layer(k).inner;
    return own < inner ? wallNode(k, own, 0) : crest(k, own - inner);
  }

  private Map<Integer, Vector3D> run(Path directory) throws IOException, InterruptedException {
    Files.writeString(directory.resolve("piece.inp"), write());
    Process process =
        new ProcessBuilder("ccx", "piece")
            .directory(directory.toFile())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log").toFile())
            .start();
    if (!process.waitFor(120, TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("ccx failed: " + Files.readString(directory.resolve("log")));
    }
    Map<Integer, Vector3D> moved = new HashMap<>();
    for (String line : Files.readAllLines(directory.resolve("piece.dat"))) {
      String[] w = line.trim().split("\\s+");
      if (w.length == 4 && w[0].matches("\\d+")) {
        moved.put(
            Integer.parseInt(w[0]),
            Vector3D.of(
                Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3])));
      }
    }
    return moved;
  }

  private String write() {
    StringBuilder text = new StringBuilder("*NODE, NSET=ALL\n");
    places.forEach(
        (id, p) ->
            text.append(
                String.format(
                    Locale.ROOT, "%d,%.12e,%.12e,%.12e%n", id, p.getX(), p.getY(), p.getZ())));
    text.append("*ELEMENT, TYPE=C3D15, ELSET=PIECES\n").append(elements);
    Isotropic material = shell.model().material();
    text.append("*MATERIAL, NAME=M\n*ELASTIC\n");
    text.append(material.modulus() + "," + material.poisson() + "\n");
    text.append("*SOLID SECTION, ELSET=PIECES, MATERIAL=M\n");
    if (shell.closed()) {
      text.append("*SURFACE, NAME=INSIDE\n").append(below);
      text.append("*SURFACE, NAME=OUTSIDE\n").append(above);
      text.append("*TIE, NAME=BOND, POSITION TOLERANCE=0.35, ADJUST=NO\nINSIDE,OUTSIDE\n");
    }
    text.append("*BOUNDARY\n");
    for (Constraint c : RigidMotion.held(shell.model())) {
      int axis = c.freedom().ordinal() + 1;
      text.append(shellNode(c.node()) + "," + axis + "," + axis + "\n");
    }
    text.append("*STEP\n*STATIC\n*CLOAD\n");
    loads.forEach(
        (id, f) -> {
          double[] parts = f.toArray();
          for (int axis = 0; axis < 3; axis++) {
            text.append(String.format(Locale.ROOT, "%d,%d,%.12e%n", id, axis + 1, parts[axis]));
          }
        });
    return text.append("*NODE PRINT, NSET=ALL\nU\n*END STEP\n").toString();
  }
}
