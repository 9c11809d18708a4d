package org.midlateral.cli.line;

/** Any word, as it stands. */
public class TextValue implements ValueKind<String> {
  @Override
  public final String read(String name, String word) {
    return word;
  }

  @Override
  public final boolean isPrivate() {
    return true;
  }
}
