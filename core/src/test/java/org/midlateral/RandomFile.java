package org.midlateral;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.ValueKind;

/**
 * A measurement file drawn from a row of numbers between 0 and 1: measurements in the proportions
 * of fingers, and every key of the design, each at its default, in its usual range, or now and then
 * anywhere in the range that is not refused. A row of zeros is a plain order.
 */
public final class RandomFile {
  /** How many numbers a file is drawn from. */
  public static final int DRAWS = 160;

  private static final List<String> SECTIONS =
      List.of("trough", "relief", "dorsal-shell", "closure", "material");

  /**
   * Drawn after all others, so that a given row of numbers keeps the design it had without them.
   */
  private static final List<String> LAST =
      List.of("relief.sore", "room.swelling", "print.proximal");

  /** Share of the keys that are left at their default. */
  private static final double AT_DEFAULT = 0.5;

  /** Share of the keys that stay in the usual range. */
  private static final double USUAL = 0.9;

  private final double[] draws;
  private final double edgeLength;
  private final List<String> entries = new ArrayList<>();
  private int used;
  private double pip;

  private RandomFile(double[] draws, double edgeLength) {
    this.draws = draws;
    this.edgeLength = edgeLength;
  }

  /**
   * The file as KEY=VALUE entries.
   *
   * @param draws {@value #DRAWS} numbers between 0 and 1
   * @param edgeLength of the meshes' triangles (mm)
   */
  public static List<String> entries(double[] draws, double edgeLength) {
    RandomFile file = new RandomFile(draws, edgeLength);
    file.measure();
    file.design();
    return List.copyOf(file.entries);
  }

  private void measure() {
    put("reference", "random");
    put("hand", pick(List.of("right", "left")));
    put("digit", pick(List.of("ring", "index", "middle", "little")));
    pip = between(60, 46, 75);
    double proximal = pip * between(0.96, 0.88, 1.06);
    double middle = pip * between(0.87, 0.8, 0.95);
    double tip = middle * between(0.88, 0.8, 0.97);
    put("circumference.pip", pip);
    put("circumference.proximal-phalanx", proximal);
    put("circumference.middle-phalanx", middle);
    put("circumference.tip", tip);
    if (draw() > 0.7) {
      put("circumference.dip", middle * between(0.95, 0.9, 1.03));
    }
    // A finger's lengths go with its girth.
    double size = pip / 60;
    put("length.palmar-crease-to-web", size * between(20, 15, 26));
    put("length.web-to-pip", size * between(23, 17, 30));
    put("length.pip-to-dip", size * between(22, 16, 28));
    put("length.dip-to-tip", size * between(25, 22, 30));
    if (draw() > 0.6) {
      // Ellipses from 0.75 to 1.05 as deep as wide: C = pi w (1 + q) / 2, nearly.
      put("width.pip", pip * 2 / (Math.PI * (1 + between(0.88, 0.75, 1.05))));
    }
    if (draw() > 0.7) {
      put("width.proximal-phalanx", proximal * 2 / (Math.PI * (1 + between(0.9, 0.78, 1.05))));
    }
    if (draw() > 0.8) {
      put("width.tip", tip * 2 / (Math.PI * (1 + between(0.8, 0.65, 0.95))));
    }
    if (draw() > 0.6) {
      put("angle.pip-extension-deficit", between(0, 0, 45));
    }
    if (draw() > 0.8) {
      put("angle.dip-flexion", between(0, 0, 25));
    }
  }

  private void design() {
    for (InputKey key : KeyTable.standard().keys()) {
      String section = key.path().split("\\.", -1)[0];
      boolean one = !key.isOfItem() && key.kind() != ValueKind.LIST;
      if (SECTIONS.contains(section) && one && !LAST.contains(key.path())) {
        design(key);
      }
    }
    put("print.process", pick(List.of("powder", "filament", "resin")));
    put("print.edge-length", edgeLength);
    List<String> bubbles = new ArrayList<>();
    for (double more = draw(); more > 0.7 && bubbles.size() < 3; more = draw()) {
      double station = between(20, -10, 60);
      double girth = between(0, -16, 16);
      // The third lies over the dorsum.
      boolean dorsal = bubbles.size() == 2;
      bubbles.add(
          String.format(
              Locale.ROOT,
              "{station: %.3f, girth: %.3f, height: %.3f, length: %.3f, width: %.3f}",
              station,
              dorsal ? girth - Math.copySign(0.42 * pip, girth) : girth,
              between(0.5, 0.1, 1.5),
              between(8, 4, 14),
              between(8, 4, 12)));
    }
    entries.add("relief.bubbles=[" + String.join(", ", bubbles) + "]");
    LAST.forEach(path -> design(KeyTable.standard().find(path).orElseThrow()));
  }

  private void design(InputKey key) {
    double turn = draw();
    double where = draw();
    if (turn < AT_DEFAULT) {
      return;
    }
    if (key.kind() == ValueKind.CHOICE) {
      put(key.path(), key.choices().get((int) (where * 0.999 * key.choices().size())));
    } else if (key.kind() == ValueKind.YES_NO) {
      put(key.path(), where < 0.5 ? "yes" : "no");
    } else {
      AllowedRange refused = key.refused().orElseThrow();
      AllowedRange usual = key.usual().orElse(refused);
      AllowedRange range = turn < AT_DEFAULT + (1 - AT_DEFAULT) * USUAL ? usual : refused;
      double value = range.low() + where * (range.high() - range.low());
      put(key.path(), key.kind() == ValueKind.COUNT ? Math.rint(value) : value);
    }
  }

  private double draw() {
    return draws[used++ % draws.length];
  }

  /** From a plain value at 0 over all of a range: low to high, beginning at the plain value. */
  private double between(double plain, double low, double high) {
    double share = draw();
    double at = plain + share * (high - low);
    return at <= high ? at : at - (high - low);
  }

  private String pick(List<String> words) {
    return words.get((int) (draw() * 0.999 * words.size()));
  }

  private void put(String key, double value) {
    put(key, String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", ""));
  }

  private void put(String key, String value) {
    entries.add(key + "=" + value);
  }
}
