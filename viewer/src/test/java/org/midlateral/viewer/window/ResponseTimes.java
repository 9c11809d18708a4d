package org.midlateral.viewer.window;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.midlateral.viewer.render.RenderedFrame;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.FingerView;

/**
 * How fast the window follows its user: clock times, and the processor time of the whole process,
 * which counts all threads, the software renderer's too. Started by itself it prints both for every
 * sample.
 */
final class ResponseTimes {
  private static final int LEAST = 8;
  private static final OperatingSystemMXBean MACHINE =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private final WindowDriver driver;

  /**
   * What was measured.
   *
   * @param clock median (ms)
   * @param processor mean (ms)
   */
  record Times(double clock, double processor) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT, "%.0f ms by the clock, %.0f of processor", clock, processor);
    }
  }

  ResponseTimes(WindowDriver driver) {
    this.driver = driver;
  }

  /** From a changed number to its picture on the screen. */
  Times change(int times) throws InterruptedException {
    List<Double> clock = new ArrayList<>();
    double processor = 0;
    for (int i = 0; i < LEAST + times; i++) {
      String wall = "1." + (4 + i % 4) + " mm";
      double before = driver.window.changeToShownMillis();
      long spent = MACHINE.getProcessCpuTime();
      driver.inSwing(
          () -> {
            driver.window.session().edit("trough.wall", wall);
            return null;
          });
      while (driver.window.changeToShownMillis() == before) {
        Thread.sleep(1);
      }
      if (i >= LEAST) {
        processor += (MACHINE.getProcessCpuTime() - spent) / 1e6;
        clock.add(driver.window.changeToShownMillis());
      }
      driver.settle();
    }
    return new Times(median(clock), processor / times);
  }

  /** From a changed number to its picture in colours of the pressure on the skin. */
  Times changeWithPressure(int times) throws InterruptedException {
    driver.colour(Quantity.PRESSURE);
    Times change = change(times);
    driver.colour(Quantity.NONE);
    return change;
  }

  /** From a turn of the view to its picture on the screen, turned again at once. */
  Times turn(int times) throws InterruptedException {
    List<Double> clock = new ArrayList<>();
    long spent = 0;
    // Looked for once: a search through the window takes time of the frame's.
    FingerView view = driver.view();
    for (int i = 0; i < LEAST + times; i++) {
      if (i == LEAST) {
        spent = MACHINE.getProcessCpuTime();
      }
      RenderedFrame before = view.frame();
      long start = System.nanoTime();
      driver.inSwing(
          () -> {
            view.look(view.orbit().turned(0.03, 0));
            return null;
          });
      while (view.frame().equals(before)) {
        Thread.sleep(1);
      }
      if (i >= LEAST) {
        clock.add((System.nanoTime() - start) / 1e6);
      }
    }
    double processor = (MACHINE.getProcessCpuTime() - spent) / 1e6 / times;
    return new Times(median(clock), processor);
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
  }

  /** From a turn of the view to its picture while two designs coloured by pressure are shown. */
  Times turnTwoWithPressure(int times) throws InterruptedException {
    driver.colour(Quantity.PRESSURE);
    driver.press("Compare");
    driver.inSwing(
        () -> {
          driver.window.session().edit("trough.wall", "2.2 mm");
          return null;
        });
    driver.settle();
    Times turn = turn(times);
    driver.press("Compare");
    driver.colour(Quantity.NONE);
    return turn;
  }

  /** Used heap after so many quick changes, less that before them (MiB), garbage taken out. */
  double heapGrowth(int changes) {
    double before = heap();
    for (int i = 0; i < changes; i++) {
      String wall = "1." + (4 + i % 4) + " mm";
      driver.inSwing(
          () -> {
            driver.window.session().edit("trough.wall", wall);
            return null;
          });
    }
    driver.settle();
    return heap() - before;
  }

  private static double heap() {
    System.gc();
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0;
  }

  /** Prints both for every sample. */
  public static void main(String[] args) throws Exception {
    for (int round = 0; round < 2; round++) {
      for (Sample sample : Sample.values()) {
        WindowDriver driver = WindowDriver.withSample(sample);
        ResponseTimes pace = new ResponseTimes(driver);
        Times change = pace.change(24);
        Times pressed = pace.changeWithPressure(24);
        Times turn = pace.turn(60);
        Times two = pace.turnTwoWithPressure(60);
        System.out.printf(
            Locale.ROOT,
            "%s: %d triangles, picture %d x %d; change to shown %s; with"
                + " pressure colours %s; frame %s; frame of two with"
                + " pressure %s; 200 quick changes leave %.1f MiB; load %.1f%n",
            sample,
            driver.window.shown().orElseThrow().pieces().stream()
                .mapToInt(piece -> piece.shape().triangleCount())
                .sum(),
            driver.view().frame().image().getWidth(),
            driver.view().frame().image().getHeight(),
            change,
            pressed,
            turn,
            two,
            pace.heapGrowth(200),
            MACHINE.getSystemLoadAverage());
      }
    }
    Runtime.getRuntime().exit(0);
  }
}
