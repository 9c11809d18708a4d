package org.midlateral.viewer.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * The text of a file with a draft's values in it, everything else as it was: comments, order and
 * layout. Values are exchanged where they stand, keys that are gone are taken out with their line,
 * new ones are put at the end of their section.
 */
public final class EditedText {
  private final int[] text;
  private final List<Integer> lineStarts = new ArrayList<>();
  private final Map<String, ScalarNode> scalars = new LinkedHashMap<>();
  private final Map<String, NodeTuple> tuples = new HashMap<>();
  private final Map<String, MappingNode> sections = new HashMap<>();

  /** What is put in place of a stretch of the text, by where it begins (code points). */
  private final TreeMap<Integer, Change> changes = new TreeMap<>();

  private boolean possible = true;

  private record Change(int end, String by) {}

  private EditedText(String text) {
    this.text = text.codePoints().toArray();
    lineStarts.add(0);
    for (int i = 0; i < this.text.length; i++) {
      if (this.text[i] == '\n') {
        lineStarts.add(i + 1);
      }
    }
  }

  /**
   * Writes a draft into the text it was read from.
   *
   * @param former as it was read
   * @return the draft alone where it cannot be put into that text, as with a new key in braces
   */
  public static String write(Draft draft, String former) {
    return of(former, draft).orElseGet(() -> DraftText.write(draft));
  }

  /**
   * The edited text.
   *
   * @param text as it was read
   * @param draft what it is to say
   * @return empty where it cannot be done without touching the rest
   */
  static Optional<String> of(String text, Draft draft) {
    try {
      EditedText edited = new EditedText(text);
      LoadSettings settings = LoadSettings.builder().setSchema(new FailsafeSchema()).build();
      Optional<Node> root = new Compose(settings).composeString(text);
      if (root.isEmpty() || !(root.get() instanceof MappingNode mapping)) {
        return Optional.empty();
      }
      edited.find("", mapping);
      edited.edit(DraftText.read(text), draft);
      String result = edited.result();
      boolean says = edited.possible && DraftText.read(result).equals(draft);
      return says ? Optional.of(result) : Optional.empty();
    } catch (YamlEngineException | DraftText.NotADraft e) {
      return Optional.empty();
    }
  }

  private void find(String path, Node node) {
    if (node instanceof MappingNode mapping) {
      sections.put(path, mapping);
      for (NodeTuple tuple : mapping.getValue()) {
        if (tuple.getKeyNode() instanceof ScalarNode name) {
          String inner = path.isEmpty() ? name.getValue() : path + "." + name.getValue();
          tuples.put(inner, tuple);
          find(inner, tuple.getValueNode());
        }
      }
    } else if (node instanceof SequenceNode list) {
      for (int i = 0; i < list.getValue().size(); i++) {
        find(path + "[" + i + "]", list.getValue().get(i));
      }
    } else if (node instanceof ScalarNode scalar) {
      scalars.put(path, scalar);
    }
  }

  private void edit(Draft before, Draft after) {
    Map<String, Map<String, String>> added = new LinkedHashMap<>();
    for (String list : lists(before, after)) {
      if (tuples.containsKey(list)) {
        takeOut(list);
      }
      added.computeIfAbsent(section(list), any -> new LinkedHashMap<>()).put(list, "");
    }
    for (String path : before.values().keySet()) {
      boolean ofList = added.values().stream().anyMatch(keys -> isIn(path, keys.keySet()));
      if (!ofList && !after.get(path).equals(before.get(path))) {
        if (after.get(path).isEmpty()) {
          takeOut(path);
        } else {
          exchange(path, after.get(path));
        }
      }
    }
    for (String path : after.orderedPaths()) {
      boolean ofList = added.values().stream().anyMatch(keys -> isIn(path, keys.keySet()));
      if (!ofList && before.get(path).isEmpty() && !after.get(path).isEmpty()) {
        if (scalars.containsKey(path)) {
          exchange(path, after.get(path));
        } else {
          added.computeIfAbsent(section(path), any -> new LinkedHashMap<>()).put(path, "");
        }
      }
    }
    added.forEach((section, keys) -> add(section, keys.keySet(), after));
  }

  private static boolean isIn(String path, Iterable<String> lists) {
    for (String list : lists) {
      if (path.startsWith(list + "[")) {
        return true;
      }
    }
    return false;
  }

  /** Lists whose items have not the same keys any more; they are written anew. */
  private static List<String> lists(Draft before, Draft after) {
    List<String> lists = new ArrayList<>();
    Set<String> paths = new LinkedHashSet<>(before.values().keySet());
    paths.addAll(after.values().keySet());
    for (String path : paths) {
      int bracket = path.indexOf('[');
      boolean same = before.get(path).isEmpty() == after.get(path).isEmpty();
      if (bracket > 0 && !same && !lists.contains(path.substring(0, bracket))) {
        lists.add(path.substring(0, bracket));
      }
    }
    return lists;
  }

  private static String section(String path) {
    return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private void exchange(String path, String value) {
    ScalarNode node = scalars.get(path);
    int start = index(node.getStartMark());
    int end = index(node.getEndMark());
    changes.put(start, new Change(end, (start == end ? " " : "") + DraftText.scalar(value)));
  }

  /** Takes a key out with its lines; within braces with the comma. */
  private void takeOut(String path) {
    NodeTuple tuple = tuples.get(path);
    MappingNode in = sections.get(section(path));
    if (tuple == null || in == null || in.getFlowStyle() == FlowStyle.FLOW) {
      possible = false;
      return;
    }
    int start = lineStarts.get(line(tuple.getKeyNode().getStartMark()));
    int last = index(tuple.getValueNode().getEndMark());
    // A block's end is where the next begins; what stands before that is the next one's comment.
    int end = endOfLine(lastInk(start, last));
    changes.put(start, new Change(end, ""));
  }

  /** The last sign of a key's own between two places, comments after it left out. */
  private int lastInk(int start, int end) {
    int ink = start;
    int at = start;
    while (at < end) {
      int lineEnd = Math.min(endOfLine(at), end);
      int first = at;
      while (first < lineEnd && Character.isWhitespace(text[first])) {
        first++;
      }
      if (first < lineEnd && text[first] != '#') {
        ink = first;
      }
      at = endOfLine(at);
    }
    return ink;
  }

  private int endOfLine(int at) {
    int end = at;
    while (end < text.length && text[end] != '\n') {
      end++;
    }
    return Math.min(end + 1, text.length);
  }

  /** Puts new keys at the end of their section, or a new section at the end of the file. */
  private void add(String section, Iterable<String> paths, Draft after) {
    MappingNode in = sections.get(section);
    if (in == null || in.getValue().isEmpty()) {
      boolean nested = section.contains(".") || tuples.containsKey(section);
      possible = possible && !nested;
      put(text.length, lines("  ", paths, after, section + ":\n"));
      return;
    }
    if (in.getFlowStyle() == FlowStyle.FLOW) {
      possible = false;
      return;
    }
    NodeTuple last = in.getValue().get(in.getValue().size() - 1);
    Mark key = in.getValue().get(0).getKeyNode().getStartMark().orElseThrow();
    int start = lineStarts.get(line(last.getKeyNode().getStartMark()));
    int at = endOfLine(lastInk(start, index(last.getValueNode().getEndMark())));
    put(at, lines(" ".repeat(key.getColumn()), paths, after, ""));
  }

  private static String lines(String indent, Iterable<String> paths, Draft draft, String head) {
    StringBuilder lines = new StringBuilder();
    for (String path : paths) {
      int items = draft.items(path);
      if (items > 0) {
        lines.append(indent).append(name(path)).append(":\n");
        for (int i = 0; i < items; i++) {
          lines
              .append(indent)
              .append("  - {")
              .append(item(path + "[" + i + "].", draft))
              .append("}\n");
        }
      } else if (!draft.get(path).isEmpty()) {
        lines.append(indent).append(name(path)).append(": ");
        lines.append(DraftText.scalar(draft.get(path))).append('\n');
      }
    }
    return lines.isEmpty() ? "" : head + lines;
  }

  private static String item(String start, Draft draft) {
    List<String> keys = new ArrayList<>();
    draft
        .values()
        .forEach(
            (path, value) -> {
              if (path.startsWith(start) && !value.isEmpty()) {
                keys.add(path.substring(start.length()) + ": " + DraftText.scalar(value));
              }
            });
    return String.join(", ", keys);
  }

  private void put(int at, String lines) {
    boolean open = at > 0 && text[at - 1] != '\n' && !lines.isEmpty();
    Change there = changes.get(at);
    String by = (open ? "\n" : "") + lines;
    changes.put(at, there == null ? new Change(at, by) : new Change(there.end(), by + there.by()));
  }

  private static int line(Optional<Mark> mark) {
    return mark.orElseThrow().getLine();
  }

  private int index(Optional<Mark> mark) {
    Mark at = mark.orElseThrow();
    return at.getLine() < lineStarts.size()
        ? Math.min(text.length, lineStarts.get(at.getLine()) + at.getColumn())
        : text.length;
  }

  private String result() {
    StringBuilder result = new StringBuilder();
    int at = 0;
    for (Map.Entry<Integer, Change> change : changes.entrySet()) {
      if (change.getKey() < at) {
        possible = false;
        return "";
      }
      result.append(new String(text, at, change.getKey() - at)).append(change.getValue().by());
      at = change.getValue().end();
    }
    return result.append(new String(text, at, text.length - at)).toString();
  }
}
