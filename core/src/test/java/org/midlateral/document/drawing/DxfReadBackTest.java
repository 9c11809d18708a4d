package org.midlateral.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.document.bench.BenchDocuments;
import org.midlateral.document.bench.BenchFiles;
import org.midlateral.document.pattern.Blank;

/**
 * Reads our DXF with ezdxf, a reader that is not ours (Debian package python3-ezdxf). Without it
 * the test is skipped, save where CI is set.
 */
class DxfReadBackTest {
  private static final String READ =
      """
      import ezdxf, json, sys
      d = ezdxf.readfile(sys.argv[1])
      m = d.modelspace()
      lines = [[(v.dxf.location.x, v.dxf.location.y) for v in e.vertices]
               for e in m.query('POLYLINE[layer=="CUT"]')]
      print(json.dumps({
          'units': d.header['$INSUNITS'], 'errors': len(d.audit().errors),
          'closed': all(e.is_closed for e in m.query('POLYLINE[layer=="CUT"]')),
          'layers': sorted(l.dxf.name for l in d.layers),
          'texts': [e.dxf.text for e in m.query('TEXT')], 'cut': lines,
          'marks': len(m.query('LINE[layer=="MARK"]')),
          'fold': d.layers.get('FOLD').dxf.linetype}))
      """;

  @TempDir Path folder;

  @Test
  void anotherReaderFindsTheBlankInMillimetres() throws Exception {
    BenchDocuments documents = BenchFiles.of(BenchFiles.orthosis("middle-inches"));
    Path file = folder.resolve("pattern.dxf");
    Files.write(file, BenchFiles.bytes(documents, "pattern.dxf"));

    JsonNode read = new ObjectMapper().readTree(run(python(), "-c", READ, file.toString()));

    assertThat(read.get("units").asInt()).as("millimetres").isEqualTo(4);
    assertThat(read.get("errors").asInt()).isZero();
    assertThat(read.get("closed").asBoolean()).isTrue();
    assertThat(read.get("layers").toString()).contains("CUT", "FOLD", "AXIS", "MARK", "TEXT");
    assertThat(read.get("fold").asText()).isEqualTo("FOLD_DASHES");
    assertThat(read.get("texts").toString())
        .contains("BLANK", "TEMPLATE", "demo-middle-inches", "does not clear a piece");
    Blank blank = documents.pattern().blank();
    JsonNode outline = read.get("cut").get(0);
    assertThat(extent(outline, 0)).isCloseTo(blank.width(), within(1e-3));
    assertThat(extent(outline, 1)).isCloseTo(blank.length(), within(1e-3));
    // Two marks at each of four levels, and the scale bars with their ticks.
    assertThat(read.get("marks").asInt()).isGreaterThanOrEqualTo(2 * 4 + 2 + 12);
  }

  private static double extent(JsonNode points, int axis) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (JsonNode point : points) {
      low = Math.min(low, point.get(axis).asDouble());
      high = Math.max(high, point.get(axis).asDouble());
    }
    return high - low;
  }

  /** The first interpreter on the path that has the reader. */
  private static String python() throws Exception {
    Optional<String> found = Optional.empty();
    for (String place : System.getenv("PATH").split(File.pathSeparator)) {
      Path python = Path.of(place, "python3");
      if (found.isEmpty() && Files.isExecutable(python)) {
        Process tried = new ProcessBuilder(python.toString(), "-c", "import ezdxf").start();
        tried.getErrorStream().readAllBytes();
        found = Optional.of(python.toString()).filter(p -> wait(tried) == 0);
      }
    }
    if (System.getenv("CI") == null) {
      assumeTrue(found.isPresent(), "ezdxf is not installed: this outside check is left out");
    }
    assertThat(found).as("ezdxf is installed").isPresent();
    return found.get();
  }

  private static int wait(Process process) {
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  private static String run(String... command) throws IOException {
    Process process = new ProcessBuilder(List.of(command)).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String wrong = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(Stream.of(wrong.split("\n")).filter(line -> line.contains("Error"))).isEmpty();
    assertThat(wait(process)).as(wrong).isZero();
    return said;
  }
}
