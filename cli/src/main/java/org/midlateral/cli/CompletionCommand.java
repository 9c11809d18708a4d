package org.midlateral.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the shell's completion of this command. */
@Command(
    name = "completion",
    description = {
      "Writes completion for bash and zsh.",
      "In bash: source <(midlateral completion)"
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  midlateral completion > midlateral-completion",
      "  midlateral completion | sudo tee /etc/bash_completion.d/midlateral"
    })
final class CompletionCommand implements Callable<Integer> {

  private final StandardStreams streams;

  @Spec private CommandSpec spec;

  CompletionCommand(StandardStreams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.out().print(AutoComplete.bash("midlateral", spec.root().commandLine()));
    return ExitStatus.DONE.code();
  }
}
