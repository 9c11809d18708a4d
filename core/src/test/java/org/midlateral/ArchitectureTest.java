package org.midlateral;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.midlateral.architecture.ModuleRules;

/** Each package of the library knows only those before it on the data's way. */
class ArchitectureTest {
  private static final String ROOT = "org.midlateral.";

  /** The data's way, from the tape to the files. */
  private static final List<String> WAY =
      List.of(
          "work",
          "json",
          "accuracy",
          "measurement",
          "digit",
          "cut",
          "piece",
          "trough",
          "relief",
          "shell",
          "mesh",
          "solid",
          "inspection",
          "pose",
          "mechanics",
          "document",
          "recipe");

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.midlateral");

  @TestFactory
  List<DynamicTest> eachPackageLooksOnlyBack() {
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i + 1 < WAY.size(); i++) {
      String here = WAY.get(i);
      String[] later =
          WAY.subList(i + 1, WAY.size()).stream()
              .map(ArchitectureTest::within)
              .toArray(String[]::new);
      tests.add(
          DynamicTest.dynamicTest(
              here,
              () ->
                  noClasses()
                      .that()
                      .resideInAPackage(within(here))
                      .should()
                      .dependOnClassesThat()
                      .resideInAnyPackage(later)
                      .allowEmptyShould(true)
                      .check(LIBRARY)));
    }
    return tests;
  }

  @Test
  void everyPackageStandsOnTheWay() {
    List<String> unknown =
        LIBRARY.stream()
            .map(c -> c.getPackageName())
            .filter(name -> !name.equals(ROOT + "shared"))
            .map(name -> name.substring(ROOT.length()).split("\\.")[0])
            .distinct()
            .filter(name -> !WAY.contains(name))
            .toList();

    assertThat(unknown).isEmpty();
  }

  @TestFactory
  List<DynamicTest> theRulesOfEveryModuleHold() {
    return new ModuleRules(LIBRARY, Path.of("src", "main", "java")).tests();
  }

  @Test
  void nobodyKnowsTheCommandLineOrTheViewer() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            within("cli"), within("viewer"), "org.apache.commons.cli..", "com.jme3..")
        .check(LIBRARY);
  }

  /** Those who catch whatever there is tell of a defect, or throw it again when they are done. */
  @Test
  void nobodyTakesAMistakeForAnOutcome() {
    assertThat(new ModuleRules(LIBRARY, Path.of("src", "main", "java")).catchersOfMistakes())
        .containsExactlyInAnyOrder("Defect", "WholeFile", "OrderJob");
  }

  @Test
  void publicFieldsDoNotChange() {
    fields().that().arePublic().should().beFinal().check(LIBRARY);
  }

  private static String within(String name) {
    return ROOT + name + "..";
  }
}
