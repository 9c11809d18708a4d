package org.midlateral.recipe.course;

/** What a course comes to, the least serious first. */
public enum CourseVerdict {
  KEEP("Keep the piece"),
  ADJUST("Adjust the piece"),
  REMAKE("Remould or reprint the piece"),
  REVIEW("Review the plan with whoever is responsible");

  private final String words;

  CourseVerdict(String words) {
    this.words = words;
  }

  /** In words, without a full stop. */
  public String words() {
    return words;
  }
}
