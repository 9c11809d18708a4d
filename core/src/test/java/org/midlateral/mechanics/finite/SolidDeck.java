package org.midlateral.mechanics.finite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The same shell as solid wedges of 15 nodes, one through the wall, written for CalculiX (Debian
 * package calculix-ccx) and read back. Knows nothing of the shell element.
 */
final class SolidDeck {
  private final ShellModel model;
  private final IntFunction<Vector3D> normal;
  private final Map<Long, Integer> edges = new HashMap<>();
  private final Map<Integer, Vector3D> loads = new HashMap<>();
  private final StringBuilder text = new StringBuilder();

  /**
   * @param model the mid-surface, its wall and material
   * @param normal the surface's unit normal at a node, toward the front
   */
  SolidDeck(ShellModel model, IntFunction<Vector3D> normal) {
    this.model = model;
    this.normal = normal;
    for (int t = 0; t < model.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        edges.computeIfAbsent(
            key(model.corner(t, c), model.corner(t, (c + 1) % 3)), k -> edges.size());
      }
    }
  }

  private static long key(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private enum Layer {
    BACK,
    MIDDLE,
    FRONT
  }

  private static int id(int node, Layer layer) {
    return 3 * node + layer.ordinal() + 1;
  }

  private int edgeId(int a, int b, boolean front) {
    return 3 * model.nodeCount() + 2 * edges.get(key(a, b)) + (front ? 2 : 1);
  }

  /** Even traction on the back face of some triangles: on a six-node face the edges carry it. */
  void loadBack(int[] triangles, Vector3D total) {
    double area = 0;
    for (int t : triangles) {
      area += model.area(t);
    }
    for (int t : triangles) {
      for (int c = 0; c < 3; c++) {
        add(
            edgeId(model.corner(t, c), model.corner(t, (c + 1) % 3), false),
            total.multiply(model.area(t) / area / 3));
      }
    }
  }

  /** Even traction on the narrow face along some edges: an eight-node face. */
  void loadRim(int[] pairs, Vector3D total) {
    double length = 0;
    for (int e = 0; e < pairs.length; e += 2) {
      length += model.node(pairs[e]).distance(model.node(pairs[e + 1]));
    }
    for (int e = 0; e < pairs.length; e += 2) {
      int a = pairs[e];
      int b = pairs[e + 1];
      Vector3D share = total.multiply(model.node(a).distance(model.node(b)) / length);
      for (int node : new int[] {a, b}) {
        add(id(node, Layer.BACK), share.multiply(-1 / 12.0));
        add(id(node, Layer.FRONT), share.multiply(-1 / 12.0));
        add(id(node, Layer.MIDDLE), share.multiply(1 / 3.0));
      }
      add(edgeId(a, b, false), share.multiply(1 / 3.0));
      add(edgeId(a, b, true), share.multiply(1 / 3.0));
    }
  }

  private void add(int id, Vector3D force) {
    loads.merge(id, force, Vector3D::add);
  }

  /** Runs the solver and gives the displacement of each node of the mid-surface. */
  Vector3D[] solve(Path directory, List<Constraint> held) throws IOException, InterruptedException {
    Files.writeString(directory.resolve("shell.inp"), write(held));
    Process process =
        new ProcessBuilder("ccx", "shell")
            .directory(directory.toFile())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log").toFile())
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("ccx failed: " + Files.readString(directory.resolve("log")));
    }
    return read(directory.resolve("shell.dat"));
  }

  private Vector3D[] read(Path file) throws IOException {
    Vector3D[] moved = new Vector3D[model.nodeCount()];
    for (String line : Files.readAllLines(file)) {
      String[] w = line.trim().split("\\s+");
      if (w.length == 4 && w[0].matches("\\d+")) {
        moved[(Integer.parseInt(w[0]) - 1) / 3] =
            Vector3D.of(
                Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3]));
      }
    }
    return moved;
  }

  private String write(List<Constraint> held) {
    text.append("*NODE, NSET=ALL\n");
    for (int i = 0; i < model.nodeCount(); i++) {
      writeNodes(i);
    }
    edges.forEach((k, e) -> writeEdge((int) (k >> 32), (int) (long) k));
    text.append("*ELEMENT, TYPE=C3D15, ELSET=SHELL\n");
    for (int t = 0; t < model.triangleCount(); t++) {
      writeWedge(t);
    }
    text.append("*MATERIAL, NAME=M\n*ELASTIC\n");
    text.append(model.material().modulus() + "," + model.material().poisson() + "\n");
    text.append("*SOLID SECTION, ELSET=SHELL, MATERIAL=M\n*BOUNDARY\n");
    for (Constraint c : held) {
      int axis = c.freedom().ordinal() + 1;
      text.append(id(c.node(), Layer.MIDDLE) + "," + axis + "," + axis + "\n");
    }
    text.append("*NSET, NSET=MIDDLE, GENERATE\n2," + (3 * model.nodeCount() - 1) + ",3\n");
    text.append("*STEP\n*STATIC\n*CLOAD\n");
    loads.forEach(this::writeForce);
    text.append("*NODE PRINT, NSET=MIDDLE\nU\n*END STEP\n");
    return text.toString();
  }

  private void writeNodes(int node) {
    Vector3D place = model.node(node);
    Vector3D half = normal.apply(node).multiply(model.thickness(node) / 2);
    writeNode(id(node, Layer.BACK), place.subtract(half));
    writeNode(id(node, Layer.MIDDLE), place);
    writeNode(id(node, Layer.FRONT), place.add(half));
  }

  /** The middle of an edge lies on the cubic that is square to both ends' normals. */
  private void writeEdge(int a, int b) {
    Vector3D pa = model.node(a);
    Vector3D pb = model.node(b);
    Vector3D chord = pa.vectorTo(pb);
    Vector3D na = normal.apply(a);
    Vector3D nb = normal.apply(b);
    Vector3D bend = nb.multiply(chord.dot(nb)).subtract(na.multiply(chord.dot(na)));
    Vector3D middle = pa.add(pb).multiply(0.5).add(bend.multiply(1 / 8.0));
    Vector3D half = na.add(nb).normalize().multiply((model.thickness(a) + model.thickness(b)) / 4);
    writeNode(edgeId(a, b, false), middle.subtract(half));
    writeNode(edgeId(a, b, true), middle.add(half));
  }

  private void writeWedge(int t) {
    int[] n = {model.corner(t, 0), model.corner(t, 1), model.corner(t, 2)};
    text.append(t + 1);
    for (Layer layer : new Layer[] {Layer.BACK, Layer.FRONT}) {
      for (int node : n) {
        text.append(",").append(id(node, layer));
      }
    }
    for (boolean front : new boolean[] {false, true}) {
      for (int c = 0; c < 3; c++) {
        text.append(",").append(edgeId(n[c], n[(c + 1) % 3], front));
      }
    }
    text.append(",\n");
    text.append(id(n[0], Layer.MIDDLE)).append(",").append(id(n[1], Layer.MIDDLE));
    text.append(",").append(id(n[2], Layer.MIDDLE)).append("\n");
  }

  /** Twelve decimals: the program reads no more than 20 characters of a number. */
  private void writeNode(int id, Vector3D p) {
    text.append(
        String.format(Locale.ROOT, "%d,%.12e,%.12e,%.12e%n", id, p.getX(), p.getY(), p.getZ()));
  }

  private void writeForce(int id, Vector3D force) {
    double[] f = force.toArray();
    for (int axis = 0; axis < 3; axis++) {
      if (f[axis] != 0) {
        text.append(String.format(Locale.ROOT, "%d,%d,%.12e%n", id, axis + 1, f[axis]));
      }
    }
  }
}
