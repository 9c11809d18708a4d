package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.file.Template;
import org.midlateral.shared.SharedData;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema says what the key table says; a validator of another make reads it. */
class SchemaTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static Set<ValidationMessage> validate(String yaml) {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SharedData.text(SharedData.SCHEMA));
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
    return schema.validate(JSON.<JsonNode>valueToTree(tree));
  }

  @Test
  void isWhatTheKeyTableStandsFor() throws Exception {
    JsonNode written = JSON.readTree(SharedData.text(SharedData.SCHEMA));
    String expected = JSON.writeValueAsString(SchemaFromKeys.schema());

    assertThat(written.equals(JSON.readTree(expected)))
        .as("the schema is what the key table says; SchemaFromKeys writes it anew")
        .isTrue();
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void takesTheTemplate(LengthUnit unit) {
    assertThat(validate(Template.text(unit))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("org.midlateral.measurement.file.SamplesTest#samples")
  void takesTheSamples(Path sample) throws Exception {
    assertThat(validate(Files.readString(sample))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trough: {wrap: 0.9}",
        "trough: {wal: 2}",
        "digit: thumb",
        "circumference: {pip: 60}",
        "circumference: {pip: [60]}",
        "closure: {layers: 1.5}",
        "relief: {bubbles: [{station: 3}]}"
      })
  void refusesWhatTheReaderRefuses(String line) {
    String key = line.substring(0, line.indexOf(':'));
    String yaml =
        Template.text(LengthUnit.MM).replaceAll("(?m)^" + key + ":.*\\n(?:(?: .*)?\\n)*", "")
            + line
            + "\n";

    assertThat(validate(yaml)).isNotEmpty();
    assertThat(Orders.parse(yaml, "demo.yaml", List.of()).ok()).isFalse();
  }
}
