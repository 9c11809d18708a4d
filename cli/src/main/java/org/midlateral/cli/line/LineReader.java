package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.DefaultParser.NonOptionAction;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.midlateral.cli.line.ReadLine.Given;

/**
 * Reads a command's line.
 *
 * <p>A word that begins with a dash and names no option is handed to the library behind three
 * dashes more, and so is a value that is joined to its option: the library would take {@code -json}
 * for {@code --json}, and {@code -outer} for {@code --out er}. Fewer it would take off again.
 */
public final class LineReader {
  /** Ends the options: all behind it stands for itself. */
  private static final String END = "--";

  private static final String SHIELD = "---";

  private final CommandForm form;
  private final Options options = new Options();
  private final Map<String, Given<?>> given = new LinkedHashMap<>();
  private Optional<String> surplus = Optional.empty();

  private LineReader(CommandForm form) {
    this.form = form;
    for (Parameter<?> each : form.parameters()) {
      if (each.isOption()) {
        options.addOption(
            Option.builder(each.letter().isEmpty() ? null : each.letter().substring(1))
                .longOpt(each.name().substring(2))
                .hasArg(each.takesValue())
                .get());
      }
    }
  }

  /**
   * Reads the words behind a command's name.
   *
   * @throws WrongCommandLine where they cannot be understood; who asks for help or for the version
   *     gets it even where something is missing or one word too many
   */
  public static ReadLine read(CommandForm form, List<String> words) throws WrongCommandLine {
    return new LineReader(form).read(words);
  }

  private ReadLine read(List<String> words) throws WrongCommandLine {
    int end = words.indexOf(END);
    CommandLine line = parsed(end < 0 ? words : words.subList(0, end));
    for (String word : line.getArgList()) {
      rest(word);
    }
    for (String word : end < 0 ? List.<String>of() : words.subList(end + 1, words.size())) {
      plain(word);
    }
    for (Option option : line.getOptions()) {
      Parameter<?> named = named("--" + option.getLongOpt());
      add(named, named.takesValue() ? unshielded(option.getValue()) : FlagValue.GIVEN);
    }
    ReadLine read = new ReadLine(given);
    if (!read.is(Parameter.HELP) && !read.is(Parameter.VERSION)) {
      requireAll();
      if (surplus.isPresent()) {
        throw new WrongCommandLine(surplus.get());
      }
    }
    return read;
  }

  private CommandLine parsed(List<String> words) throws WrongCommandLine {
    String[] shielded = new String[words.size()];
    for (int i = 0; i < shielded.length; i++) {
      shielded[i] = shielded(words.get(i));
    }
    try {
      return DefaultParser.builder()
          .setAllowPartialMatching(false)
          .setStripLeadingAndTrailingQuotes(false)
          .get()
          .parse(options, null, NonOptionAction.SKIP, shielded);
    } catch (MissingArgumentException e) {
      Parameter<?> named = named("--" + e.getOption().getLongOpt());
      throw new WrongCommandLine(named.asTyped() + " must be given");
    } catch (ParseException e) {
      throw new WrongCommandLine(e.getMessage());
    }
  }

  private String shielded(String word) {
    if (!word.startsWith("-") || word.length() == 1) {
      return word;
    }
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    if (!isNameOfOption(name)) {
      return SHIELD + word;
    }
    return equals >= 0 && word.startsWith("-", equals + 1)
        ? name + "=" + SHIELD + word.substring(equals + 1)
        : word;
  }

  private static String unshielded(String word) {
    return word.startsWith(SHIELD + "-") ? word.substring(SHIELD.length()) : word;
  }

  /** Letters may stand together; the first says whether they are meant. */
  private boolean isNameOfOption(String word) {
    return word.startsWith("--")
        ? options.hasLongOption(word)
        : word.length() > 1 && options.hasShortOption(word.substring(0, 2));
  }

  /** A word that the library took for no option, or for a flag with a value. */
  private void rest(String shielded) throws WrongCommandLine {
    String word = unshielded(shielded);
    boolean negative = word.length() > 1 && Character.isDigit(word.charAt(1));
    if (!word.startsWith("-") || word.length() == 1 || negative) {
      plain(word);
      return;
    }
    int equals = word.indexOf('=');
    Parameter<?> flag = equals < 0 ? null : named(word.substring(0, equals));
    if (flag != null) {
      add(flag, word.substring(equals + 1));
    } else {
      surplus("there is no option '" + word + "'");
    }
  }

  private void plain(String word) throws WrongCommandLine {
    Parameter<?> operand = named("");
    if (operand == null || !operand.repeatable() && given.containsKey("")) {
      surplus("'" + word + "' is one word too many; a name with blanks stands in quotation marks");
    } else {
      add(operand, word);
    }
  }

  /** The first word that is too many is told of. */
  private void surplus(String sentence) {
    if (surplus.isEmpty()) {
      surplus = Optional.of(sentence);
    }
  }

  private void add(Parameter<?> parameter, String word) throws WrongCommandLine {
    Given<?> found = given.get(parameter.name());
    if (found == null) {
      found = Given.nothing(parameter);
      given.put(parameter.name(), found);
    }
    found.add(word);
  }

  private Parameter<?> named(String name) {
    for (Parameter<?> each : form.parameters()) {
      if (each.name().equals(name)) {
        return each;
      }
    }
    return null;
  }

  /** What stands for itself is told of first, then options, as a line is typed. */
  private void requireAll() throws WrongCommandLine {
    List<String> missing = new ArrayList<>();
    for (Parameter<?> each : form.parameters()) {
      if (each.required() && !given.containsKey(each.name())) {
        missing.add(each.isOption() ? missing.size() : 0, each.asTyped());
      }
    }
    if (!missing.isEmpty()) {
      throw new WrongCommandLine(String.join(" and ", missing) + " must be given");
    }
  }
}
