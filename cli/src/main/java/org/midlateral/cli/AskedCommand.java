package org.midlateral.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.midlateral.measurement.Order;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * A command as it was asked for, to be told of where it met a defect.
 *
 * @param words its name and options; what names a file or a key is left out
 * @param orders that it has read
 * @param folder that its output goes to, if it writes any
 */
record AskedCommand(List<String> words, List<Order> orders, Optional<Path> folder) {

  AskedCommand {
    words = List.copyOf(words);
    orders = List.copyOf(orders);
  }

  /** The command that was parsed last, as far as it was. */
  static AskedCommand of(CommandLine line) {
    CommandLine command = line;
    while (command.getParseResult() != null && command.getParseResult().hasSubcommand()) {
      command = command.getParseResult().subcommand().commandSpec().commandLine();
    }
    List<String> words = new ArrayList<>(List.of(command.getCommandSpec().qualifiedName()));
    List<Order> orders = new ArrayList<>();
    for (Object options : command.getMixins().values()) {
      if (options instanceof InputOptions input) {
        orders.addAll(input.orders());
      }
    }
    ParseResult parsed = command.getParseResult();
    if (parsed == null) {
      return new AskedCommand(words, orders, Optional.empty());
    }
    parsed.matchedArgs().stream().distinct().map(AskedCommand::word).forEach(words::add);
    Optional<Path> folder =
        Optional.ofNullable(parsed.matchedOption("--out")).map(AskedCommand::folder);
    return new AskedCommand(words, orders, folder);
  }

  /** The folder that is written into, or that of the one file that is written. */
  private static Path folder(OptionSpec out) {
    Path path = out.getValue();
    return out.paramLabel().equals("DIR") ? path : path.toAbsolutePath().getParent();
  }

  private static String word(ArgSpec arg) {
    String name = arg instanceof OptionSpec option ? option.longestName() : "";
    if (arg.arity().max() == 0) {
      return name;
    }
    boolean free =
        Arrays.stream(arg.auxiliaryTypes())
            .anyMatch(type -> type == Path.class || type == String.class);
    String value = free ? arg.paramLabel() : String.join(",", arg.originalStringValues());
    return (name + " " + value).strip();
  }
}
