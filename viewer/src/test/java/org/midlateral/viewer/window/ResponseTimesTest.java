package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.midlateral.viewer.sample.Sample;

/**
 * How fast it follows, printed for the note. The bounds only tell a program that follows from one
 * that does not: test machines are slow, and shared.
 */
@ExtendWith(OnDisplay.class)
class ResponseTimesTest {
  private static final int TURNS = 40;
  private static final int CHANGES = 12;
  private WindowDriver driver;

  @BeforeEach
  void open() throws Exception {
    driver = WindowDriver.withSample(Sample.INCHES);
  }

  @Test
  void turningIsSmooth() throws InterruptedException {
    ResponseTimes.Times times = new ResponseTimes(driver).turn(TURNS);
    System.out.println("turn of the view to its picture: " + times);
    assertThat(times.clock()).isLessThan(500);
  }

  /** Begun while the next is made, it would only hold that up. */
  @Test
  void theFormerDesignIsInspectedNoMore() throws Exception {
    boolean[] due = new boolean[2];
    for (int i = 0; i < CHANGES && !due[0]; i++) {
      String wall = "1." + (4 + i % 4) + " mm";
      driver.settle();
      due =
          driver.inSwing(
              () -> {
                boolean before = driver.window.isInspectionDue();
                driver.window.session().edit("trough.wall", wall);
                return new boolean[] {before, driver.window.isInspectionDue()};
              });
    }
    assertThat(due).containsExactly(true, false);
    driver.until("the newest design's turn", driver.window::isInspectionDue);
  }

  @Test
  void aChangeIsShownSoon() throws InterruptedException {
    ResponseTimes.Times times = new ResponseTimes(driver).change(CHANGES);
    System.out.println("changed number to shown picture: " + times);
    assertThat(times.clock()).isLessThan(1500);
  }
}
