package org.midlateral.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Map;

/**
 * Records as JSON, their components in order; written by the streaming generator, since learning
 * some forty classes by a mapper of objects took longer than a tenth of a second at every start.
 * What may stand in a record: records, maps by name, lists, texts, words of an enum, numbers, truth
 * values, null.
 */
public enum RecordJson {
  /** Numbers as they are. */
  EXACT,

  /** Numbers to six decimals: finer than anything is measured, and free of rounding's tails. */
  ROUNDED;

  private static final JsonFactory JSON = new JsonFactory();

  /** A record as JSON, ending with a line feed. */
  public String text(Record written) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter());
      write(written, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  private void write(Object value, JsonGenerator json) throws IOException {
    if (value instanceof Record of) {
      writeRecord(of, json);
    } else if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeFieldName(entry.getKey().toString());
        write(entry.getValue(), json);
      }
      json.writeEndObject();
    } else if (value instanceof Collection<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(item, json);
      }
      json.writeEndArray();
    } else if (value instanceof Double number && this == ROUNDED) {
      writeRounded(number, json);
    } else if (value instanceof Enum<?> word) {
      json.writeString(word.name());
    } else if (value == null
        || value instanceof String
        || value instanceof Number
        || value instanceof Boolean) {
      json.writePOJO(value);
    } else {
      throw new IllegalStateException("no JSON for " + value.getClass());
    }
  }

  private void writeRecord(Record of, JsonGenerator json) throws IOException {
    json.writeStartObject();
    for (RecordComponent component : of.getClass().getRecordComponents()) {
      Object value = value(component, of);
      if (of instanceof ReportPart part) {
        if (value != null) {
          json.writeFieldName(part.jsonName(component.getName()));
          write(value, json);
        }
      } else {
        json.writeFieldName(component.getName());
        write(value, json);
      }
    }
    json.writeEndObject();
  }

  private static Object value(RecordComponent component, Record of) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("no value of " + component, e);
    }
  }

  private static void writeRounded(double value, JsonGenerator json) throws IOException {
    if (!Double.isFinite(value)) {
      json.writeNull();
      return;
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
    json.writeNumber(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
  }
}
