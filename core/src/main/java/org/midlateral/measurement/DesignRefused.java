package org.midlateral.measurement;

/** A design that cannot be made, with the finding that tells what to change. */
public final class DesignRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Finding finding;

  /**
   * A refusal.
   *
   * @param finding of severity refusal
   */
  public DesignRefused(Finding finding) {
    super(finding.text());
    this.finding = finding;
  }

  /** What is the matter and what to change. */
  public Finding finding() {
    return finding;
  }
}
