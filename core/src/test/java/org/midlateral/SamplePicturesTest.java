package org.midlateral;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pictures beside the samples are what the program draws today. */
class SamplePicturesTest {
  private static final Path SAMPLES = Path.of("..", "samples");

  /** Mean difference of a channel that rounding may leave, of 255. */
  private static final double ALIKE = 0.5;

  /** Drawn by the viewer on a display, and looked at by its own tests. */
  private static final Set<String> OF_THE_VIEWER = Set.of("viewer.png");

  /** Drawn in every build; a long run draws all of them. */
  private static final Set<String> ALWAYS = Set.of("apart.png", "pattern.png");

  @Test
  @Tag(LongRun.TAG)
  void theyAreDrawnAnewAsTheyAreKept() throws Exception {
    Map<String, Callable<BufferedImage>> drawn = SamplePictures.all(SAMPLES);
    Path folder = SAMPLES.resolve("pictures");
    Set<String> kept = new TreeSet<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.png")) {
      files.forEach(file -> kept.add(file.getFileName().toString()));
    }
    kept.removeAll(OF_THE_VIEWER);
    assertThat(kept).isEqualTo(new TreeSet<>(drawn.keySet()));
    boolean all = LongRun.count(0, 1) > 0;
    for (String name : drawn.keySet()) {
      if (all || ALWAYS.contains(name)) {
        BufferedImage file = ImageIO.read(folder.resolve(name).toFile());
        assertThat(difference(file, drawn.get(name).call())).as(name).isLessThan(ALIKE);
      }
    }
  }

  /** Mean difference over pixels and channels; infinite where the sizes differ. */
  private static double difference(BufferedImage one, BufferedImage other) {
    if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        int a = one.getRGB(x, y);
        int b = other.getRGB(x, y);
        for (int shift = 0; shift < 24; shift += 8) {
          sum += Math.abs((a >> shift & 0xff) - (b >> shift & 0xff));
        }
      }
    }
    return sum / (3.0 * one.getWidth() * one.getHeight());
  }
}
