package org.midlateral.cli.line;

/**
 * What may stand in a command's line, as it is declared.
 *
 * @param name with its dashes; empty for what stands for itself
 * @param letter that may stand for the name, or empty
 * @param label of its value in the help; empty for a flag
 * @param kind of its value
 * @param required whether it must be given
 * @param repeatable whether it may be given more than once
 * @param description for the help; the kind's words take the place of {@value #WORDS} in it
 */
public record Parameter<T>(
    String name,
    String letter,
    String label,
    ValueKind<T> kind,
    boolean required,
    boolean repeatable,
    String description) {

  /** Stands in a description for the words that its kind allows. */
  public static final String WORDS = "{words}";

  /** Label of a folder. */
  public static final String FOLDER = "DIR";

  /** Asks for help. */
  public static final Parameter<Boolean> HELP =
      new Parameter<>(
          "--help", "-h", "", new FlagValue(), false, false, "Show this help message and exit.");

  /** Asks for the program's version. */
  public static final Parameter<Boolean> VERSION =
      new Parameter<>(
          "--version",
          "-V",
          "",
          new FlagValue(),
          false,
          false,
          "Print version information and exit.");

  /** An option without a value. */
  public static Parameter<Boolean> flag(String name, String description) {
    return new Parameter<>(name, "", "", new FlagValue(), false, false, description);
  }

  /** An option with a value. */
  public static <T> Parameter<T> option(
      String name, String label, ValueKind<T> kind, String description) {
    return new Parameter<>(name, "", label, kind, false, false, description);
  }

  /** What stands for itself, and must be there. */
  public static <T> Parameter<T> operand(String label, ValueKind<T> kind, String description) {
    return new Parameter<>("", "", label, kind, true, false, description);
  }

  /** The same, once it must be given. */
  public Parameter<T> needed() {
    return new Parameter<>(name, letter, label, kind, true, repeatable, description);
  }

  /** The same, where it may be left out. */
  public Parameter<T> omissible() {
    return new Parameter<>(name, letter, label, kind, false, repeatable, description);
  }

  /** The same, where it may be given more than once. */
  public Parameter<T> repeated() {
    return new Parameter<>(name, letter, label, kind, required, true, description);
  }

  /** Whether a name goes before it. */
  public boolean isOption() {
    return !name.isEmpty();
  }

  /** Whether a value follows its name, or it is one. */
  public boolean takesValue() {
    return !label.isEmpty();
  }

  /** How a sentence names it. */
  public String shortName() {
    return isOption() ? name : label;
  }

  /** Its name and the label of its value, as they are typed. */
  public String asTyped() {
    return (name + " " + label).strip();
  }
}
