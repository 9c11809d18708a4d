package org.midlateral.cli.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Remedy;
import org.midlateral.measurement.file.Orders;

/** What came of reading a file, as JSON: {@code {"ok": true, "findings": [...]}}. */
public final class FindingsJson {

  private FindingsJson() {}

  /** The JSON text, ending with a line feed. */
  public static String text(Orders.Result result) throws IOException {
    return text(result.ok(), result.errors(), result.cautions());
  }

  /** Errors and findings together. */
  public static String text(boolean ok, List<InputError> errors, List<Finding> findings)
      throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeBooleanField("ok", ok);
      json.writeArrayFieldStart("findings");
      for (InputError error : errors) {
        write(error, json);
      }
      for (Finding finding : findings) {
        write(finding, json);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return text + "\n";
  }

  /** Findings on a design, as the same JSON. */
  public static String text(boolean ok, List<Finding> findings) throws IOException {
    return text(ok, List.of(), findings);
  }

  /** The word for a severity in reports and messages. */
  public static String level(Finding.Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  private static void write(InputError error, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("level", level(Finding.Severity.REFUSAL));
    json.writeStringField("code", "input");
    json.writeStringField("key", error.key());
    json.writeStringField("text", error.text());
    json.writeStringField("file", error.file());
    json.writeNumberField("line", error.line());
    json.writeStringField("written", error.value());
    json.writeStringField("allowed", error.allowed());
    json.writeEndObject();
  }

  private static void write(Finding finding, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("level", level(finding.severity()));
    json.writeStringField("code", finding.code());
    if (finding.key() != null) {
      json.writeStringField("key", finding.key());
    }
    json.writeStringField("text", finding.text());
    writeFinite("value", finding.value(), json);
    writeFinite("limit", finding.limit(), json);
    if (!finding.remedies().isEmpty()) {
      json.writeArrayFieldStart("remedies");
      for (Remedy remedy : finding.remedies()) {
        json.writeStartObject();
        json.writeStringField("key", remedy.key());
        json.writeStringField("value", remedy.value());
        json.writeBooleanField("alone", remedy.alone());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private static void writeFinite(String name, double value, JsonGenerator json)
      throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, value);
    }
  }
}
