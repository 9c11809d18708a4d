package org.midlateral.mechanics.finite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published values: the finest mesh within 2 %, and the table of the documentation as computed. */
class PublishedCasesTest {
  private static final Path TABLE = Path.of("FINITE-ELEMENTS.md");

  static List<PublishedCase> cases() {
    return List.of(PublishedCase.all());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void convergesAndStandsInTheTable(PublishedCase published) throws Exception {
    double[] ratios = published.ratios();
    assertThat(ratios[ratios.length - 1]).as(published.name()).isCloseTo(1, within(0.02));
    assertThat(Files.readAllLines(TABLE)).contains(row(published, ratios));
  }

  private static String row(PublishedCase published, double[] ratios) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < ratios.length; i++) {
      text.append(i == 0 ? "" : ", ");
      text.append(String.format(Locale.ROOT, "%d: %.3f", published.meshes()[i], ratios[i]));
    }
    return "| %s | %s | %s | %s |"
        .formatted(published.name(), published.published(), text, published.source());
  }

  /**
   * The table anew: {@code mvn -pl core -am test-compile}, then run this on the test class path.
   */
  public static void main(String[] args) throws MechanismException {
    for (PublishedCase one : cases()) {
      System.out.println(row(one, one.ratios()));
    }
  }
}
