package org.midlateral.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.Slice;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.record.FolderCheck;
import org.midlateral.shared.SharedData;
import org.midlateral.viewer.dialog.WalkThrough;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.memory.Unsaved;
import org.midlateral.viewer.render.Orbit;
import org.midlateral.viewer.render.SurfaceShape;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.ViewSide;

/** End to end: what a user does with mouse and keys, and what the screen then says. */
@ExtendWith(OnDisplay.class)
class EndToEndTest {
  private WindowDriver driver;

  @BeforeEach
  void open() throws Exception {
    driver = WindowDriver.withSample(Sample.BULBOUS);
  }

  private SurfaceShape trough() {
    return driver.window.shown().orElseThrow().pieces().get(0).shape();
  }

  @Test
  void aTypedCircumferenceChangesMeshSectionAndFindings() {
    SurfaceShape before = trough();
    assertThat(driver.label("section.skin.girth")).isEqualTo("70.0");
    driver.fill("circumference.pip", "72");
    driver.settle();
    assertThat(trough()).isNotSameAs(before);
    assertThat(driver.label("section.skin.girth")).isEqualTo("72.0");
    System.out.printf(
        "typed change to shown picture: %.0f ms%n", driver.window.changeToShownMillis());
    driver.fill("circumference.pip", "76");
    driver.settle();
    driver.until(
        "a caution",
        () ->
            driver.window.findingTexts().stream()
                .anyMatch(t -> t.startsWith("Caution") && t.contains("circumference.pip")));
  }

  @Test
  void aRefusedValueIsSaidAtTheFieldAndNothingIsShown() {
    SurfaceShape before = trough();
    driver.fill("trough.wall", "9");
    driver.until(
        "a refusal",
        () -> driver.window.findingTexts().stream().anyMatch(t -> t.startsWith("Refused")));
    assertThat(driver.window.findingTexts().get(0)).contains("trough.wall").contains("0.8 to 4 mm");
    JTextField field = driver.find(JTextField.class, "trough.wall");
    assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("error");
    assertThat(driver.window.made().orElseThrow().shapes()).isEmpty();
    assertThat(driver.view().note()).startsWith("Not made yet");
    assertThat(driver.label("section.station")).isEqualTo("not made yet");
    assertThat(driver.label("section.trough.rigidity")).isEqualTo("–");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    driver.settle();
    assertThat(trough().triangleCount()).isEqualTo(before.triangleCount());
  }

  /** A shell that cannot be made takes nothing with it. */
  @Test
  void aMissingShellIsSaidAndTheTroughIsShown() {
    int triangles = trough().triangleCount();
    driver.fill("dorsal-shell.length", "90");
    driver.settle();
    assertThat(driver.window.shown().orElseThrow().pieces()).hasSize(1);
    assertThat(trough().triangleCount()).isEqualTo(triangles);
    driver.until(
        "what was tried",
        () -> driver.window.findingTexts().get(0).contains("dorsal-shell.make=no"));
    assertThat(driver.window.findingTexts().get(0))
        .startsWith("Refused")
        .contains("The dorsal shell is missing");
    assertThat(driver.window.shown().orElseThrow().pieces()).hasSize(1);
  }

  @Test
  void tabArrowsUndoAndRedoWork() {
    driver.fill("circumference.proximal-phalanx", "60");
    driver.keys(KeyEvent.VK_TAB);
    Component pip = driver.find(Component.class, "circumference.pip");
    driver.until("focus on the next field", pip::isFocusOwner);
    driver.keys(KeyEvent.VK_UP);
    driver.settle();
    assertThat(driver.window.session().draft().get("circumference.pip")).isEqualTo("71");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(driver.window.session().draft().get("circumference.pip")).isEqualTo("70");
    assertThat(((JTextField) pip).getText()).isEqualTo("70");
    // Whoever comes to a field by Tab writes anew.
    driver.keys(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
    driver.keys(KeyEvent.VK_TAB);
    driver.until("focus again", pip::isFocusOwner);
    driver.type("69");
    assertThat(((JTextField) pip).getText()).isEqualTo("69");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(driver.window.session().draft().get("circumference.proximal-phalanx"))
        .isEqualTo("61");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    assertThat(driver.window.session().draft().get("circumference.proximal-phalanx"))
        .isEqualTo("60");
  }

  @Test
  void inchFractionsAreTyped() {
    driver.fill("circumference.pip", "2 3/4 in");
    driver.settle();
    // 2.75 x 25.4 = 69.85.
    assertThat(driver.label("section.skin.girth")).isIn("69.8", "69.9");
  }

  @Test
  void draggingTheStationChangesTheSecondMoment() {
    String atPip = driver.label("section.trough.inertia");
    JSlider slider = driver.find(JSlider.class, "station");
    Rectangle place = driver.place(slider);
    int y = place.y + 12;
    int from = place.x + (int) (place.width * share(slider));
    driver.drag(new Point(from, y), new Point(from - 70, y));
    assertThat(driver.label("section.trough.inertia")).isNotEqualTo(atPip);
    assertThat(slider.getValue()).isLessThan(53);
  }

  private static double share(JSlider slider) {
    double range = slider.getMaximum() - slider.getMinimum();
    return (slider.getValue() - slider.getMinimum()) / range;
  }

  @Test
  void aClickOnAPieceGoesToItsStation() {
    String before = driver.label("section.station");
    Rectangle view = driver.place(driver.view());
    driver.click(view.x + view.width / 2 - 60, view.y + view.height / 2 + 20);
    assertThat(driver.label("section.station")).isNotEqualTo(before);
    // A landmark has its own station, to the tenth.
    driver.inSwing(
        () -> {
          JComboBox<?> jump = driver.find(JComboBox.class, "section.jump");
          jump.setSelectedIndex(0);
          assertThat(jump.getSelectedItem()).hasToString("Proximal phalanx");
          return null;
        });
    assertThat(driver.label("section.station")).startsWith("12.0 mm distal");
  }

  /** Two designs side by side: what differs in a line, and one scale of colours. */
  @Test
  void twoDesignsAreComparedInALine() throws Exception {
    driver = WindowDriver.withSample(Sample.SLIM);
    driver.press("Compare");
    driver.fill("trough.wall", "2.0");
    JTextArea line = driver.find(JTextArea.class, "difference");
    driver.until(
        "the difference", () -> line.getText().startsWith("trough.wall 1.4 → 2.0: beyond"));
    assertThat(line.getText()).contains("EI at the PIP × ").endsWith("Estimates.");
    driver.press("Compare");
    assertThat(driver.inSwing(line::isShowing)).isFalse();
    aChangedNumberIsColouredInPassing();
  }

  /** By the pressure, before that is computed of the changed pieces; no figure is told of it. */
  private void aChangedNumberIsColouredInPassing() {
    driver.colour(Quantity.PRESSURE);
    assertThat(driver.view().note()).startsWith("Held ");
    double before = driver.window.changeToShownMillis();
    driver.inSwing(
        () -> {
          driver.window.session().edit("trough.wall", "1.8");
          return null;
        });
    driver.until(
        "a picture coloured in passing",
        () ->
            driver.window.changeToShownMillis() != before
                && driver.view().colouredBy() == Quantity.PRESSURE
                && driver.view().note().startsWith("Computing the pressure"));
    driver.settle();
    assertThat(driver.view().colouredBy()).isEqualTo(Quantity.PRESSURE);
    assertThat(driver.view().note()).startsWith("Held ");
    driver.colour(Quantity.NONE);
  }

  @Test
  void theWalkThroughIsReadBesideTheWindow() {
    driver.inSwing(
        () -> {
          WalkThrough.open(driver.window);
          return null;
        });
    driver.until("the walk-through", () -> driver.dialog("walk-through").isPresent());
    JTextArea text = driver.find(JTextArea.class, "walk-through.text");
    String first = driver.inSwing(text::getText);
    assertThat(first).startsWith("*For a therapist with a tape");
    assertThat(first).contains("\n1. Measure\n").contains("\ncli/midlateral template --sheet");
    assertThat(first).contains("when a finger is thickest").doesNotContain("```");
    JList<?> pages = driver.find(JList.class, "walk-through.pages");
    driver.inSwing(
        () -> {
          pages.setSelectedIndex(SharedData.WALK_THROUGH.indexOf(SharedData.MESSAGES));
          return null;
        });
    String messages = driver.inSwing(text::getText);
    assertThat(messages).contains("`pressure-high`").doesNotContain("![");
    driver.close(driver.dialog("walk-through").orElseThrow());
    driver.until("its end", () -> driver.dialog("walk-through").isEmpty());
  }

  @Test
  void fullScreenFillsItAndEscapeLeavesIt() {
    Rectangle before = driver.window.getBounds();
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    driver.keys(KeyEvent.VK_F11);
    driver.until("the whole screen", () -> driver.window.getSize().equals(screen));
    assertThat(driver.inSwing(() -> driver.find(JLabel.class, "always").isShowing())).isFalse();
    driver.settle();
    // Without a window manager nobody gives the keys back to a window that was shown anew.
    Rectangle view = driver.place(driver.view());
    driver.click(view.x + 20, view.y + view.height / 2);
    driver.until("the keys", driver.view()::isFocusOwner);
    driver.keys(KeyEvent.VK_ESCAPE);
    driver.until("the window again", () -> driver.window.getBounds().equals(before));
    assertThat(driver.inSwing(() -> driver.find(JLabel.class, "always").isShowing())).isTrue();
  }

  @Test
  void theHoopIsDraggedAlongTheFinger() {
    driver.inSwing(
        () -> {
          driver.view().lookFrom(ViewSide.RADIAL);
          return null;
        });
    driver.settle();
    Rectangle view = driver.place(driver.view());
    double pixel = driver.view().orbit().pixel(view.width, view.height);
    DigitSurface digit = driver.window.shown().orElseThrow().orthosis().digit();
    double pip = digit.pipAxis();
    // Over the finger, where the hoop stands out.
    Vector3D top = digit.centre(pip).add(digit.slice(pip).halfDepth() + 4, Vector3D.Unit.PLUS_Z);
    Vector3D seen = driver.view().orbit().project(top, view.width, view.height);
    Point hoop = new Point(view.x + (int) seen.getX(), view.y + (int) seen.getY());
    Orbit before = driver.view().orbit();
    driver.drag(hoop, new Point(hoop.x + (seenDistal(digit, view) ? 60 : -60), hoop.y));
    assertThat(driver.view().orbit()).isEqualTo(before);
    double moved = Double.parseDouble(driver.label("section.station").replaceAll(" mm.*", ""));
    assertThat(moved - pip).isCloseTo(60 * pixel, within(0.6));
    thePairIsDraggedRoundTheFinger(digit, view);
  }

  /** Seen from the side, where the skin lies level: volar is down. */
  private void thePairIsDraggedRoundTheFinger(DigitSurface digit, Rectangle view) {
    Draft before = driver.window.session().draft();
    Orbit orbit = driver.view().orbit();
    Slice slice = digit.slice(digit.pipAxis());
    double girth = slice.circumference() / 4 - 3;
    Vector3D middle =
        slice.point(slice.angle(driver.view().orbit().toEye().getY() > 0 ? girth : -girth));
    Vector3D seen = orbit.project(middle, view.width, view.height);
    Point on = new Point(view.x + (int) seen.getX(), view.y + (int) seen.getY());
    driver.drag(on, new Point(on.x, on.y + 15));
    Draft moved = driver.window.session().draft();
    double offset = Double.parseDouble(moved.get("relief.volar-offset"));
    // It follows the skin, which turns away toward volar.
    assertThat(offset - 3).isBetween(15 * orbit.pixel(view.width, view.height), 4.0);
    driver.settle();
    driver.moveTo(on.x, on.y + 15);
    assertThat(driver.view().reading().orElseThrow()).startsWith("Pair at the PIP joint, 1.2 mm");
    driver.wheel(-1);
    assertThat(driver.window.session().draft().get("relief.height")).isEqualTo("1.5");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(driver.window.session().draft()).isEqualTo(before);
    driver.settle();
  }

  /** Whether distal is to the right. */
  private boolean seenDistal(DigitSurface digit, Rectangle view) {
    Orbit orbit = driver.view().orbit();
    return orbit.project(digit.centre(40), view.width, view.height).getX()
        > orbit.project(digit.centre(0), view.width, view.height).getX();
  }

  @Test
  void aSpotClickedWithControlIsRelievedThere() throws Exception {
    driver = WindowDriver.withSample(Sample.SLIM);
    driver.inSwing(
        () -> {
          driver.view().lookFrom(ViewSide.VOLAR);
          return null;
        });
    driver.settle();
    Rectangle view = driver.place(driver.view());
    driver.clickWith(KeyEvent.VK_CONTROL, view.x + view.width / 2, view.y + view.height / 2);
    driver.until("a relief", () -> driver.window.session().draft().items("relief.bubbles") == 1);
    Draft draft = driver.window.session().draft();
    // Seen from the volar side the middle of the picture lies on the volar midline.
    String girth = draft.get("relief.bubbles[0].girth").replace(" mm", "");
    assertThat(Double.parseDouble(girth)).isBetween(-3.0, 3.0);
    String station = draft.get("relief.bubbles[0].station").replace(" mm", "");
    assertThat(Double.parseDouble(station)).isBetween(5.0, 40.0);
    driver.settle();
    assertThat(driver.window.shown()).isPresent();
    Point on = new Point(view.x + view.width / 2, view.y + view.height / 2);
    aRiseIsDraggedAndRaised(on);
    theDistanceOfTwoPointsIsTold(on);
  }

  /** Distal is up, seen from the volar side. */
  private void aRiseIsDraggedAndRaised(Point on) {
    Draft before = driver.window.session().draft();
    double pixel = driver.view().orbit().pixel(driver.view().getWidth(), driver.view().getHeight());
    driver.drag(on, new Point(on.x, on.y - 40));
    driver.settle();
    double moved = millimetres("station") - millimetres(before, "station");
    assertThat(moved).isCloseTo(40 * pixel, within(2.0));
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(driver.window.session().draft()).isEqualTo(before);
    driver.settle();
    driver.moveTo(on.x, on.y);
    assertThat(driver.view().reading().orElseThrow()).startsWith("Rise 1, 1.0 mm high");
    driver.wheel(-1);
    assertThat(millimetres("height")).isEqualTo(1.5);
    driver.settle();
    driver.inSwing(() -> driver.view().requestFocusInWindow());
    driver.until("focus in the picture", () -> driver.view().isFocusOwner());
    driver.keys(KeyEvent.VK_PAGE_DOWN);
    assertThat(millimetres("height")).isEqualTo(1.0);
    driver.keys(KeyEvent.VK_DELETE);
    assertThat(driver.window.session().draft().items("relief.bubbles")).isZero();
    driver.settle();
  }

  private double millimetres(String key) {
    return millimetres(driver.window.session().draft(), key);
  }

  private static double millimetres(Draft draft, String key) {
    return Double.parseDouble(draft.get("relief.bubbles[0]." + key).replace(" mm", ""));
  }

  /** Along the volar midline, which lies level: what is measured is what the pixels are long. */
  private void theDistanceOfTwoPointsIsTold(Point on) {
    double pixel = driver.view().orbit().pixel(driver.view().getWidth(), driver.view().getHeight());
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    driver.click(on.x, on.y);
    driver.click(on.x, on.y - 60);
    String told = driver.inSwing(() -> driver.view().measured()).orElseThrow();
    assertThat(told).endsWith(" mm, straight");
    assertThat(Double.parseDouble(told.replace(" mm, straight", "")))
        .isBetween(60 * pixel - 0.1, 60 * pixel + 2);
    driver.keys(KeyEvent.VK_ESCAPE);
    assertThat(driver.inSwing(() -> driver.view().measured())).isEmpty();
    driver.keys(KeyEvent.VK_ESCAPE);
    assertThat(driver.view().isMeasuring()).isFalse();
  }

  @Test
  void whatIsExportedIsWhatTheCommandWrites(@TempDir Path folder) throws Exception {
    driver = WindowDriver.withSample(Sample.SLIM);
    Path into = folder.resolve("out");
    driver.press("Export all files");
    driver.choose(into, "Export here");
    driver.press("OK");
    assertThat(into.resolve("demo-little-slim").resolve("trough.stl")).isNotEmptyFile();
    assertThat(into.resolve("demo-little-slim").resolve("dorsal-shell.stl")).isNotEmptyFile();
    assertThat(into.resolve("demo-little-slim").resolve("report.json")).isNotEmptyFile();
    FolderCheck check = FolderCheck.of(into.resolve("demo-little-slim"));
    assertThat(check.ok()).isTrue();
  }

  @Test
  void anExportCalledOffStopsAtOnceAndWritesNothing(@TempDir Path folder) throws Exception {
    Path into = folder.resolve("none");
    driver.press("Export all files");
    driver.choose(into, "Export here");
    driver.press("Cancel");
    long start = System.nanoTime();
    driver.until("the end", () -> driver.hasButton("OK"));
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(driver.hasText("Nothing was written.")).isTrue();
    driver.press("OK");
    assertThat(into).doesNotExist();
    assertThat(seconds).isLessThan(1);
    // What was still computed has ended by now or ends by itself, and writes nothing either.
    driver.settle();
    Thread.sleep(1500);
    assertThat(into).doesNotExist();
  }

  @Test
  void whatIsSavedOpensAgain(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("again.yaml");
    driver.fill("trough.wall", "2.0");
    driver.settle();
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    driver.choose(file, "Save");
    driver.until("the file", () -> Files.exists(file) && !driver.window.session().isDirty());
    assertThat(Orders.read(file, List.of()).order().design().trough().wall()).isEqualTo(2.0);

    // It is a recent file now, and one that another program changes is not replaced unasked.
    assertThat(driver.settings.read().recent()).containsExactly(file);
    Files.writeString(file, "# by another\n" + Files.readString(file));
    driver.fill("trough.wall", "1.2");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    driver.press("Cancel");
    assertThat(Orders.read(file, List.of()).order().design().trough().wall()).isEqualTo(2.0);

    driver.fill("trough.wall", "1.3");
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
    driver.press("Do not save");
    driver.choose(file, "Open");
    driver.until(
        "the old value", () -> driver.window.session().draft().get("trough.wall").equals("2.0"));
  }

  /** Opened in quick succession: what is told at last is of the last, cut at its own joint. */
  @Test
  void whatIsShownIsOfTheFileThatIsOpen() {
    List<String> empty = new ArrayList<>();
    for (Sample sample : Sample.values()) {
      driver.inSwing(
          () -> {
            driver.window.session().openSample(sample);
            // Before any answer can come in, nothing of the former is to be seen.
            empty.add(driver.find(JLabel.class, "section.station").getText());
            assertThat(driver.view().frame()).isNull();
            assertThat(driver.window.shown()).isEmpty();
            return null;
          });
    }
    driver.settle();
    assertThat(empty).containsOnly("not made yet");
    assertThat(driver.label("section.title")).isEqualTo("Section of demo-little-slim");
    double pip = driver.window.shown().orElseThrow().orthosis().digit().pipAxis();
    assertThat(driver.label("section.station"))
        .startsWith(String.format(Locale.ROOT, "%.1f mm", pip));
  }

  @Test
  void aNewFingerIsTypedInFromNothing() {
    driver.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    driver.press("Moulded by hand");
    driver.until("an empty form", () -> driver.window.session().draft().missing().size() == 11);
    assertThat(driver.window.findingTexts().get(0)).startsWith("Note  11 still to be filled in");
    assertThat(driver.view().note()).startsWith("Not made yet");
    driver.fill("reference", "inv-7");
    driver.inSwing(
        () -> {
          driver.find(JComboBox.class, "hand").setSelectedItem("right");
          driver.find(JComboBox.class, "digit").setSelectedItem("ring");
          return null;
        });
    String[] typed = {
      "circumference.proximal-phalanx", "62", "circumference.pip", "66",
      "circumference.middle-phalanx", "56", "circumference.tip", "48",
      "length.palmar-crease-to-web", "21", "length.web-to-pip", "24",
      "length.pip-to-dip", "23", "length.dip-to-tip", "24"
    };
    for (int i = 0; i < typed.length; i += 2) {
      driver.fill(typed[i], typed[i + 1]);
    }
    driver.settle();
    assertThat(driver.window.shown().orElseThrow().title()).isEqualTo("inv-7, right ring finger");
  }

  @Test
  void anExportIsCalledOffByItsWindowAndQuittingAsksFirst(@TempDir Path folder) throws Exception {
    driver.press("Export all files");
    driver.choose(folder, "Export here");
    driver.until("the export", () -> driver.dialog("export").isPresent());
    JDialog export = driver.dialog("export").orElseThrow();
    driver.close(driver.window);
    driver.press("Stay");
    assertThat(driver.window.isShowing()).isTrue();
    assertThat(export.isShowing()).isTrue();
    KeyStroke escape = KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0);
    assertThat(export.getRootPane().getActionForKeyStroke(escape)).isNotNull();
    driver.close(export);
    driver.until("the end", () -> driver.hasText("Nothing was written."));
    driver.press("OK");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void whatWasNotSavedIsKeptAndTakenUpAgain() throws Exception {
    driver.fill("trough.wall", "2.3");
    Unsaved own = Unsaved.ofThisProcess(driver.settings);
    driver.until(
        "the values kept",
        () -> own.read().filter(l -> l.draft().get("trough.wall").equals("2.3")).isPresent());
    // As if this process had been killed: the file has another's name.
    Process ended = new ProcessBuilder("java", "-version").start();
    ended.waitFor();
    new Unsaved(driver.settings, ended.pid())
        .keep(own.read().orElseThrow().draft(), Optional.empty());
    driver = WindowDriver.withSample(Sample.SLIM);
    driver.until("nothing of its own left", () -> own.read().isEmpty());
    SwingUtilities.invokeLater(driver.window::offerUnsaved);
    driver.press("Restore them");
    driver.settle();
    assertThat(driver.window.session().draft().get("trough.wall")).isEqualTo("2.3");
    assertThat(driver.window.session().isDirty()).isTrue();
    assertThat(Unsaved.abandoned(driver.settings)).isEmpty();
  }
}
