package org.midlateral.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.TextValue;
import org.midlateral.cli.line.ValueKind;
import org.midlateral.cli.line.WrongCommandLine;
import org.midlateral.cli.text.FindingsJson;
import org.midlateral.document.Content;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Courses;
import org.midlateral.recipe.course.CourseFile;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.recipe.course.FollowUpDocument;
import org.midlateral.recipe.course.FollowUpReport;
import org.midlateral.recipe.course.FollowUpTable;
import org.midlateral.recipe.course.FollowUpWords;
import org.midlateral.recipe.course.VisitLine;

/** What a course of visits tells, and what follows from it. */
final class FollowUpCommand implements ReadyCommand {
  private static final Parameter<Path> FILE =
      Parameter.operand("FILE", new PathValue(), "The course.");

  private static final Parameter<Path> BEGIN =
      Parameter.option(
          "--begin",
          "ORDER",
          new PathValue(),
          "Begins FILE, which is not there yet: this measurement file, its readings as first"
              + " visit.");

  private static final Parameter<LocalDate> ON =
      Parameter.option(
          "--on",
          "DATE",
          new Day(),
          "Date of that visit, as 2026-03-31; without it, visits are counted by days.");

  private static final Parameter<String> ADD =
      Parameter.option(
              "--add",
              "KEY=VALUE",
              new TextValue(),
              "A reading of one more visit, which is added to FILE; once for each reading.")
          .repeated();

  private static final Parameter<Path> FOLDER =
      Parameter.option(
          "--out",
          Parameter.FOLDER,
          new PathValue(),
          "Folder for follow-up.pdf and follow-up.csv; made where it is missing.");

  private static final Parameter<Path> NEXT =
      Parameter.option(
          "--next",
          "ORDER",
          new PathValue(),
          "Writes the measurement file of the next piece, with what changed.");

  private static final Parameter<Boolean> FORCE =
      Parameter.flag("--force", "Replaces what --out and --next write; never a course.");

  static final CommandForm FORM =
      CommandForm.of(
              "Reads a course of visits: whether extension is kept, and what to do.",
              "A course is a measurement file with visits under it. It also says how the piece sits"
                  + " today. Estimate, for comparison; does not clear a piece for use.")
          .with(FILE, BEGIN, ON, ADD, FOLDER, NEXT, FORCE)
          .with(MessageOptions.ALL)
          .examples(
              "midlateral follow-up course.yaml --out out/weeks",
              "midlateral follow-up course.yaml --add date=2026-03-31 --add hours-worn=8");

  private final StandardStreams streams;
  private final Path file;
  private final Path begin;
  private final Optional<LocalDate> on;
  private final List<String> add;
  private final Path folder;
  private final Path next;
  private final boolean force;
  private final MessageOptions messages;

  FollowUpCommand(ReadLine line, StandardStreams streams) throws WrongCommandLine {
    this.streams = streams;
    this.file = line.must(FILE);
    this.begin = line.one(BEGIN).orElse(null);
    this.on = line.one(ON);
    this.add = line.all(ADD);
    this.folder = line.one(FOLDER).orElse(null);
    this.next = line.one(NEXT).orElse(null);
    this.force = line.is(FORCE);
    this.messages = MessageOptions.of(line);
    if (on.isPresent() && begin == null) {
      throw new WrongCommandLine("--on goes with --begin");
    }
    if (begin != null && !add.isEmpty()) {
      throw new WrongCommandLine("--begin and --add: one after the other");
    }
  }

  /** A day of the calendar. */
  private record Day() implements ValueKind<LocalDate> {
    @Override
    public LocalDate read(String name, String word) throws WrongCommandLine {
      try {
        return LocalDate.parse(word);
      } catch (DateTimeException e) {
        throw new WrongCommandLine(
            name + ": " + word + " is no day of the calendar, as 2026-03-31");
      }
    }

    /** When somebody was seen is told to nobody. */
    @Override
    public boolean isPrivate() {
      return true;
    }
  }

  @Override
  public int call() throws IOException {
    try {
      CourseFile course = new CourseFile(file);
      Courses.CourseRead read =
          begin != null ? course.begin(begin, on) : add.isEmpty() ? course.read() : course.add(add);
      if (!read.ok()) {
        return wrong(read.errors());
      }
      if (begin != null || !add.isEmpty()) {
        messages.say(file + (begin != null ? ": begun" : ": one visit added"), streams);
      }
      return told(read);
    } catch (FileProblem problem) {
      return WriteFailure.tell(problem, streams);
    }
  }

  private int wrong(List<InputError> errors) throws IOException {
    if (messages.json()) {
      streams.out().print(FindingsJson.text(false, errors, List.of()));
    } else {
      errors.forEach(error -> streams.err().println(error.message()));
    }
    return ExitStatus.WRONG_INPUT.code();
  }

  private int told(Courses.CourseRead read) {
    FollowUp told = FollowUp.of(read.course());
    write(told);
    if (messages.json()) {
      streams.out().print(FollowUpReport.of(told, read.cautions()).json());
    } else {
      messages.tell(read.cautions(), streams);
      streams.out().print(text(told));
    }
    return next == null || told.next().ok()
        ? ExitStatus.DONE.code()
        : ExitStatus.DESIGN_REFUSED.code();
  }

  private void write(FollowUp told) {
    Map<Path, Content> files = new LinkedHashMap<>();
    if (folder != null) {
      WholeFile.makeFolder(folder);
      byte[] pdf = FollowUpDocument.pdf(told);
      byte[] csv = FollowUpTable.csv(told).getBytes(StandardCharsets.UTF_8);
      files.put(folder.resolve("follow-up.pdf"), out -> out.write(pdf));
      files.put(folder.resolve("follow-up.csv"), out -> out.write(csv));
    }
    if (next != null && told.next().ok()) {
      byte[] order = told.next().text().getBytes(StandardCharsets.UTF_8);
      WholeFile.makeFolderOf(next);
      files.put(next, out -> out.write(order));
    }
    if (!files.isEmpty()) {
      WholeFile.writeAll(files, force);
    }
  }

  private static String text(FollowUp told) {
    FollowUpWords words = new FollowUpWords(told);
    StringBuilder text = new StringBuilder();
    line(text, "%s", words.head());
    line(text, "");
    line(text, "%s", words.verdict());
    told.reasons().forEach(reason -> line(text, "- %s", reason.sentence()));
    line(text, "");
    line(
        text,
        "%5s  %-10s %9s %9s %9s %9s %9s %9s %6s",
        "visit",
        "",
        "short of",
        "since",
        "since",
        "flexion",
        "since",
        "hours",
        "piece");
    line(
        text,
        "%5s  %-10s %9s %9s %9s %9s %9s %9s %6s",
        "",
        "",
        "extension",
        "first",
        "last",
        "",
        "first",
        "",
        "");
    for (VisitLine visit : told.lines()) {
      line(
          text,
          "%5d  %-10s %9s %9s %9s %9s %9s %9s %6d",
          visit.number(),
          visit.visit().time().shown(),
          FollowUpWords.shown(visit.deficit()),
          FollowUpWords.change(visit.sinceFirst()),
          FollowUpWords.change(visit.sinceBefore()),
          FollowUpWords.shown(visit.flexion()),
          FollowUpWords.change(visit.flexionSinceFirst()),
          FollowUpWords.shown(visit.visit().hoursWorn()),
          visit.piece());
    }
    line(text, "Degrees; + means lost, a star means that the change counts.");
    section(text, "The present piece on today's finger", words.now());
    section(text, "The next piece: what changes", words.next());
    section(text, "What counts as a change", words.counts());
    line(text, "");
    line(text, "Estimate, for comparison; does not clear a piece for use.");
    return text.toString();
  }

  private static void section(StringBuilder text, String heading, List<String> lines) {
    line(text, "");
    line(text, "%s", heading);
    lines.forEach(one -> line(text, "- %s", one));
  }

  private static void line(StringBuilder text, String form, Object... values) {
    text.append(String.format(Locale.ROOT, form, values).stripTrailing()).append('\n');
  }
}
