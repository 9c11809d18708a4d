package org.midlateral.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.StlFile;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.solid.Solid;

/**
 * How many of a population of invented fingers get both pieces, design by design.
 *
 * <pre>
 * mvn -q -pl core -am test-compile -Pbench -Dbench.class=org.midlateral.bench.Population \
 *     -Dbench="1500 1"
 * </pre>
 *
 * <p>Arguments: fingers a design (1500), the seed (1), then names of designs (all), then {@code
 * stl=FOLDER} to keep the accepted pieces' files for other checkers.
 */
public final class Population {
  private static final Map<String, List<String>> DESIGNS = new LinkedHashMap<>();

  static {
    DESIGNS.put("defaults", List.of());
    DESIGNS.put("wall-2.4", List.of("trough.wall=2.4"));
    DESIGNS.put("wall-3.2", List.of("trough.wall=3.2"));
    DESIGNS.put("liner-1.5", List.of("trough.liner=1.5"));
    DESIGNS.put("deficit-30", List.of("angle.pip-extension-deficit=30"));
    DESIGNS.put("covered", List.of("trough.distal=covered"));
    DESIGNS.put("label", List.of("print.label=yes"));
    DESIGNS.put("vents", List.of("trough.vents.diameter=3", "dorsal-shell.vents.diameter=3"));
    DESIGNS.put("swollen-little", List.of());
  }

  private final long seed;
  private final Path folder;

  private Population(long seed, Path folder) {
    this.seed = seed;
    this.folder = folder;
  }

  public static void main(String[] arguments) {
    List<String> words = new ArrayList<>();
    for (String argument : arguments) {
      words.addAll(List.of(argument.split(" ")));
    }
    int fingers = words.isEmpty() ? 1500 : Integer.parseInt(words.get(0));
    long seed = words.size() > 1 ? Long.parseLong(words.get(1)) : 1;
    Path folder = null;
    List<String> designs = new ArrayList<>();
    for (String word : words.subList(Math.min(2, words.size()), words.size())) {
      if (word.startsWith("stl=")) {
        folder = Path.of(word.substring(4));
      } else {
        designs.add(word);
      }
    }
    Population population = new Population(seed, folder);
    for (String design : designs.isEmpty() ? List.copyOf(DESIGNS.keySet()) : designs) {
      population.tell(design, fingers);
    }
  }

  private void tell(String design, int fingers) {
    Function<Random, InventedFinger> draw =
        design.equals("swollen-little") ? InventedFinger::swollenLittle : InventedFinger::any;
    Map<String, Integer> codes = new TreeMap<>();
    long start = System.nanoTime();
    int[] counts = new int[2];
    IntStream.range(Integer.getInteger("population.from", 0), fingers)
        .parallel()
        .forEach(
            i -> {
              InventedFinger finger =
                  draw.apply(new Random(seed * 1_000_003 + i)).with(DESIGNS.get(design));
              Orders.Result read = Orders.row(finger.entries(), "population", i, List.of());
              if (!read.ok()) {
                count(codes, counts, "input: " + read.errors().get(0).key(), false, null);
                return;
              }
              Product product;
              try {
                product = ProductRecipe.make(read.order(), read.cautions());
              } catch (RuntimeException e) {
                if (Boolean.getBoolean("population.told")) {
                  e.printStackTrace(System.out);
                }
                String told = design + " " + i + " " + e + " " + finger.entries();
                count(codes, counts, "defect", true, told);
                return;
              }
              if (product.ok()) {
                keep(design, i, product);
              }
              product.findings().stream()
                  .filter(f -> f.severity() == Finding.Severity.REFUSAL)
                  .findFirst()
                  .ifPresent(
                      f ->
                          count(
                              codes,
                              counts,
                              f.code(),
                              true,
                              design + " " + i + " " + f.text() + " " + finger.entries()));
            });
    System.out.printf(
        "%s: %d fingers, refused %d (%.2f %%), %.1f s, %s%n",
        design,
        fingers,
        counts[1],
        100.0 * counts[1] / fingers,
        (System.nanoTime() - start) / 1e9,
        codes);
  }

  private synchronized void count(
      Map<String, Integer> codes, int[] counts, String code, boolean refusal, String text) {
    codes.merge(code, 1, Integer::sum);
    counts[refusal ? 1 : 0]++;
    if (text != null && Boolean.getBoolean("population.told")) {
      System.out.println(text);
    }
  }

  private void keep(String design, int finger, Product product) {
    if (folder == null) {
      return;
    }
    for (Solid solid : product.orthosis().orElseThrow().solids()) {
      String name = design + "-" + finger + "-" + solid.piece().name();
      try (OutputStream out = Files.newOutputStream(folder.resolve(name + ".stl"))) {
        new StlFile(new NamedSolid(name, solid.mesh(), AffineTransformMatrix3D.identity()))
            .writeTo(out);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
  }
}
