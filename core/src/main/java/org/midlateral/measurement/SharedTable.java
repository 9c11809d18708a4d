package org.midlateral.measurement;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.midlateral.shared.SharedData;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/** Rows of a table in the shared data; our own files, so what is amiss in one is a defect. */
public final class SharedTable {

  /**
   * One row.
   *
   * @param fields value by field name: a text, a list or a mapping
   */
  public record TableRow(Map<?, ?> fields) {

    public boolean has(String field) {
      return fields.containsKey(field);
    }

    public String text(String field) {
      return optional(field)
          .orElseThrow(() -> new IllegalStateException("no " + field + " in " + fields));
    }

    public Optional<String> optional(String field) {
      return Optional.ofNullable(fields.get(field)).map(Object::toString);
    }

    /** A mapping under a field; an empty one where there is none. */
    public TableRow row(String field) {
      return new TableRow(fields.get(field) instanceof Map<?, ?> under ? under : Map.of());
    }

    public List<String> list(String field) {
      List<String> list = new ArrayList<>();
      if (fields.get(field) instanceof List<?> values) {
        values.forEach(value -> list.add(value.toString()));
      }
      return list;
    }
  }

  private SharedTable() {}

  /**
   * The whole of a resource: texts, lists and mappings, from the parser's events; to build the
   * parser's nodes first, and to ask of each text what type it is, took as long again.
   */
  public static Object load(String resource) {
    String text = SharedData.text(resource);
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(resource)
            .setParseComments(false)
            .setBufferSize(Math.max(1024, text.length()))
            .build();
    Iterator<Event> events = new Parse(settings).parseString(text).iterator();
    Event event = events.next();
    while (!(event instanceof NodeEvent)) {
      event = events.next();
    }
    return value(event, events);
  }

  /** A value that begins with an event, and takes its further ones. */
  private static Object value(Event first, Iterator<Event> events) {
    switch (first.getEventId()) {
      case Scalar:
        return ((ScalarEvent) first).getValue();
      case SequenceStart:
        List<Object> items = new ArrayList<>();
        for (Event e = events.next(); e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
          items.add(value(e, events));
        }
        return items;
      case MappingStart:
        Map<String, Object> fields = new LinkedHashMap<>();
        for (Event e = events.next(); e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
          fields.put(((ScalarEvent) e).getValue(), value(events.next(), events));
        }
        return fields;
      default:
        throw new IllegalStateException("no value in a table: " + first);
    }
  }

  /** Rows of a list of mappings. */
  public static List<TableRow> rows(Object list) {
    List<TableRow> rows = new ArrayList<>();
    for (Object row : (List<?>) list) {
      rows.add(new TableRow((Map<?, ?>) row));
    }
    return rows;
  }
}
