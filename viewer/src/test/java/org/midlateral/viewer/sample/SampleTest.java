package org.midlateral.viewer.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SampleTest {
  @Test
  void everySampleOfTheProjectIsOffered() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "samples"))) {
      assertThat(Stream.of(Sample.values()).map(Sample::file))
          .containsExactlyInAnyOrderElementsOf(
              files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".yaml")).toList());
    }
  }
}
