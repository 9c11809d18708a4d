package org.midlateral.cli;

/** How a run ends. */
enum ExitStatus {
  DONE(0),
  /** A defect of ours. */
  DEFECT(1),
  /** The command line or the input is wrong. */
  WRONG_INPUT(2),
  /** The input is right, and the design, or its dorsal shell alone, fails a check. */
  DESIGN_REFUSED(3),
  /** The machine failed us: disk full, no display, no memory. */
  MACHINE(4);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
