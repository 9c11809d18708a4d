package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.document.bench.BenchBlocks;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.bench.BenchDrawings;
import org.midlateral.document.bench.SheetFigures;
import org.midlateral.document.drawing.PaperSize;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.rigidity.RigidityRecipe;

/**
 * Each sample's report against the one kept for it: figures within what a change of the mesh may
 * move them by, words exactly. What the kept report does not hold is not compared.
 */
class GoldenReportTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");

  /** One with a dorsal shell and a wrap, one with straps: their mechanics are kept as well. */
  private static final Set<String> WITH_MECHANICS =
      Set.of("bulbous-ring.yaml", "middle-inches.yaml");

  /** Writes the kept reports anew, after a change that is meant to move them. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createDirectories(Path.of(arguments[1]));
    try (var samples = Files.newDirectoryStream(Path.of(arguments[0]), "*.yaml")) {
      for (Path sample : samples) {
        ObjectNode kept = kept(report(sample));
        Files.writeString(
            folder.resolve(golden(sample)),
            JSON.writerWithDefaultPrettyPrinter().writeValueAsString(kept) + "\n");
      }
    }
  }

  private static ObjectNode kept(ObjectNode report) {
    ObjectNode kept = JSON.createObjectNode();
    for (String name :
        List.of(
            "reference",
            "caution",
            "ok",
            "levels",
            "parts",
            "clearance",
            "assembly",
            "joint",
            "rigidity",
            "support",
            "closure",
            "blank")) {
      if (report.has(name)) {
        kept.set(name, report.get(name));
      }
    }
    if (kept.has("joint")) {
      // Its figures stand below it, unrounded.
      ((ObjectNode) kept.get("joint")).remove("answer");
    }
    if (kept.has("rigidity")) {
      ((ObjectNode) kept.get("rigidity")).remove(List.of("stations", "materialCautions"));
      ((ObjectNode) kept.get("support")).remove("sensitivity");
      // The same strain on the other flank is as good an answer.
      kept.at("/support/finiteElements")
          .forEach(held -> ((ObjectNode) held).remove(List.of("strainStation", "strainGirth")));
    }
    return kept;
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void figuresStayWhatTheyWere(Path sample) throws Exception {
    compare("", JSON.readTree(GOLDEN.resolve(golden(sample)).toFile()), report(sample));
  }

  private static String golden(Path sample) {
    return sample.getFileName().toString().replace(".yaml", ".json");
  }

  private static ObjectNode report(Path sample) throws Exception {
    Orders.Result read = Orders.read(sample, List.of());
    Product made = ProductRecipe.make(read.order(), read.cautions());
    if (WITH_MECHANICS.contains(sample.getFileName().toString())) {
      made = withMechanics(made);
    }
    return (ObjectNode)
        JSON.readTree(ProductReport.of(made, SolidFormat.USUAL, Optional.empty()).json());
  }

  /** The mechanics without their bands, which are many times the work and not in the report. */
  private static Product withMechanics(Product made) throws DesignRefused {
    Orthosis o = made.orthosis().orElseThrow();
    BenchDocuments bench =
        BenchDrawings.of(o.order(), o.digit(), o.relief(), o.solids(), PaperSize.A4)
            .all(SheetFigures.NONE);
    Documents documents =
        new Documents(
            Optional.of(RigidityRecipe.of(o, List.of(0.35, 0.5))),
            BenchBlocks.of(bench),
            Map.of(),
            List.of());
    return made.withDocuments(documents);
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

  /** Of an angle in degrees, beside 5 % of everything that tells how the joint is held. */
  private static final double HELD = 0.02;

  /**
   * A third of the triangles, 0.5 % of volume and area, 0.05 mm; 1 % of a beam's figures and 2 % of
   * the finite elements', whose mesh may be laid otherwise; what is exact, exactly.
   */
  private static double tolerance(String path, double value) {
    String name = path.replaceAll("/\\d+$", "").replaceAll(".*/", "");
    double finite = path.contains("finiteElements") ? 2 : 1;
    if (path.contains("/joint/") && !name.equals("moment") && !name.equals("draws")) {
      return name.equals("station") || name.equals("leverArm") ? 1.5 : HELD + 0.05 * value;
    }
    return switch (name) {
      case "triangles", "vertices" -> value / 3;
      case "volume", "mass", "area" -> 5e-3 * value;
      case "minAngle" -> 15;
      case "chordError" -> 0.01;
      case "min", "max", "mean", "minWall", "atReliefCentre" -> 0.05;
      case "mouth", "widest", "spread", "girth", "flatWidth" -> 0.05;
      case "wrapLength" -> 0.5;
      case "strain", "largestStrain" -> 0.05 * Math.abs(value);
      case "EIatPip", "GJatPip", "EI", "relativeToHalf" -> 0.01 * value;
      case "deflectionAtPip", "extensionLost", "rimOpening" -> finite * 0.01 * Math.abs(value);
      case "shells", "holes" -> 0;
      default -> 1e-5;
    };
  }
}
