package org.midlateral.viewer.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** Drafts to and from YAML, every scalar taken as the text it is. */
public final class DraftText {
  private DraftText() {}

  /** A text that is no mapping of keys. */
  public static final class NotADraft extends Exception {
    private static final long serialVersionUID = 1;

    NotADraft(String message) {
      super(message);
    }
  }

  /**
   * Reads a draft.
   *
   * @param yaml YAML or JSON, right or wrong in its values
   * @throws NotADraft where it is not even a mapping
   */
  public static Draft read(String yaml) throws NotADraft {
    Object root;
    try {

      root =
          new Load(
                  LoadSettings.builder()
                      .setSchema(new FailsafeSchema())
                      // A key without a value is none; the schema itself knows no such tag.
                      .setTagConstructors(Map.of(Tag.NULL, node -> ""))
                      .build())
              .loadFromString(yaml);
    } catch (YamlEngineException e) {
      throw new NotADraft("is not YAML: " + e.getMessage().lines().findFirst().orElse(""));
    }
    if (!(root instanceof Map<?, ?>)) {
      throw new NotADraft("holds no keys");
    }
    Map<String, String> values = new LinkedHashMap<>();
    flatten("", root, values);
    return new Draft(values);
  }

  private static void flatten(String path, Object node, Map<String, String> values) {
    if (node instanceof Map<?, ?> map) {
      map.forEach(
          (name, value) -> flatten(path.isEmpty() ? "" + name : path + "." + name, value, values));
    } else if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        flatten(path + "[" + i + "]", list.get(i), values);
      }
    } else if (node != null && !node.toString().isBlank()) {
      values.put(path, node.toString());
    }
  }

  /** Writes a draft as YAML. */
  public static String write(Draft draft) {
    Map<String, Object> root = new LinkedHashMap<>();
    for (String path : draft.orderedPaths()) {
      place(root, path, draft.get(path));
    }
    DumpSettings settings =
        DumpSettings.builder()
            .setSchema(new FailsafeSchema())
            .setDefaultFlowStyle(FlowStyle.BLOCK)
            .build();
    return new Dump(settings).dumpToString(root);
  }

  /** A value as YAML has it within a line, in quotes where it needs them. */
  static String scalar(String value) {
    String dumped = write(new Draft(Map.of("x", value))).strip();
    return dumped.substring(dumped.indexOf(':') + 1).strip();
  }

  private static void place(Map<String, Object> root, String path, String text) {
    String[] names = path.split("\\.");
    Map<String, Object> at = root;
    for (int i = 0; i < names.length - 1; i++) {
      at = names[i].endsWith("]") ? item(at, names[i]) : section(at, names[i]);
    }
    if (!text.isEmpty()) {
      at.put(names[names.length - 1], text);
    }
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> section(Map<String, Object> at, String name) {
    Object section = at.get(name);
    if (!(section instanceof Map)) {
      section = new LinkedHashMap<String, Object>();
      at.put(name, section);
    }
    return (Map<String, Object>) section;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> item(Map<String, Object> at, String name) {
    int bracket = name.indexOf('[');
    int number = Integer.parseInt(name.substring(bracket + 1, name.length() - 1));
    Object list = at.computeIfAbsent(name.substring(0, bracket), any -> new ArrayList<Object>());
    List<Map<String, Object>> items = (List<Map<String, Object>>) list;
    while (items.size() <= number) {
      items.add(new LinkedHashMap<>());
    }
    return items.get(number);
  }
}
