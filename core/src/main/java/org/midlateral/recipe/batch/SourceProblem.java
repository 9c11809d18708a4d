package org.midlateral.recipe.batch;

/** A table or folder of orders that cannot be taken as one; the message is one sentence. */
public final class SourceProblem extends Exception {
  private static final long serialVersionUID = 1L;

  SourceProblem(String message) {
    super(message);
  }
}
