package org.midlateral.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a course of visits tells, and what follows from it. */
@Command(
    name = "follow-up",
    description = {
      "Reads a course of visits: whether extension is kept, and what to do.",
      "A course is a measurement file with visits under it. It also says how the piece sits"
          + " today. Estimate, for comparison; does not clear a piece for use."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral follow-up course.yaml --out out/weeks",
      "  midlateral follow-up course.yaml --add date=2026-03-31 --add hours-worn=8"
    })
final class FollowUpCommand implements Callable<Integer> {

  private final StandardStreams streams;

  @Spec private CommandSpec spec;
  @Mixin private MessageOptions messages;

  @Parameters(paramLabel = "FILE", description = "The course.")
  private Path file;

  @Option(
      names = "--begin",
      paramLabel = "ORDER",
      description =
          "Begins FILE, which is not there yet: this measurement file, its readings as first"
              + " visit.")
  private Path begin;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Date of that visit, as 2026-03-31; without it, visits are counted by days.")
  private String on;

  @Option(
      names = "--add",
      paramLabel = "KEY=VALUE",
      description = "A reading of one more visit, which is added to FILE; once for each reading.")
  private List<String> add = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for follow-up.pdf and follow-up.csv; made where it is missing.")
  private Path folder;

  @Option(
      names = "--next",
      paramLabel = "ORDER",
      description = "Writes the measurement file of the next piece, with what changed.")
  private Path next;

  @Option(names = "--force", description = "Replaces what --out and --next write; never a course.")
  private boolean force;

  FollowUpCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    if (on != null && begin == null) {
      throw new ParameterException(spec.commandLine(), "--on goes with --begin");
    }
    if (begin != null && !add.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "--begin and --add: one after the other");
    }
    Optional<LocalDate> date = date();
    try {
      CourseFile course = new CourseFile(file);
      Courses.CourseRead read =
          begin != null
              ? course.begin(begin, date)
              : add.isEmpty() ? course.read() : course.add(add);
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

  private Optional<LocalDate> date() {
    try {
      return Optional.ofNullable(on).map(LocalDate::parse);
    } catch (DateTimeException e) {
      throw new ParameterException(
          spec.commandLine(), "--on: " + on + " is no day of the calendar, as 2026-03-31", e);
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
