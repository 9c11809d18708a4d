package org.midlateral.measurement;

/**
 * What was asked for has no answer on this finger or under this load; the message tells a person
 * why, in a part of a sentence. Nothing is wrong with the program, and what does not hang on the
 * answer goes on without it. A design that cannot be made at all is a {@link DesignRefused}, which
 * names what to change; an argument that no caller may give is no outcome, and none of these.
 */
public class NotComputable extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * No answer.
   *
   * @param why in a part of a sentence, without a stop
   */
  public NotComputable(String why) {
    super(why);
  }
}
