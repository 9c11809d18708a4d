import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Gathers the licence texts and notices of all libraries on a class path, a folder each: those in
 * their jars, and those kept beside this file. A library without a licence text ends the build.
 */
final class LicenceTexts {
  private static final Pattern TEXT =
      Pattern.compile("(?i).*(?:(licen[cs]e)|notice).*(?<!/|\\.class)");

  private final Path kept;
  private final Path out;
  private final Properties names = new Properties();

  private LicenceTexts(Path kept, Path out) throws IOException {
    this.kept = kept;
    this.out = out;
    try (InputStream in = Files.newInputStream(kept.resolve("kept.properties"))) {
      names.load(in);
    }
  }

  /** Class path, folder of the texts that are kept, folder to write to. */
  public static void main(String[] arguments) throws IOException {
    LicenceTexts texts = new LicenceTexts(Path.of(arguments[1]), Path.of(arguments[2]));
    texts.clear();
    List<String> missing = new ArrayList<>();
    for (Map.Entry<Path, String> library : libraries(arguments[0]).entrySet()) {
      int found = texts.fromJar(library.getKey(), library.getValue());
      found += texts.fromKept(library.getValue());
      if (found == 0) {
        missing.add(library.getKey().getFileName().toString());
      }
    }
    if (!missing.isEmpty()) {
      System.err.println(
          "No licence text for " + String.join(", ", missing) + ": keep one in " + arguments[1]);
      System.exit(1);
    }
  }

  /** Takes away what a build before has left: the library may be gone. */
  private void clear() throws IOException {
    if (Files.exists(out)) {
      try (Stream<Path> all = Files.walk(out)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  /** Jars of a class path but our own, and their artifacts' names: as repositories lay them out. */
  private static Map<Path, String> libraries(String classPath) {
    Map<Path, String> libraries = new TreeMap<>();
    for (String entry : classPath.split(Pattern.quote(System.getProperty("path.separator")))) {
      Path jar = Path.of(entry);
      if (Files.isRegularFile(jar) && !jar.getFileName().toString().startsWith("midlateral-")) {
        libraries.put(jar, jar.getParent().getParent().getFileName().toString());
      }
    }
    return libraries;
  }

  private int fromJar(Path jar, String name) throws IOException {
    int found = 0;
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        Matcher text = TEXT.matcher(entry.getName());
        if (text.matches()) {
          String inside = entry.getName().replaceFirst("^META-INF/", "");
          try (InputStream in = zip.getInputStream(entry)) {
            write(out.resolve(name).resolve(inside), in.readAllBytes());
          }
          // A notice alone is no licence.
          found += text.group(1) == null ? 0 : 1;
        }
      }
    }
    return found;
  }

  private int fromKept(String name) throws IOException {
    int found = 0;
    for (String beginning : names.stringPropertyNames()) {
      if (name.equals(beginning) || name.startsWith(beginning + "-")) {
        for (String file : names.getProperty(beginning).split(" ")) {
          write(out.resolve(name).resolve(file), Files.readAllBytes(kept.resolve(file)));
          found++;
        }
      }
    }
    return found;
  }

  private static void write(Path file, byte[] text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, text);
  }
}
