package org.midlateral.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Consumer;
import org.midlateral.recipe.batch.Outcome;
import org.midlateral.recipe.batch.Outcome.OrderState;

/**
 * What became of each order, as JSON: {@code {"orders": [...], "counts": {...}, "ok": true}}. Each
 * order is written as it ends, so that a long batch needs no memory for them; a run that is stopped
 * leaves no {@code ok}.
 */
final class BatchJson implements Consumer<Outcome>, AutoCloseable {
  private final JsonGenerator json;

  BatchJson(StandardStreams streams) throws IOException {
    this.json =
        new JsonFactory()
            .createGenerator(streams.out())
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.useDefaultPrettyPrinter();
    json.writeStartObject();
    json.writeArrayFieldStart("orders");
  }

  @Override
  public void accept(Outcome outcome) {
    try {
      json.writeStartObject();
      json.writeStringField("place", outcome.place());
      json.writeStringField("reference", outcome.reference());
      json.writeStringField("folder", outcome.folder());
      json.writeStringField("state", outcome.state().word());
      json.writeStringField("text", outcome.text());
      json.writeStringField("former", outcome.former());
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Ends the report of a run that went through. */
  void finish(Map<OrderState, Long> counts) throws IOException {
    json.writeEndArray();
    json.writeObjectFieldStart("counts");
    for (Map.Entry<OrderState, Long> count : counts.entrySet()) {
      json.writeNumberField(count.getKey().word(), count.getValue());
    }
    json.writeEndObject();
    json.writeBooleanField("ok", counts.keySet().stream().allMatch(OrderState::isDone));
    json.writeEndObject();
    json.writeRaw("\n");
  }

  /** Closes what is still open, so that it reads as JSON after a stop too. */
  @Override
  public void close() throws IOException {
    json.close();
  }
}
