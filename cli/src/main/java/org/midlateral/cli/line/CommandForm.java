package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.List;

/**
 * What a command's line may hold, and what its help tells.
 *
 * @param told paragraphs on what it does; the first is one line
 * @param parameters it takes, those of every command among them
 * @param examples lines that can be typed as they stand
 */
public record CommandForm(List<String> told, List<Parameter<?>> parameters, List<String> examples) {

  public CommandForm {
    told = List.copyOf(told);
    parameters = List.copyOf(parameters);
    examples = List.copyOf(examples);
  }

  /** A command that does this, and takes as yet what every command takes. */
  public static CommandForm of(String... told) {
    return new CommandForm(List.of(told), List.of(Parameter.HELP, Parameter.VERSION), List.of());
  }

  /** The same command, which takes these too. */
  public CommandForm with(List<Parameter<?>> more) {
    List<Parameter<?>> all = new ArrayList<>(parameters);
    all.addAll(more);
    return new CommandForm(told, all, examples);
  }

  /** The same command, which takes these too. */
  public CommandForm with(Parameter<?>... more) {
    return with(List.of(more));
  }

  /** The same command with its examples. */
  public CommandForm examples(String... lines) {
    return new CommandForm(told, parameters, List.of(lines));
  }
}
