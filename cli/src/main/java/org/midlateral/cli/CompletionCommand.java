package org.midlateral.cli;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

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

  private final Supplier<CommandLine> whole;
  private final StandardStreams streams;

  /**
   * A command for the completion of another.
   *
   * @param whole that other, with all commands under it
   */
  CompletionCommand(Supplier<CommandLine> whole, StandardStreams streams) {
    this.whole = whole;
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.out().print(AutoComplete.bash("midlateral", whole.get()));
    return ExitStatus.DONE.code();
  }
}
