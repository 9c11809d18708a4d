package org.midlateral.cli;

import org.midlateral.document.FileProblem;

/** A file that could not be written. */
final class WriteFailure {
  private WriteFailure() {}

  /** Tells why, and what to do; gives the exit status. */
  static int tell(FileProblem problem, StandardStreams streams) {
    String way = problem.kind() == FileProblem.Kind.EXISTS ? " Give --force to replace it." : "";
    streams.err().println("midlateral: " + problem.getMessage() + way);
    return switch (problem.kind()) {
      case EXISTS, IS_FOLDER, NOT_A_FOLDER -> ExitStatus.WRONG_INPUT.code();
      case NO_FOLDER, NOT_ALLOWED, FULL, FAILED -> ExitStatus.MACHINE.code();
    };
  }
}
