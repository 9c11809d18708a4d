package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.measurement.SharedTable.TableRow;
import org.midlateral.shared.SharedData;

/**
 * What a usual machine of one printing process can hold.
 *
 * @param name as {@code print.process} has it
 * @param title for screens and sheets
 * @param leastWall thinnest wall (mm)
 * @param leastGap smallest gap at which two pieces printed apart still go together (mm)
 * @param usualGap gap that guides ask for between parts that slide (mm)
 * @param overhang a face that leans further than this from upright needs support (degrees)
 * @param supports whether leaning faces need support at all
 * @param stands whether a piece must stand by itself on the bed while it grows
 * @param upright how far a finger's length may be turned up from lying on the bed (degrees)
 * @param sources of each figure, by its name in the table
 */
public record PrintProcess(
    String name,
    String title,
    double leastWall,
    double leastGap,
    double usualGap,
    double overhang,
    boolean supports,
    boolean stands,
    double upright,
    Map<String, String> sources) {

  /** A piece may be turned any way. */
  public static final double ANY_POSE = 90;

  public PrintProcess {
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
  }

  private static final class Standard {
    static final List<PrintProcess> TABLE = load();
  }

  /** All processes of the shared table, in its order. */
  public static List<PrintProcess> all() {
    return Standard.TABLE;
  }

  /** The process chosen. */
  public static PrintProcess of(Design.ProcessDesign chosen) {
    String name = chosen.name().toLowerCase(Locale.ROOT);
    return all().stream()
        .filter(process -> process.name.equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no process " + name));
  }

  private static List<PrintProcess> load() {
    List<PrintProcess> processes = new ArrayList<>();
    for (TableRow row : SharedTable.rows(SharedTable.load(SharedData.PROCESSES))) {
      Map<String, String> sources = new LinkedHashMap<>();
      processes.add(
          new PrintProcess(
              row.text("name"),
              row.text("title"),
              Double.parseDouble(value(row, "least-wall", sources)),
              Double.parseDouble(value(row, "least-gap", sources)),
              Double.parseDouble(value(row, "usual-gap", sources)),
              Double.parseDouble(value(row, "overhang", sources)),
              value(row, "supports", sources).equals("yes"),
              value(row, "stands", sources).equals("yes"),
              ANY_POSE,
              sources));
    }
    return List.copyOf(processes);
  }

  private static String value(TableRow row, String property, Map<String, String> sources) {
    List<String> valueAndSource = row.list(property);
    sources.put(property, valueAndSource.get(1));
    return valueAndSource.get(0);
  }
}
