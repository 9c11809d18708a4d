package org.midlateral.recipe.record;

/**
 * Room for what the program cannot know. Whoever makes the pieces fills it in; the record's seal
 * leaves it out.
 *
 * @param lot of the material
 * @param machine it was made on
 * @param operator a code, no name
 */
public record Workshop(String lot, String machine, String operator) {
  /** To be filled in. */
  public static final Workshop BLANK = new Workshop("", "", "");
}
