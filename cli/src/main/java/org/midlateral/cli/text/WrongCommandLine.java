package org.midlateral.cli.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * A command line that cannot be understood, told in words for who typed it.
 *
 * @param whole the command with all others under it
 * @param why what its reader says
 * @param words as they were typed
 */
public record WrongCommandLine(CommandLine whole, ParameterException why, List<String> words) {
  public WrongCommandLine {
    words = List.copyOf(words);
  }

  /** The command that is to be asked for help. */
  public String command() {
    CommandLine asked = namesNoCommand() ? whole : why.getCommandLine();
    return asked.getCommandSpec().qualifiedName();
  }

  /** What is wrong, in one line. */
  public String sentence() {
    return told().replaceAll("\\p{Cntrl}+", " ");
  }

  private String told() {
    if (namesNoCommand()) {
      return "there is no command '" + words.get(0) + "'";
    }
    if (why instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing.getMissing());
    }
    if (why instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      String word = unmatched.getUnmatched().get(0);
      return unmatched.isUnknownOption()
          ? "there is no option '" + word + "'"
          : "'" + word + "' is one word too many; a name with blanks stands in quotation marks";
    }
    if (why.getArgSpec() != null && why.getValue() != null) {
      return wrong(why.getArgSpec(), why.getValue(), String.valueOf(why.getMessage()));
    }
    return String.valueOf(why.getMessage());
  }

  /** A value that cannot be read, and what is allowed in its place. */
  private static String wrong(ArgSpec arg, String value, String told) {
    String name = arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    Class<?> type = arg.auxiliaryTypes()[0];
    if (arg.arity().max() == 0) {
      return name + " takes no value, and '" + value + "' is one";
    }
    if (type.isEnum() && arg.converters().length == 0) {
      String allowed =
          Arrays.stream(type.getEnumConstants())
              .map(each -> each.toString().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(", "));
      return name + ": '" + value + "' is none of " + allowed;
    }
    if (type == int.class || type == long.class) {
      boolean tooLarge = value.matches("[+-]?\\d+");
      return name + ": '" + value + (tooLarge ? "' is too large" : "' is not a whole number");
    }
    if (type == double.class || type == Double.class) {
      return name + ": '" + value + "' is not a number; decimals follow a point";
    }
    // The reader of the value says it, behind the library's words for where it stands.
    return name + ": " + told.substring(told.indexOf(": ") + 2);
  }

  /** The first word is a command; a misspelt one may stand before the name of another. */
  private boolean namesNoCommand() {
    return !words.isEmpty()
        && !words.get(0).startsWith("-")
        && !whole.getSubcommands().containsKey(words.get(0));
  }

  /** Files and the like first, then options, as a line is typed. */
  private static String missing(List<ArgSpec> missing) {
    Stream<ArgSpec> values = missing.stream().filter(ArgSpec::isPositional);
    Stream<ArgSpec> options = missing.stream().filter(ArgSpec::isOption);
    return Stream.concat(values, options)
            .map(WrongCommandLine::name)
            .collect(Collectors.joining(" and "))
        + " must be given";
  }

  private static String name(ArgSpec arg) {
    return arg instanceof OptionSpec option
        ? option.longestName() + " " + arg.paramLabel()
        : arg.paramLabel();
  }
}
