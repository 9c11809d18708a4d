package org.midlateral.viewer.window;

import java.awt.GraphicsEnvironment;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Window tests run where there is a display. Without one they are skipped, and say so, unless the
 * environment variable CI is set: there they must run.
 */
public final class OnDisplay implements ExecutionCondition {
  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    if (!GraphicsEnvironment.isHeadless()) {
      return ConditionEvaluationResult.enabled("there is a display");
    }
    String name = context.getDisplayName();
    if (System.getenv("CI") != null) {
      throw new IllegalStateException(
          name + " must run here (CI is set), but there is no display: use xvfb-run");
    }
    System.out.println("Skipped without a display: " + name + " (xvfb-run gives one)");
    return ConditionEvaluationResult.disabled("no display");
  }
}
