package org.midlateral.cli.line;

/** Nothing stands behind a flag; where something does all the same, it may be the plain truth. */
record FlagValue() implements ValueKind<Boolean> {
  /** What a flag says that is given without a value. */
  static final String GIVEN = "true";

  @Override
  public Boolean read(String name, String word) throws WrongCommandLine {
    boolean given = word.equalsIgnoreCase(GIVEN);
    if (!given && !word.equalsIgnoreCase("false")) {
      throw new WrongCommandLine(name + " takes no value, and '" + word + "' is one");
    }
    return given;
  }
}
