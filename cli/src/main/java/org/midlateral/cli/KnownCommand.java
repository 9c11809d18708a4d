package org.midlateral.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.ReadLine;
import org.midlateral.cli.line.ReadyCommand;
import org.midlateral.cli.line.WrongCommandLine;

/** The commands, in the order of the help. */
enum KnownCommand {
  TEMPLATE,
  CHECK,
  MAKE,
  VIEW,
  RIGIDITY,
  REFIT,
  FOLLOW_UP,
  BATCH,
  VERIFY,
  PLATE,
  EXPLAIN,
  COMPLETION;

  /** As it is typed. */
  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The command that a word names. */
  static Optional<KnownCommand> named(String word) {
    for (KnownCommand each : values()) {
      if (each.word().equals(word)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /** The forms of all, by name. */
  static Map<String, CommandForm> forms() {
    Map<String, CommandForm> forms = new LinkedHashMap<>();
    for (KnownCommand each : values()) {
      forms.put(each.word(), each.form());
    }
    return forms;
  }

  /** What its line may hold. No other command's classes are loaded for it. */
  CommandForm form() {
    return switch (this) {
      case TEMPLATE -> TemplateCommand.FORM;
      case CHECK -> CheckCommand.FORM;
      case MAKE -> MakeCommand.FORM;
      case VIEW -> ViewCommand.FORM;
      case RIGIDITY -> RigidityCommand.FORM;
      case REFIT -> RefitCommand.FORM;
      case FOLLOW_UP -> FollowUpCommand.FORM;
      case BATCH -> BatchCommand.FORM;
      case VERIFY -> VerifyCommand.FORM;
      case PLATE -> PlateCommand.FORM;
      case EXPLAIN -> ExplainCommand.FORM;
      case COMPLETION -> CompletionCommand.FORM;
    };
  }

  /**
   * The command that a line asks for.
   *
   * @throws WrongCommandLine where what it asks for does not go together
   */
  ReadyCommand ready(ReadLine line, StandardStreams streams) throws WrongCommandLine {
    return switch (this) {
      case TEMPLATE -> new TemplateCommand(line, streams);
      case CHECK -> new CheckCommand(line, streams);
      case MAKE -> new MakeCommand(line, streams);
      case VIEW -> new ViewCommand(line);
      case RIGIDITY -> new RigidityCommand(line, streams);
      case REFIT -> new RefitCommand(line, streams);
      case FOLLOW_UP -> new FollowUpCommand(line, streams);
      case BATCH -> new BatchCommand(line, streams);
      case VERIFY -> new VerifyCommand(line, streams);
      case PLATE -> new PlateCommand(line, streams);
      case EXPLAIN -> new ExplainCommand(line, streams);
      case COMPLETION -> new CompletionCommand(forms(), streams);
    };
  }
}
