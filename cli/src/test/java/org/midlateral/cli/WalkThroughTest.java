package org.midlateral.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.midlateral.LongRun;
import org.midlateral.cli.line.WrongCommandLine;

/** Every command of the walk-through and of the README's first steps does what is said. */
class WalkThroughTest {
  private static final Path ROOT = Path.of("..");
  private static final Path PAGES = ROOT.resolve("samples/walk-through");
  private static final Pattern BLOCK = Pattern.compile("```(sh|yaml)\\n(.*?)```", Pattern.DOTALL);
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)\\)");

  /** A block of a page: commands to type, or a file to write. */
  private record Block(String kind, String text) {}

  static Stream<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(PAGES, "*.md")) {
      all.forEach(pages::add);
    }
    return pages.stream().sorted().filter(page -> !page.endsWith("README.md"));
  }

  /** Two pages in every build, all of them in a long run. */
  static Stream<Path> tried() throws IOException {
    Set<String> always = Set.of("first-finger.md", "twelve-weeks.md");
    boolean all = LongRun.count(0, 1) > 0;
    return pages().filter(page -> all || always.contains(page.getFileName().toString()));
  }

  @ParameterizedTest
  @MethodSource("tried")
  @Tag(LongRun.TAG)
  void everyCommandOfAPageRuns(Path page, @TempDir Path folder) throws IOException {
    String text = Files.readString(page);
    assertThat(text.lines().filter(line -> !line.isBlank()).skip(1).findFirst().orElseThrow())
        .startsWith("*For ");
    assertThat(text).contains("\n## What to look for\n");
    int commands = 0;
    for (Block block : blocks(text)) {
      if (block.kind.equals("yaml")) {
        write(block.text, folder);
        continue;
      }
      for (String line : block.text.lines().toList()) {
        Run run = Run.of(arguments(line, folder));
        assertThat(run.status()).as("%s%n%s%s", line, run.out(), run.err()).isZero();
        commands++;
      }
    }
    assertThat(commands).isPositive();
  }

  /** Understood in every build, and run in a long one; the viewer's window has tests of its own. */
  @Test
  @Tag(LongRun.TAG)
  void everyCommandOfTheReadmeRuns(@TempDir Path folder) throws IOException, WrongCommandLine {
    boolean run = LongRun.count(0, 1) > 0;
    List<String> lines =
        blocks(Files.readString(ROOT.resolve("README.md"))).stream()
            .flatMap(block -> block.text.lines())
            .map(line -> line.replaceFirst(" +# .*", ""))
            .filter(line -> !line.startsWith("mvn "))
            .toList();
    assertThat(lines).hasSizeGreaterThan(4).anyMatch(line -> line.contains(" view "));
    for (String line : lines) {
      String[] words = arguments(line, folder);
      assertThat(line).contains(" " + Run.read(words).word());
      if (run && !line.contains(" view ")) {
        Run done = Run.of(words);
        assertThat(done.status()).as("%s%n%s%s", line, done.out(), done.err()).isZero();
      }
    }
  }

  /** Every page is listed, and no link or picture of a page is missing. */
  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    String index = Files.readString(PAGES.resolve("README.md"));
    for (Path page : pages().toList()) {
      assertThat(index).contains("(" + page.getFileName() + ")");
    }
    List<Path> all = new ArrayList<>(pages().toList());
    all.add(PAGES.resolve("README.md"));
    all.add(ROOT.resolve("README.md"));
    for (Path page : all) {
      Matcher links = LINK.matcher(Files.readString(page));
      while (links.find()) {
        assertThat(page.resolveSibling(links.group(1))).as("link of %s", page).exists();
      }
    }
  }

  /** The zip holds the pages and their pictures where the pages look for them. */
  @Test
  void thePagesAreInTheZip() throws IOException {
    assertThat(Files.readString(Path.of("src/assembly/zip.xml")))
        .contains("<include>samples/walk-through/*.md</include>")
        .contains("<include>samples/pictures/*.png</include>");
    for (Path page : pages().toList()) {
      Matcher links = LINK.matcher(Files.readString(page));
      while (links.find()) {
        assertThat(links.group(1))
            .as("link of %s", page)
            .matches("[a-z-]+\\.md|\\.\\./pictures/.*");
      }
    }
  }

  private static List<Block> blocks(String text) {
    List<Block> blocks = new ArrayList<>();
    Matcher found = BLOCK.matcher(text);
    while (found.find()) {
      blocks.add(new Block(found.group(1), found.group(2)));
    }
    return blocks;
  }

  /** A file whose first line names it; it goes in the place of the template written before. */
  private static void write(String text, Path folder) throws IOException {
    String name = text.lines().findFirst().orElseThrow().substring(2);
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static String[] arguments(String line, Path folder) {
    assertThat(line).startsWith("cli/midlateral ");
    return Arrays.stream(line.split(" "))
        .skip(1)
        .map(word -> word.startsWith("samples/") ? ROOT.resolve(word).toString() : word)
        .map(word -> word.startsWith("out/") ? folder.resolve(word).toString() : word)
        .toArray(String[]::new);
  }
}
