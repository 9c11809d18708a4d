package org.midlateral.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * What holds in every module: no cycle of packages or of classes, small packages, and names that
 * stand for one thing only.
 *
 * @param classes of the module, without its tests
 * @param sources folder of its sources
 */
public record ModuleRules(JavaClasses classes, Path sources) {
  private static final int MOST_FILES = 25;

  private static final Set<String> MISTAKES =
      Set.of(
          "RuntimeException",
          "IllegalArgumentException",
          "IllegalStateException",
          "ArithmeticException",
          "NullPointerException",
          "IndexOutOfBoundsException");

  /** Packages of the JDK whose names every reader knows. */
  private static final List<String> JDK_PACKAGES =
      List.of(
          "java.lang",
          "java.util",
          "java.io",
          "java.nio.file",
          "java.awt",
          "javax.swing",
          "java.time");

  /**
   * The rules for all classes below a package.
   *
   * @param sources folder of their sources
   */
  public static ModuleRules of(String root, Path sources) {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(root);
    return new ModuleRules(classes, sources);
  }

  /** One test a rule. */
  public List<DynamicTest> tests() {
    return List.of(
        DynamicTest.dynamicTest("packages form no cycle", this::packagesFormNoCycle),
        DynamicTest.dynamicTest("classes form no cycle", this::classesFormNoCycle),
        DynamicTest.dynamicTest("no package is large", this::noPackageIsLarge),
        DynamicTest.dynamicTest("no name stands for two types", this::noNameStandsForTwo),
        DynamicTest.dynamicTest("no name is one of the JDK's", this::noNameIsTheJdks));
  }

  /**
   * Classes that catch what a mistake of the program throws. What may come of an input has
   * exceptions of its own; so these must be few, and each for a reason.
   */
  public Set<String> catchersOfMistakes() {
    return classes.stream()
        .flatMap(one -> one.getCodeUnits().stream())
        .filter(
            unit ->
                unit.getTryCatchBlocks().stream()
                    .flatMap(block -> block.getCaughtThrowables().stream())
                    .anyMatch(caught -> MISTAKES.contains(caught.getSimpleName())))
        .map(unit -> topLevel(unit.getOwner()).getSimpleName())
        .collect(Collectors.toSet());
  }

  private void packagesFormNoCycle() {
    slices().matching("org.midlateral.(**)").should().beFreeOfCycles().check(classes);
  }

  /** A class and those nested in it count as one. */
  private void classesFormNoCycle() {
    slices()
        .assignedFrom(
            new SliceAssignment() {
              @Override
              public SliceIdentifier getIdentifierOf(JavaClass one) {
                return SliceIdentifier.of(topLevel(one).getName());
              }

              @Override
              public String getDescription() {
                return "classes with those nested in them";
              }
            })
        .should()
        .beFreeOfCycles()
        .check(classes);
  }

  private static JavaClass topLevel(JavaClass one) {
    return one.getEnclosingClass().map(ModuleRules::topLevel).orElse(one);
  }

  private void noPackageIsLarge() throws IOException {
    try (Stream<Path> all = Files.walk(sources)) {
      Map<Path, Long> files =
          all.filter(file -> file.toString().endsWith(".java"))
              .collect(Collectors.groupingBy(Path::getParent, Collectors.counting()));
      assertThat(files).isNotEmpty();
      assertThat(files).allSatisfy((folder, n) -> assertThat(n).isLessThanOrEqualTo(MOST_FILES));
    }
  }

  private void noNameStandsForTwo() {
    Map<String, List<String>> byName =
        named()
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    Collectors.mapping(JavaClass::getName, Collectors.toList())));
    assertThat(byName).isNotEmpty();
    assertThat(byName.values()).filteredOn(types -> types.size() > 1).isEmpty();
  }

  private void noNameIsTheJdks() throws IOException, ClassNotFoundException {
    Set<String> jdk = new TreeSet<>();
    for (String each : JDK_PACKAGES) {
      jdk.addAll(publicNames(each));
    }
    assertThat(jdk).contains("Object", "List", "File", "Files", "Color", "JPanel", "Duration");
    assertThat(named().map(JavaClass::getSimpleName)).filteredOn(jdk::contains).isEmpty();
  }

  /** Types with a name that others see; what is private is seen in one file only. */
  private Stream<JavaClass> named() {
    return classes.stream()
        .filter(DescribedPredicate.not(JavaClass.Predicates.ANONYMOUS_CLASSES))
        .filter(one -> !one.isLocalClass())
        .filter(one -> !one.getModifiers().contains(JavaModifier.PRIVATE))
        .filter(one -> !one.getModifiers().contains(JavaModifier.SYNTHETIC));
  }

  /** The public top-level types of a package of the JDK that runs. */
  private static Set<String> publicNames(String packageName)
      throws IOException, ClassNotFoundException {
    FileSystem jdk = FileSystems.getFileSystem(URI.create("jrt:/"));
    Set<String> names = new TreeSet<>();
    for (Path module : list(jdk.getPath("packages", packageName))) {
      Path folder =
          jdk.getPath("modules", module.getFileName().toString(), packageName.replace('.', '/'));
      for (Path file : list(folder)) {
        String name = file.getFileName().toString();
        if (name.endsWith(".class") && !name.contains("$") && !name.contains("-")) {
          String simple = name.substring(0, name.length() - ".class".length());
          Class<?> type =
              Class.forName(
                  packageName + "." + simple, false, ClassLoader.getPlatformClassLoader());
          if (Modifier.isPublic(type.getModifiers())) {
            names.add(simple);
          }
        }
      }
    }
    return names;
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
