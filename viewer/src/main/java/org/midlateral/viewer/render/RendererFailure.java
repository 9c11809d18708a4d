package org.midlateral.viewer.render;

/** The machine cannot draw; the message says what is missing. */
public final class RendererFailure extends Exception {
  private static final long serialVersionUID = 1;

  RendererFailure(String message, Throwable cause) {
    super(message, cause);
  }
}
