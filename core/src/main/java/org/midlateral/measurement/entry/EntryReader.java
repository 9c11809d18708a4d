package org.midlateral.measurement.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.entry.Entry.NodeShape;
import org.midlateral.measurement.entry.Entry.Place;
import org.midlateral.measurement.key.Shown;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Turns a YAML text into a flat list of entries, from the parser's events, so that nothing is built
 * of what a hostile file announces. Anchors, aliases and tags have no use here and are refused.
 */
public final class EntryReader {

  private static final int DEEPEST = 8;
  private static final int MOST_ENTRIES = 2000;
  private static final int MOST_ERRORS = 200;

  private final String file;
  private final String text;
  private final String rootPath;
  private final Iterator<Event> events;
  private final Map<String, Integer> lines = new HashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<InputError> errors = new ArrayList<>();

  /** Stops the reading; what was read before stays. */
  private static final class Stop extends Exception {
    private static final long serialVersionUID = 1;

    Stop() {
      super(null, null, false, false);
    }
  }

  /**
   * What was read.
   *
   * @param entries in the order of the file, each mapping before what is in it
   * @param errors of the form: not YAML, duplicates, and the like
   * @param complete whether the text was read to its end
   */
  public record Reading(List<Entry> entries, List<InputError> errors, boolean complete) {}

  private EntryReader(String text, String file, String rootPath) {
    this.file = file;
    this.text = text;
    this.rootPath = rootPath;
    // The parser copies what it holds whenever it reads on: at its usual 1024 characters, a long
    // word takes time by the square of its length.
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(file)
            .setParseComments(false)
            .setBufferSize(Math.max(1024, text.length()))
            .build();
    this.events = new Parse(settings).parseString(withoutJsonTabs(text)).iterator();
  }

  /** JSON may be indented with tabs; the parser takes none at the start of a line. */
  private static String withoutJsonTabs(String text) {
    return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
  }

  /**
   * Reads a text.
   *
   * @param text YAML 1.2
   * @param file as named to the user
   * @param rootPath path of the text's root; empty for a whole file
   */
  public static Reading read(String text, String file, String rootPath) {
    return new EntryReader(text, file, rootPath).read();
  }

  /** What a person does rather than what a parser meets. */
  private static final String OFTEN =
      "; most often this line, or one beside it, is not indented like its neighbours, or lacks the"
          + " space after its colon";

  private Reading read() {
    boolean complete = false;
    try {
      documents();
      complete = true;
    } catch (Stop stop) {
      // The reason is among the errors already.
    } catch (MarkedYamlEngineException e) {
      int line = new FaultLine(text).of(e);
      String problem = e.getProblem() == null ? "it cannot be read" : Shown.shown(e.getProblem());
      add(line, "", "", "YAML or JSON", "is not YAML from here on: " + problem + OFTEN);
    } catch (ReaderException e) {
      String point = String.format(Locale.ROOT, "U+%04X", e.getCodePoint());
      add(
          lineOf(e.getCodePoint()),
          "",
          point,
          "printable characters",
          "the character " + point + " is not allowed in YAML; allowed: printable characters");
    } catch (YamlEngineException e) {
      add(0, "", "", "YAML or JSON", "is not YAML: " + Shown.shown(String.valueOf(e.getMessage())));
    }
    return new Reading(List.copyOf(entries), List.copyOf(errors), complete);
  }

  private int lineOf(int codePoint) {
    int at = text.indexOf(codePoint);
    return at < 0 ? 0 : 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
  }

  private void documents() throws Stop {
    int documents = 0;
    while (events.hasNext()) {
      Event event = events.next();
      if (event.getEventId() != Event.ID.DocumentStart) {
        continue;
      }
      documents++;
      if (documents > 1) {
        fatal(event, "", "", "one document", "holds more than one document; allowed: one");
      }
      Event root = events.next();
      node(rootPath, root, 0, line(root));
    }
    if (documents == 0) {
      add(
          0,
          "",
          "",
          "a measurement file",
          "is empty; `midlateral template` writes one to start from");
      throw new Stop();
    }
  }

  /** Reads a value; a section or list stands in the line of its key. */
  private void node(String path, Event event, int depth, int keyLine) throws Stop {
    if (entries.size() >= MOST_ENTRIES) {
      fatal(event, path, "", "", "there are too many values; allowed: at most " + MOST_ENTRIES);
    }
    stopWhereTooMany(event);
    if (depth > DEEPEST) {
      fatal(event, path, "", "", "is nested too deep; allowed: at most " + DEEPEST + " levels");
    }
    switch (event.getEventId()) {
      case Scalar -> scalar(path, (ScalarEvent) event);
      case MappingStart -> mapping(path, (CollectionStartEvent) event, depth, keyLine);
      case SequenceStart -> sequence(path, (CollectionStartEvent) event, depth, keyLine);
      default -> add(line(event), path, "*", "a value", "is an alias; write the value itself");
    }
  }

  private void scalar(String path, ScalarEvent event) {
    refuseProperties(path, event, event.getTag().isPresent());
    entries.add(
        new Entry(
            path,
            NodeShape.SCALAR,
            event.getValue(),
            event.isPlain(),
            0,
            new Place(file, line(event))));
  }

  private void sequence(String path, CollectionStartEvent start, int depth, int keyLine)
      throws Stop {
    refuseProperties(path, start, start.getTag().isPresent());
    int at = entries.size();
    int items = 0;
    Event event = events.next();
    while (event.getEventId() != Event.ID.SequenceEnd) {
      node(path + "[" + items + "]", event, depth + 1, line(event));
      items++;
      event = events.next();
    }
    entries.add(
        at, new Entry(path, NodeShape.SEQUENCE, "", false, items, new Place(file, keyLine)));
  }

  private void mapping(String path, CollectionStartEvent start, int depth, int keyLine)
      throws Stop {
    refuseProperties(path, start, start.getTag().isPresent());
    entries.add(new Entry(path, NodeShape.MAPPING, "", false, 0, new Place(file, keyLine)));
    Event event = events.next();
    while (event.getEventId() != Event.ID.MappingEnd) {
      if (!(event instanceof ScalarEvent name)) {
        fatal(event, path, "", "a word", "a key here is not a word");
        return;
      }
      stopWhereTooMany(event);
      refuseProperties(path, name, name.getTag().isPresent());
      member(path, name, depth);
      event = events.next();
    }
  }

  private void member(String path, ScalarEvent name, int depth) throws Stop {
    String word = name.getValue();
    String child = path.isEmpty() ? Shown.shown(word) : path + "." + Shown.shown(word);
    if (word.isEmpty() || word.contains(".") || word.contains("[")) {
      String text = "is not a key's name; write sections as sections, one level under the other";
      add(line(name), child, word, "a key's name", text);
      skip(events.next());
      return;
    }
    Integer before = lines.putIfAbsent(child, line(name));
    if (before != null) {
      String text = "is in the file twice, first in line " + before + "; allowed: once";
      add(line(name), child, "", "once", text);
      skip(events.next());
      return;
    }
    node(child, events.next(), depth + 1, line(name));
  }

  /** Passes over a value without reading it. */
  private void skip(Event first) {
    int open = 0;
    Event event = first;
    while (true) {
      switch (event.getEventId()) {
        case MappingStart, SequenceStart -> open++;
        case MappingEnd, SequenceEnd -> open--;
        default -> {}
      }
      if (open == 0) {
        return;
      }
      event = events.next();
    }
  }

  private void refuseProperties(String path, NodeEvent event, boolean tagged) {
    if (event.getAnchor().isPresent()) {
      add(line(event), path, "&", "a value", "has an anchor; write plain values only");
    }
    if (tagged) {
      add(line(event), path, "!", "a value", "has a tag; write plain values only");
    }
  }

  private void stopWhereTooMany(Event event) throws Stop {
    if (errors.size() >= MOST_ERRORS) {
      fatal(event, "", "", "", "there are more errors; they appear when these are corrected");
    }
  }

  private void fatal(Event event, String key, String value, String allowed, String text)
      throws Stop {
    add(line(event), key, value, allowed, text);
    throw new Stop();
  }

  private void add(int line, String key, String value, String allowed, String text) {
    errors.add(new Place(file, line).error(key, value, allowed, text));
  }

  private static int line(Event event) {
    return event.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
  }
}
