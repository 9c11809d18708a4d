package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.stage.Frame;

/**
 * How fast it follows, printed for the note. The bounds only tell a program that follows from one
 * that does not: test machines are slow, and shared.
 */
@ExtendWith(OnDisplay.class)
class PaceTest {
  private static final int TURNS = 40;
  private static final int CHANGES = 12;
  private Desk desk;

  @BeforeEach
  void sit() throws Exception {
    desk = Desk.withSample(Sample.INCHES);
  }

  @Test
  void turningIsSmooth() {
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < TURNS; i++) {
      Frame before = desk.view().frame();
      desk.inSwing(
          () -> {
            desk.view().look(desk.view().orbit().turned(0.03, 0));
            return null;
          });
      desk.until("a frame", () -> !desk.view().frame().equals(before));
      Frame frame = desk.view().frame();
      if (!frame.picture().smooth()) {
        millis.add(frame.millis());
      }
    }
    int triangles =
        desk.window.shown().orElseThrow().pieces().stream()
            .mapToInt(piece -> piece.shape().triangleCount())
            .sum();
    System.out.printf(
        "frame of %d x %d px, %d triangles of pieces: median %.1f ms%n",
        desk.view().frame().image().getWidth(),
        desk.view().frame().image().getHeight(),
        triangles,
        median(millis));
    assertThat(median(millis)).isLessThan(500);
  }

  @Test
  void aChangeIsShownSoon() {
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < CHANGES; i++) {
      String wall = "1." + (4 + i % 4) + " mm";
      desk.inSwing(
          () -> {
            desk.window.session().edit("trough.wall", wall);
            return null;
          });
      desk.settle();
      millis.add(desk.window.changeToShownMillis());
    }
    System.out.printf("changed number to shown picture: median %.0f ms%n", median(millis));
    assertThat(median(millis)).isLessThan(1500);
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
  }
}
