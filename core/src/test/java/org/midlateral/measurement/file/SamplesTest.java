package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Order;

class SamplesTest {

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "samples"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void thereAreFiveAtLeast() throws IOException {
    assertThat(samples()).hasSizeGreaterThanOrEqualTo(5);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void isInOrderWithoutCautions(Path sample) {
    Orders.Result result = Orders.read(sample, List.of());

    assertThat(result.errors()).isEmpty();
    assertThat(result.cautions()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void saysThatItIsInvented(Path sample) throws IOException {
    assertThat(Files.readString(sample)).startsWith("# Invented").contains("No real person");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void comesBackEqualFromItsText(Path sample) {
    Order order = Orders.read(sample, List.of()).order();

    Orders.Result again = Orders.parse(OrderText.write(order), "again.yaml", List.of());

    assertThat(again.errors()).isEmpty();
    assertThat(again.order()).isEqualTo(order);
  }
}
