package org.midlateral.viewer.stage;

/** The machine cannot draw; the message says what is missing. */
public final class StageFailure extends Exception {
  private static final long serialVersionUID = 1;

  StageFailure(String message, Throwable cause) {
    super(message, cause);
  }
}
