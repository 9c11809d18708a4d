package org.midlateral.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.Parameter;
import org.midlateral.cli.line.PathValue;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.recipe.batch.OrderHomes;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.recipe.record.FolderCheck.FileState;
import org.midlateral.recipe.record.MakingRecord;

/** Whether files are as they were made. */
final class VerifyCommand implements ReadyCommand {
  private static final Parameter<Path> FOLDER =
      Parameter.operand(
          Parameter.FOLDER,
          new PathValue(),
          "Folder of an order, or of a batch: then each order's folder in it is looked at, and"
              + " superseded orders are not.");

  static final CommandForm FORM =
      CommandForm.of(
              "Tells which files are as made, changed, missing, or strange: not of the order.",
              "Byte for byte, by their records. Status 3 where anything is not as made.")
          .with(FOLDER)
          .with(MessageOptions.ALL)
          .examples("midlateral verify out/finger", "midlateral verify out/batch --json");

  private final StandardStreams streams;
  private final Path folder;
  private final MessageOptions messages;

  VerifyCommand(ReadLine line, StandardStreams streams) {
    this.streams = streams;
    this.folder = line.must(FOLDER);
    this.messages = MessageOptions.of(line);
  }

  @Override
  public int call() throws IOException {
    List<Path> homes = OrderHomes.in(folder);
    if (homes.isEmpty()) {
      String text =
          "midlateral: %s: there is no %s in it; allowed: a folder that make or batch wrote";
      streams.err().println(String.format(text, folder, MakingRecord.FILE));
      return ExitStatus.WRONG_INPUT.code();
    }
    boolean ok = true;
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeArrayFieldStart("orders");
      for (Path home : homes) {
        FolderCheck check = FolderCheck.of(home);
        ok &= check.ok();
        if (messages.json()) {
          write(check, json);
        } else {
          tell(check);
        }
      }
      json.writeEndArray();
      json.writeBooleanField("ok", ok);
      json.writeEndObject();
    }
    if (messages.json()) {
      streams.out().println(text);
    } else {
      String what = ok ? ": all is as made" : ": not all is as made";
      messages.say(folder + what + "; orders looked at: " + homes.size(), streams);
    }
    return ok ? ExitStatus.DONE.code() : ExitStatus.DESIGN_REFUSED.code();
  }

  /** A line for each file; when quiet, for those alone that are not as made. */
  private void tell(FolderCheck check) {
    check.files().entrySet().stream()
        .filter(file -> !messages.quiet() || file.getValue() != FileState.AS_MADE)
        .map(file -> check.folder().resolve(file.getKey()) + ": " + file.getValue().words())
        .forEach(streams.out()::println);
    if (check.record().isEmpty()) {
      streams.out().println(check.folder() + ": no complete record says what was made");
    }
  }

  private static void write(FolderCheck check, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("folder", check.folder().toString());
    json.writeStringField("reference", check.record().map(MakingRecord::reference).orElse(null));
    json.writeStringField("state", check.record().map(MakingRecord::state).orElse(null));
    json.writeObjectFieldStart("files");
    for (Map.Entry<String, FileState> file : check.files().entrySet()) {
      json.writeStringField(file.getKey(), file.getValue().words());
    }
    json.writeEndObject();
    json.writeBooleanField("ok", check.ok());
    json.writeEndObject();
  }
}
