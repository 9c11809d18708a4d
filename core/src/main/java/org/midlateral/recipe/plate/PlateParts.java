package org.midlateral.recipe.plate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.midlateral.document.format.NamedSolid;
import org.midlateral.document.format.StlMesh;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.FolderCheck.FileState;
import org.midlateral.recipe.record.MakingRecord;

/** Gathers the parts of orders from their folders: as they were made, in the poses reported. */
final class PlateParts {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String REPORT = "report.json";

  private final List<PlatePart> parts = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  List<PlatePart> parts() {
    return List.copyOf(parts);
  }

  /** Why something was left out, a sentence each. */
  List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** Takes an order's parts, or tells why not. */
  void add(Path home) throws IOException {
    FolderCheck check = FolderCheck.of(home);
    if (check.record().isEmpty()) {
      leftOut.add(home + ": left out, no complete record says what was made");
      return;
    }
    MakingRecord record = check.record().get();
    List<String> names =
        record.files().keySet().stream()
            .filter(name -> name.endsWith(".stl") && !name.endsWith(".ascii.stl"))
            .toList();
    for (String name : withReport(names)) {
      FileState state = check.files().getOrDefault(name, FileState.MISSING);
      if (state != FileState.AS_MADE) {
        leftOut.add(home.resolve(name) + ": left out with its order, it is " + state.words());
        return;
      }
    }
    if (names.isEmpty()) {
      String why = record.state().equals("made") ? "no binary STL; make it with --format stl" : "";
      leftOut.add(home + ": left out, " + (why.isEmpty() ? "it was " + record.state() : why));
      return;
    }
    JsonNode report = JSON.readTree(home.resolve(REPORT).toFile());
    for (Map.Entry<String, JsonNode> part : report.path("print").path("parts").properties()) {
      String file = report.path("parts").path(part.getKey()).path("file").asText();
      parts.add(part(record, part.getKey(), home.resolve(file), part.getValue().path("pose")));
    }
  }

  private static List<String> withReport(List<String> names) {
    List<String> all = new ArrayList<>(names);
    all.add(REPORT);
    return all;
  }

  private static PlatePart part(MakingRecord record, String name, Path file, JsonNode pose)
      throws IOException {
    double[] rows = new double[12];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        rows[4 * row + column] = pose.path(3 * row + column).asDouble();
      }
    }
    return new PlatePart(
        record,
        new NamedSolid(
            name, record.title(name), StlMesh.read(file), AffineTransformMatrix3D.of(rows)));
  }
}
