package org.midlateral.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.measurement.Orders;

/**
 * Each sample's report against the one kept for it: figures within what a change of the mesh may
 * move them by, words exactly. What the kept report does not hold is not compared.
 */
class GoldenReportTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");

  /** Writes the kept reports anew, after a change that is meant to move them. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createDirectories(Path.of(arguments[1]));
    try (var samples = Files.newDirectoryStream(Path.of(arguments[0]), "*.yaml")) {
      for (Path sample : samples) {
        ObjectNode report = report(sample);
        ObjectNode kept = JSON.createObjectNode();
        kept.set("reference", report.get("reference"));
        kept.set("ok", report.get("ok"));
        kept.set("levels", report.get("levels"));
        kept.putObject("parts").set("trough", report.at("/parts/trough"));
        kept.putObject("clearance").set("trough", report.at("/clearance/trough"));
        Files.writeString(
            folder.resolve(golden(sample)),
            JSON.writerWithDefaultPrettyPrinter().writeValueAsString(kept) + "\n");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.SamplesTest#samples")
  void figuresStayWhatTheyWere(Path sample) throws Exception {
    compare("", JSON.readTree(GOLDEN.resolve(golden(sample)).toFile()), report(sample));
  }

  private static String golden(Path sample) {
    return sample.getFileName().toString().replace(".yaml", ".json");
  }

  private static ObjectNode report(Path sample) throws IOException {
    Orders.Result read = Orders.read(sample, List.of());
    Report report =
        Product.make(read.order(), read.cautions())
            .report(org.midlateral.document.SolidFormat.USUAL, Optional.empty());
    return (ObjectNode) JSON.readTree(report.json());
  }

  private static void compare(String path, JsonNode kept, JsonNode found) {
    assertThat(found).as(path).isNotNull();
    if (kept.isObject()) {
      kept.fieldNames().forEachRemaining(n -> compare(path + "/" + n, kept.get(n), found.get(n)));
    } else if (kept.isArray()) {
      assertThat(found.size()).as(path).isEqualTo(kept.size());
      for (int i = 0; i < kept.size(); i++) {
        compare(path + "/" + i, kept.get(i), found.get(i));
      }
    } else if (kept.isNumber()) {
      double value = kept.doubleValue();
      assertThat(found.doubleValue()).as(path).isCloseTo(value, within(tolerance(path, value)));
    } else {
      assertThat(found).as(path).isEqualTo(kept);
    }
  }

  /** A third of the triangles, 0.5 % of volume and area, 0.05 mm; what is exact, exactly. */
  private static double tolerance(String path, double value) {
    String name = path.replaceAll("/\\d+$", "").replaceAll(".*/", "");
    return switch (name) {
      case "triangles", "vertices" -> value / 3;
      case "volume", "mass", "area" -> 5e-3 * value;
      case "minAngle" -> 15;
      case "chordError" -> 0.01;
      case "min", "max", "mean", "minWall", "atReliefCentre" -> 0.05;
      case "shells", "holes" -> 0;
      default -> 1e-5;
    };
  }
}
