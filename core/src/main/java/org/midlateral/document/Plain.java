package org.midlateral.document;

/** Names as the plain text formats can hold them: without spaces and outlandish letters. */
final class Plain {
  private Plain() {}

  static String word(String name) {
    return name.replaceAll("[^A-Za-z0-9._-]", "_");
  }
}
