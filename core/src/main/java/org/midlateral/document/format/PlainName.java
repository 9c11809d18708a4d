package org.midlateral.document.format;

/** Names as the plain text formats can hold them: without spaces and outlandish letters. */
final class PlainName {
  private PlainName() {}

  static String word(String name) {
    return name.replaceAll("[^A-Za-z0-9._-]", "_");
  }
}
