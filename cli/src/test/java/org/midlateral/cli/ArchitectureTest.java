package org.midlateral.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.midlateral.architecture.ModuleRules;

/** The viewer and the command line keep the rules of every module, and one way between them. */
class ArchitectureTest {
  private static final Path SOURCES = Path.of("src", "main", "java");

  private static final ModuleRules VIEWER =
      ModuleRules.of("org.midlateral.viewer", Path.of("..", "viewer").resolve(SOURCES));

  private static final ModuleRules COMMAND_LINE = ModuleRules.of("org.midlateral.cli", SOURCES);

  @TestFactory
  List<DynamicTest> theViewerKeepsTheRules() {
    return VIEWER.tests();
  }

  @TestFactory
  List<DynamicTest> theCommandLineKeepsTheRules() {
    return COMMAND_LINE.tests();
  }

  /** These tell of a defect. */
  @Test
  void nobodyTakesAMistakeForAnOutcome() {
    assertThat(VIEWER.catchersOfMistakes()).containsExactlyInAnyOrder("MadeDraft", "Worker");
    assertThat(COMMAND_LINE.catchersOfMistakes()).containsExactly("Main");
  }

  @Test
  void theViewerDoesNotKnowTheCommandLine() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.midlateral.cli..", "org.apache.commons.cli..")
        .check(VIEWER.classes());
  }
}
