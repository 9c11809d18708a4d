package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JSlider;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.file.Orders;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.stage.SurfaceShape;

/** End to end: what a user does with mouse and keys, and what the screen then says. */
@ExtendWith(OnDisplay.class)
class StoryTest {
  private Desk desk;

  @BeforeEach
  void sit() throws Exception {
    desk = Desk.withSample(Sample.BULBOUS);
  }

  private SurfaceShape trough() {
    return desk.window.shown().orElseThrow().pieces().get(0).shape();
  }

  @Test
  void aTypedCircumferenceChangesMeshSectionAndFindings() {
    SurfaceShape before = trough();
    assertThat(desk.label("section.skin.girth")).isEqualTo("70.0");
    desk.fill("circumference.pip", "72");
    desk.settle();
    assertThat(trough()).isNotSameAs(before);
    assertThat(desk.label("section.skin.girth")).isEqualTo("72.0");
    System.out.printf(
        "typed change to shown picture: %.0f ms%n", desk.window.changeToShownMillis());
    desk.fill("circumference.pip", "76");
    desk.settle();
    assertThat(desk.window.findingTexts())
        .anyMatch(text -> text.startsWith("Caution") && text.contains("circumference.pip"));
  }

  @Test
  void aRefusedValueIsSaidAtTheFieldAndTheOldDesignStays() {
    SurfaceShape before = trough();
    desk.fill("trough.wall", "9");
    desk.until(
        "a refusal",
        () -> desk.window.findingTexts().stream().anyMatch(t -> t.startsWith("Refused")));
    assertThat(desk.window.findingTexts().get(0)).contains("trough.wall").contains("0.8 to 4 mm");
    JTextField field = desk.find(JTextField.class, "trough.wall");
    assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("error");
    assertThat(desk.window.made().orElseThrow().view()).isEmpty();
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    desk.settle();
    assertThat(trough().triangleCount()).isEqualTo(before.triangleCount());
  }

  @Test
  void tabArrowsUndoAndRedoWork() {
    desk.fill("circumference.proximal-phalanx", "60");
    desk.keys(KeyEvent.VK_TAB);
    Component pip = desk.find(Component.class, "circumference.pip");
    desk.until("focus on the next field", pip::isFocusOwner);
    desk.keys(KeyEvent.VK_UP);
    desk.settle();
    assertThat(desk.window.session().draft().get("circumference.pip")).isEqualTo("71");
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(desk.window.session().draft().get("circumference.pip")).isEqualTo("70");
    assertThat(((JTextField) pip).getText()).isEqualTo("70");
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(desk.window.session().draft().get("circumference.proximal-phalanx")).isEqualTo("61");
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    assertThat(desk.window.session().draft().get("circumference.proximal-phalanx")).isEqualTo("60");
  }

  @Test
  void inchFractionsAreTyped() {
    desk.fill("circumference.pip", "2 3/4 in");
    desk.settle();
    // 2.75 x 25.4 = 69.85.
    assertThat(desk.label("section.skin.girth")).isIn("69.8", "69.9");
  }

  @Test
  void draggingTheStationChangesTheSecondMoment() {
    String atPip = desk.label("section.trough.inertia");
    JSlider slider = desk.find(JSlider.class, "station");
    Rectangle place = desk.place(slider);
    int y = place.y + 12;
    int from = place.x + (int) (place.width * share(slider));
    desk.drag(new Point(from, y), new Point(from - 70, y));
    assertThat(desk.label("section.trough.inertia")).isNotEqualTo(atPip);
    assertThat(slider.getValue()).isLessThan(53);
  }

  private static double share(JSlider slider) {
    double range = slider.getMaximum() - slider.getMinimum();
    return (slider.getValue() - slider.getMinimum()) / range;
  }

  @Test
  void aClickOnAPieceGoesToItsStation() {
    String before = desk.label("section.station");
    Rectangle view = desk.place(desk.view());
    desk.click(view.x + view.width / 2 - 60, view.y + view.height / 2 + 20);
    assertThat(desk.label("section.station")).isNotEqualTo(before);
  }

  @Test
  void whatIsExportedIsWhatTheCommandWrites(@TempDir Path folder) throws Exception {
    desk = Desk.withSample(Sample.SLIM);
    Path into = folder.resolve("out");
    desk.press("Export all files");
    desk.until("the dialog", () -> desk.hasButton("Export here"));
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    desk.type(into.toString());
    desk.press("Export here");
    desk.press("OK");
    assertThat(into.resolve("trough.stl")).isNotEmptyFile();
    assertThat(into.resolve("dorsal-shell.stl")).isNotEmptyFile();
    assertThat(into.resolve("report.json")).isNotEmptyFile();
  }

  @Test
  void anExportCalledOffStopsAtOnceAndWritesNothing(@TempDir Path folder) throws Exception {
    Path into = folder.resolve("none");
    desk.press("Export all files");
    desk.until("the dialog", () -> desk.hasButton("Export here"));
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    desk.type(into.toString());
    desk.press("Export here");
    desk.press("Cancel");
    long start = System.nanoTime();
    desk.until("the end", () -> desk.hasButton("OK"));
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(desk.hasText("Nothing was written.")).isTrue();
    desk.press("OK");
    assertThat(into).doesNotExist();
    assertThat(seconds).isLessThan(1);
    // What was still computed has ended by now or ends by itself, and writes nothing either.
    desk.settle();
    Thread.sleep(1500);
    assertThat(into).doesNotExist();
  }

  @Test
  void whatIsSavedOpensAgain(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("again.yaml");
    desk.fill("trough.wall", "2.0");
    desk.settle();
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    desk.until("the dialog", () -> desk.hasButton("Save"));
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    desk.type(file.toString());
    desk.keys(KeyEvent.VK_ENTER);
    desk.until("the file", () -> Files.exists(file) && !desk.window.session().isDirty());
    assertThat(Orders.read(file, List.of()).order().design().trough().wall()).isEqualTo(2.0);

    desk.fill("trough.wall", "1.2");
    desk.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
    desk.press("Do not save");
    desk.until("the dialog", () -> desk.hasButton("Open"));
    desk.type(file.toString());
    desk.keys(KeyEvent.VK_ENTER);
    desk.until(
        "the old value", () -> desk.window.session().draft().get("trough.wall").equals("2.0"));
  }
}
