package org.midlateral.recipe.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.course.Course;
import org.midlateral.measurement.entry.Entry;
import org.midlateral.measurement.entry.EntryReader;
import org.midlateral.measurement.file.CourseOrders;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.ValueKind;

/**
 * The order for the next piece: today's readings and the same choices.
 *
 * @param order to make; null where today's readings make none
 * @param changes against the present piece
 * @param errors why there is none
 */
public record NextOrder(Order order, List<KeyChange> changes, List<InputError> errors) {
  /** The longest reference there may be. */
  private static final int LONGEST = 40;

  public NextOrder {
    changes = List.copyOf(changes);
    errors = List.copyOf(errors);
  }

  /**
   * A key whose value changed.
   *
   * @param key of the measurement file
   * @param before its value for the present piece; empty where it had none
   * @param after its value for the next one; empty where it has none
   */
  public record KeyChange(String key, String before, String after) {
    /** As a sentence has it. */
    public String shown() {
      return key
          + ": "
          + (before.isEmpty() ? "not known" : before)
          + " -> "
          + (after.isEmpty() ? "left out" : after);
    }
  }

  /** The next order of a course. */
  public static NextOrder of(Course course) {
    int last = course.lastNumber();
    Orders.Result read = CourseOrders.at(course, last);
    if (!read.ok()) {
      return new NextOrder(null, List.of(), read.errors());
    }
    Order present = CourseOrders.present(course);
    String reference = course.order().measurements().reference();
    String number = "-" + (course.piecesMade(last) + 1);
    String cut = reference.substring(0, Math.min(reference.length(), LONGEST - number.length()));
    Measurements measured = read.order().measurements().withReference(cut + number);
    Order next = new Order(measured, read.order().design(), Optional.empty());
    return new NextOrder(next, changes(present, next), List.of());
  }

  /** Whether there is an order. */
  public boolean ok() {
    return order != null;
  }

  /** The measurement file, with what changed told above. */
  public String text() {
    StringBuilder text =
        new StringBuilder("# The next piece: what changed against the present one.\n");
    if (changes.isEmpty()) {
      text.append("# Nothing.\n");
    }
    changes.forEach(change -> text.append("#   ").append(change.shown()).append('\n'));
    return text.append(OrderText.write(order)).toString();
  }

  private static List<KeyChange> changes(Order present, Order next) {
    Map<String, String> before = values(present);
    Map<String, String> after = values(next);
    List<KeyChange> changes = new ArrayList<>();
    after.forEach(
        (key, value) -> {
          String was = before.getOrDefault(key, "");
          if (!value.equals(was)) {
            changes.add(new KeyChange(key, was, value));
          }
        });
    before.forEach(
        (key, value) -> {
          if (!after.containsKey(key)) {
            changes.add(new KeyChange(key, value, ""));
          }
        });
    return changes;
  }

  /** The unit that a number lacks, with a space where it is written with one. */
  private static String unit(Entry entry, Order order) {
    InputKey key = KeyTable.standard().find(entry.path()).orElseThrow();
    if (!key.kind().isNumeric() || entry.text().matches(".*[a-z]")) {
      return "";
    }
    boolean length = key.kind() == ValueKind.LENGTH;
    String symbol = length ? order.measurements().unit().symbol() : key.unit();
    return symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol;
  }

  /** What an order says but its reference and note. */
  private static Map<String, String> values(Order order) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Entry entry : EntryReader.read(OrderText.write(order), "order", "").entries()) {
      boolean own = entry.path().equals("reference") || entry.path().equals("note");
      if (entry.shape() == Entry.NodeShape.SCALAR && !own) {
        values.put(entry.path(), entry.text() + unit(entry, order));
      }
    }
    return values;
  }
}
