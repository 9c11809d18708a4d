package org.midlateral.measurement.privacy;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.midlateral.measurement.SharedTable;
import org.midlateral.measurement.SharedTable.TableRow;
import org.midlateral.shared.SharedData;

/**
 * Names of months and days in a language.
 *
 * @param months whole
 * @param shortMonths the same shortened, without dots
 * @param days of the week; none but in English
 */
record CalendarNames(List<String> months, List<String> shortMonths, List<String> days) {

  /** By the two letters of the language. */
  static Map<String, CalendarNames> all() {
    Map<?, ?> table = (Map<?, ?>) SharedTable.load(SharedData.CALENDAR);
    return table.entrySet().stream()
        .collect(
            Collectors.toMap(
                language -> language.getKey().toString(),
                language -> of(new TableRow((Map<?, ?>) language.getValue()))));
  }

  private static CalendarNames of(TableRow row) {
    return new CalendarNames(row.list("months"), row.list("short"), row.list("days"));
  }
}
