package org.midlateral.cli;

import java.util.Map;
import org.midlateral.cli.line.CommandForm;
import org.midlateral.cli.line.CompletionScript;
import org.midlateral.cli.line.ReadyCommand;

/** Writes the shell's completion of this command. */
final class CompletionCommand implements ReadyCommand {
  static final CommandForm FORM =
      CommandForm.of(
              "Writes completion for bash and zsh.", "In bash: source <(midlateral completion)")
          .examples(
              "midlateral completion > midlateral-completion",
              "midlateral completion | sudo tee /etc/bash_completion.d/midlateral");

  private final Map<String, CommandForm> commands;
  private final StandardStreams streams;

  CompletionCommand(Map<String, CommandForm> commands, StandardStreams streams) {
    this.commands = commands;
    this.streams = streams;
  }

  @Override
  public int call() {
    streams.out().print(new CompletionScript("midlateral", commands).text());
    return ExitStatus.DONE.code();
  }
}
