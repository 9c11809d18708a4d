package org.midlateral.measurement;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;

/**
 * The JSON Schema (draft 2020-12) that the key table stands for. Running it writes the file in the
 * shared data anew; the test holds the file against it.
 */
final class SchemaFromKeys {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final KeyTable TABLE = KeyTable.standard();

  private SchemaFromKeys() {}

  /** Writes the schema to the file given. */
  public static void main(String[] arguments) throws Exception {
    String text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(schema());
    Files.writeString(Path.of(arguments[0]), text + "\n");
  }

  static ObjectNode schema() {
    ObjectNode schema = JSON.createObjectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:midlateral:measurement-file");
    schema.put("title", "Measurement file");
    schema.put(
        "description",
        "Measurements of one finger and what is chosen for its orthosis. Lengths are in the file's"
            + " unit or carry their own; their ranges, in mm, stand in x-refused and x-usual.");
    schema.setAll(section("", false));
    schema.putObject("$defs").set("length", length());
    return schema;
  }

  private static ObjectNode length() {
    ObjectNode length = JSON.createObjectNode();
    length.putArray("type").add("number").add("string");
    length.put("pattern", "^\\s*[-+]?\\s*[0-9.½¼¾⅛⅜⅝⅞][-+0-9./eE ½¼¾⅛⅜⅝⅞]*\\s*[a-zA-Z\"″]*\\s*$");
    return length;
  }

  private static ObjectNode section(String path, boolean mayBeEmpty) {
    ObjectNode section = JSON.createObjectNode();
    if (mayBeEmpty) {
      section.putArray("type").add("object").add("null");
    } else {
      section.put("type", "object");
    }
    if (!TABLE.sectionComment(path).isEmpty()) {
      section.put("description", TABLE.sectionComment(path));
    }
    section.put("additionalProperties", false);
    ObjectNode properties = section.putObject("properties");
    ArrayNode required = JSON.createArrayNode();
    for (String name : TABLE.namesIn(path)) {
      String child = path.isEmpty() ? name : path + "." + name;
      boolean isRequired = isRequired(child);
      properties.set(
          name,
          TABLE.find(child).isPresent()
              ? key(TABLE.find(child).get())
              : section(child, !isRequired));
      if (isRequired) {
        required.add(name);
      }
    }
    if (!required.isEmpty()) {
      section.set("required", required);
    }
    return section;
  }

  private static boolean isRequired(String path) {
    return TABLE.keys().stream()
        .filter(InputKey::required)
        .map(InputKey::path)
        .anyMatch(
            key ->
                key.equals(path)
                    || key.startsWith(path + ".") && !key.substring(path.length()).contains("[]"));
  }

  private static ObjectNode key(InputKey key) {
    ObjectNode node = JSON.createObjectNode();
    node.put("description", key.comment());
    key.standard().ifPresent(value -> node.put("x-default", value));
    key.refused().ifPresent(range -> range(node.putArray("x-refused"), range));
    key.usual().ifPresent(range -> range(node.putArray("x-usual"), range));
    if (!key.unit().isEmpty()) {
      node.put("x-unit", key.unit());
    }
    ObjectNode value = value(key);
    if (key.or().contains("auto")) {
      node.putArray("anyOf").add(value).addObject().put("const", "auto");
    } else {
      node.setAll(value);
    }
    return node;
  }

  private static ObjectNode value(InputKey key) {
    ObjectNode value = JSON.createObjectNode();
    switch (key.kind()) {
      case LENGTH -> value.put("$ref", "#/$defs/length");
      case NUMBER, SHARE, ANGLE -> ranged(value.put("type", "number"), key);
      case COUNT -> ranged(value.put("type", "integer"), key);
      case CHOICE -> choices(value.putArray("enum"), key);
      case YES_NO -> value.putArray("enum").add(true).add(false).add("yes").add("no");
      case TEXT -> {
        value.putArray("type").add("string").add("number");
        value.put("pattern", "^" + key.pattern() + "$");
      }
      case LIST -> {
        value.put("type", "array");
        value.put("minItems", (int) key.refused().orElseThrow().low());
        value.put("maxItems", (int) key.refused().orElseThrow().high());
        value.set("items", section(key.path() + "[]", false));
      }
    }
    return value;
  }

  private static void choices(ArrayNode choices, InputKey key) {
    key.choices().forEach(choices::add);
    if (key.choices().contains("yes")) {
      choices.add(true).add(false);
    }
  }

  private static void ranged(ObjectNode value, InputKey key) {
    value.put("minimum", key.refused().orElseThrow().low());
    value.put("maximum", key.refused().orElseThrow().high());
  }

  private static void range(ArrayNode array, AllowedRange range) {
    array.add(range.low()).add(range.high());
  }
}
