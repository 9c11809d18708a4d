package org.midlateral;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A measurement file of both pieces drawn from a seed: the random fingers of {@link RandomFile} and
 * the choices that a two-piece shell is made with, wide enough that some must be refused.
 */
public final class TwoPieceFile {
  private final SplittableRandom random;
  private final List<String> entries = new ArrayList<>();

  private TwoPieceFile(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /**
   * The file as KEY=VALUE entries.
   *
   * @param seed of its numbers
   * @param edgeLength of the meshes' triangles (mm)
   */
  public static List<String> entries(long seed, double edgeLength) {
    TwoPieceFile file = new TwoPieceFile(seed);
    file.finger(edgeLength);
    file.trough();
    file.relief();
    file.shell();
    if (file.random.nextDouble() < 0.25) {
      file.entries.add("print.label=yes");
    }
    return List.copyOf(file.entries);
  }

  private void finger(double edgeLength) {
    double[] draws = random.doubles(RandomFile.DRAWS).toArray();
    for (String entry : RandomFile.entries(draws, edgeLength)) {
      if (entry.matches("(hand|digit|circumference|length|width|print)\\b.*")) {
        entries.add(entry);
      }
    }
    entries.add("reference=r" + random.nextInt(10, 100));
    if (random.nextBoolean()) {
      put("angle.pip-extension-deficit", 0, 40);
    }
  }

  private void trough() {
    put("trough.wrap", 0.3, 0.55);
    put("trough.wall", 1.2, 2.2);
    put("trough.clearance", 0, 0.6);
    if (random.nextDouble() < 0.3) {
      put("trough.liner", 0.5, 3);
    }
    if (random.nextDouble() < 0.25) {
      entries.add("trough.distal=covered");
    }
    vents("trough");
  }

  private void relief() {
    entries.add("relief.make=" + List.of("auto", "yes", "no").get(random.nextInt(3)));
    put("relief.height", 0.4, 1.2);
    if (random.nextDouble() < 0.3) {
      entries.add(
          String.format(
              Locale.ROOT,
              "relief.bubbles=[{station: %.2f, girth: %.2f, height: %.2f}]",
              random.nextDouble(5, 40),
              random.nextDouble(-15, 15),
              random.nextDouble(0.3, 1)));
    }
  }

  private void shell() {
    put("dorsal-shell.overlap", 2, 5);
    put("dorsal-shell.fit-gap", 0.15, 0.5);
    put("dorsal-shell.clearance", 0.2, 1);
    if (random.nextBoolean()) {
      put("dorsal-shell.length", 16, 36);
    }
    if (random.nextDouble() < 0.3) {
      put("dorsal-shell.wall", 1.2, 2);
    }
    vents("dorsal-shell");
  }

  private void vents(String piece) {
    if (random.nextDouble() < 0.25) {
      put(piece + ".vents.diameter", 2, 3.5);
      put(piece + ".vents.spacing", 6, 10);
    }
  }

  private void put(String key, double low, double high) {
    entries.add(String.format(Locale.ROOT, "%s=%.3f", key, random.nextDouble(low, high)));
  }
}
