package org.midlateral;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.midlateral.cut.Lettering;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Ellipses;
import org.midlateral.digit.Slice;
import org.midlateral.digit.TapedDigit;
import org.midlateral.measurement.Caution;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Material;
import org.midlateral.measurement.PrintProcess;
import org.midlateral.measurement.file.Orders;
import org.midlateral.measurement.file.Template;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.mesh.Meshes;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;

/**
 * What is made when first asked for, asked for by several threads at once: all are answered alike,
 * as a single one is, and none waits for ever.
 */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class LazyTablesTest {
  private static final int THREADS = 4;

  /** The tables of a running program, each told as a text. */
  public enum Table implements Supplier<String> {
    KEYS(() -> KeyTable.standard().keys().toString()),
    MATERIALS(() -> Material.all().toString()),
    CAUTIONS(() -> Caution.all().toString()),
    PROCESSES(() -> PrintProcess.all().toString()),
    WORDS(
        () ->
            Orders.parse(Template.text(LengthUnit.MM), "t", List.of("note=Flurin Tobler at noon"))
                .cautions()
                .toString()),
    LETTERS(() -> Lettering.outlines(List.of("R1234567890"), 3).toText()),
    ELLIPSES(
        () -> {
          DigitSurface digit = TapedDigit.of(Fingers.ring(0.3));
          double width = 2 * digit.slice(Fingers.ring().stationOf(Level.PIP)).halfWidth();
          double[] jet = new double[18];
          digit.slice(12.5).jet(0.7, jet);
          return Arrays.toString(jet) + digit.slice(40).girth(2.5) + Ellipses.depthRatio(width, 66);
        });

    private final Supplier<String> told;

    Table(Supplier<String> told) {
      this.told = told;
    }

    @Override
    public String get() {
      return told.get();
    }
  }

  /** In classes loaded afresh, each thread asking for another table first. */
  @RepeatedTest(3)
  void tablesAreTheSameForAllThatAskAtOnce() throws Exception {
    List<String> wanted = Arrays.stream(Table.values()).map(Table::get).toList();
    assertThat(wanted).allMatch(told -> told.length() > 40);
    try (URLClassLoader fresh =
        new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader())) {
      List<Supplier<?>> tables = new ArrayList<>();
      for (Object constant : fresh.loadClass(Table.class.getName()).getEnumConstants()) {
        assertThat(constant).isNotInstanceOf(Table.class);
        tables.add((Supplier<?>) constant);
      }
      List<List<String>> answers = together(thread -> () -> told(tables, 2 * thread));
      assertThat(answers).hasSize(THREADS).allMatch(wanted::equals);
    }
  }

  private static URL[] classPath() throws MalformedURLException {
    List<URL> urls = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      urls.add(Path.of(entry).toUri().toURL());
    }
    return urls.toArray(URL[]::new);
  }

  /** All tables in their order, asked for from one of them on. */
  private static List<String> told(List<Supplier<?>> tables, int first) {
    List<String> told = new ArrayList<>(Collections.nCopies(tables.size(), null));
    for (int i = 0; i < tables.size(); i++) {
      int at = (first + i) % tables.size();
      told.set(at, (String) tables.get(at).get());
    }
    return told;
  }

  /** The arc of a section is made when the first girth on it is asked for. */
  @Test
  void aSectionsArcIsTheSame() throws Exception {
    DigitSurface digit = TapedDigit.of(Fingers.ring());
    for (int i = 0; i < 300; i++) {
      double station = 0.2 * i;
      double wanted = digit.slice(station).girth(1.2);
      Slice fresh = digit.slice(station);

      assertThat(together(thread -> () -> fresh.girth(1.2))).containsOnly(wanted);
    }
  }

  /** The clusters of a hierarchy are made when the first gap is asked for; branches share them. */
  @Test
  void aHierarchysClustersAreTheSame() throws Exception {
    TriangleMesh inner = Meshes.halfTube(8, 40, 12, 10, -1);
    TriangleMesh outer = Meshes.halfTube(9.6, 40, 12, 10, 1);
    var wanted = BoundingVolumeHierarchy.of(inner).gap(BoundingVolumeHierarchy.of(outer));
    for (int i = 0; i < 60; i++) {
      BoundingVolumeHierarchy one = BoundingVolumeHierarchy.of(inner);
      BoundingVolumeHierarchy other = BoundingVolumeHierarchy.of(outer);

      assertThat(together(thread -> () -> one.gap(other))).containsOnly(wanted);
    }
  }

  private interface Asked<T> {
    Callable<T> by(int thread);
  }

  /** Answers of several threads that begin together. */
  private static <T> List<T> together(Asked<T> asked) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      CyclicBarrier start = new CyclicBarrier(THREADS);
      List<Future<T>> coming = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        Callable<T> question = asked.by(i);
        coming.add(
            threads.submit(
                () -> {
                  start.await();
                  return question.call();
                }));
      }
      List<T> answers = new ArrayList<>();
      for (Future<T> answer : coming) {
        answers.add(answer.get());
      }
      return answers;
    } finally {
      threads.shutdownNow();
    }
  }
}
