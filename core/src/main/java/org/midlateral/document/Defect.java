package org.midlateral.document;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.OrderText;
import org.midlateral.shared.SharedData;

/**
 * A defect of the program: what nobody foresaw. A user is told of it in a line; whoever is to mend
 * it gets a file with all it takes to meet it again, and nothing that tells whose finger it was:
 * neither reference nor note, nor names of files. The file is a measurement file itself, with all
 * else as comments, so that the program can be run on it.
 *
 * @param cause what was thrown
 * @param command and its options, without values that name files or keys
 * @param orders that had been read, the first of them the one that was worked on
 */
public record Defect(Throwable cause, List<String> command, List<Order> orders) {
  /** Name of the file in a folder of the user's. */
  public static final String FILE = "midlateral-defect.txt";

  private static final String HIDDEN = "(left out)";

  /** Shorter references are words that stand in other words. */
  private static final int LONG = 3;

  /** What no comment of a measurement file may hold, the ends of lines among it. */
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[^ -~\\u00a1-\\ud7ff\\ue000-\\ufffd]");

  public Defect {
    command = List.copyOf(command);
    orders = List.copyOf(orders);
  }

  /** What was thrown and where, in a few words. */
  public String inShort() {
    StackTraceElement[] trace = cause.getStackTrace();
    return cause.getClass().getSimpleName() + (trace.length == 0 ? "" : " at " + trace[0]);
  }

  /**
   * What the user is asked to do.
   *
   * @param file as written; empty where it could not be
   */
  public static String request(Optional<Path> file) {
    return "please report it" + file.map(path -> " with " + path).orElse("");
  }

  /**
   * Writes the file, whole, in place of an earlier one: into the user's folder where there is one
   * and it can be written, else into the temporary folder. Nothing is thrown: a defect that cannot
   * be written down must still be told.
   *
   * @param folder made where it is missing
   * @return the file; empty where neither folder takes it
   */
  public Optional<Path> write(Optional<Path> folder) {
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    String ofProcess = "midlateral-defect-" + ProcessHandle.current().pid() + ".txt";
    return folder
        .flatMap(home -> written(home.resolve(FILE)))
        .or(() -> written(temporary.resolve(ofProcess)));
  }

  private Optional<Path> written(Path file) {
    try {
      byte[] text = text().getBytes(StandardCharsets.UTF_8);
      WholeFile.makeFolder(file.toAbsolutePath().getParent());
      WholeFile.write(file, out -> out.write(text), true);
      return Optional.of(file);
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }

  /** The file. */
  String text() {
    List<String> comments =
        new ArrayList<>(
            List.of(
                "A defect of midlateral. Please report it with this file.",
                "It holds what is needed to reproduce the defect, without reference, note and"
                    + " names",
                "of files; look through it before you pass it on. It is a measurement file itself.",
                "",
                "midlateral " + SharedData.version() + "+" + SharedData.build(),
                "Java " + Runtime.version() + ", " + property("java.vendor"),
                property("os.name") + " " + property("os.version") + ", " + property("os.arch"),
                Instant.now().truncatedTo(ChronoUnit.SECONDS).toString(),
                "Command: " + String.join(" ", command),
                ""));
    trace("", cause, Collections.newSetFromMap(new IdentityHashMap<>()), comments);
    for (int i = 1; i < orders.size(); i++) {
      comments.addAll(List.of("", "Another finger was read too:", ""));
      comments.addAll(input(orders.get(i)).lines().toList());
    }
    StringBuilder text = new StringBuilder();
    comments.forEach(line -> text.append(comment(line)));
    return text.append('\n')
        .append(orders.isEmpty() ? comment("No measurements had been read.") : input(orders.get(0)))
        .toString();
  }

  private static String property(String name) {
    return System.getProperty(name, "unknown");
  }

  private static String comment(String line) {
    return ("# " + UNPRINTABLE.matcher(line).replaceAll(" ")).stripTrailing() + "\n";
  }

  /** All keys and values, those at their defaults too. */
  private static String input(Order order) {
    try {
      return OrderText.nameless(order);
    } catch (RuntimeException e) {
      return comment("The measurements cannot be written out: " + e.getClass().getName());
    }
  }

  private void trace(String lead, Throwable thrown, Set<Throwable> seen, List<String> lines) {
    if (!seen.add(thrown)) {
      return;
    }
    String message = thrown.getMessage() == null ? "" : ": " + withoutNames(thrown.getMessage());
    lines.add(lead + thrown.getClass().getName() + message);
    for (StackTraceElement frame : thrown.getStackTrace()) {
      lines.add("    at " + frame);
    }
    for (Throwable suppressed : thrown.getSuppressed()) {
      trace("Suppressed: ", suppressed, seen, lines);
    }
    if (thrown.getCause() != null) {
      trace("Caused by: ", thrown.getCause(), seen, lines);
    }
  }

  private String withoutNames(String message) {
    String text = message;
    String home = property("user.home");
    if (home.length() > LONG) {
      text = text.replace(home, "~");
    }
    for (Order order : orders) {
      text = order.note().isPresent() ? text.replace(order.note().get(), HIDDEN) : text;
      String reference = order.measurements().reference();
      text =
          reference.length() < LONG
              ? text.replaceAll("\\b" + Pattern.quote(reference) + "\\b", HIDDEN)
              : text.replace(reference, HIDDEN);
    }
    return text;
  }
}
