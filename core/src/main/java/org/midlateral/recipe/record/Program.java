package org.midlateral.recipe.record;

import org.midlateral.shared.SharedData;

/**
 * The program that made an order's files.
 *
 * @param name of it
 * @param version of it
 * @param build its commit, or {@code dev} where it was built in no clone
 * @param java version and maker of the Java it ran on
 */
public record Program(String name, String version, String build, String java) {
  private static final Program CURRENT =
      new Program(
          "midlateral",
          SharedData.version(),
          SharedData.build(),
          Runtime.version() + ", " + System.getProperty("java.vendor", "unknown"));

  /** This one. */
  public static Program current() {
    return CURRENT;
  }

  /** Whether another one makes the same of the same input: Java may differ, the build may not. */
  boolean makesTheSameAs(Program other) {
    return name.equals(other.name) && version.equals(other.version) && build.equals(other.build);
  }
}
