package org.midlateral.recipe.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.FitTogether;
import org.midlateral.recipe.Inspection;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.PieceInspection;
import org.midlateral.recipe.TwoPiecePropertyTest;

/** Cases at the edge: each is made, sound and with its fit gap, or refused with what was tried. */
class EdgeCasesTest {

  private static Product product(String sample, List<String> more) {
    List<String> all = new ArrayList<>(more);
    all.add("print.edge-length=1.2 mm");
    Orders.Result read = Orders.read(Path.of("..", "samples", sample + ".yaml"), all);
    assertThat(read.errors()).isEmpty();
    return ProductRecipe.make(read.order(), List.of());
  }

  private static void assertMade(Product product) {
    assertThat(product.findings())
        .filteredOn(f -> f.severity() == Finding.Severity.REFUSAL)
        .isEmpty();
    Orthosis made = product.orthosis().orElseThrow();
    Inspection inspection = product.inspection().orElseThrow();
    BoundingVolumeHierarchy trough = BoundingVolumeHierarchy.of(made.trough().mesh());
    BoundingVolumeHierarchy shell =
        BoundingVolumeHierarchy.of(made.dorsalShell().orElseThrow().mesh());
    double fitGap = product.order().design().dorsalShell().fitGap();
    assertThat(trough.intersections(shell, 1)).isEmpty();
    assertThat(trough.gap(shell).distance()).isGreaterThanOrEqualTo(fitGap - ErrorBudget.FIT_GAP);
    assertThat(inspection.pieces()).hasSize(2).allMatch(p -> p.audit().sound());
  }

  /** The trough is made; its shell is refused, and what was tried is told. */
  private static void assertShellRefused(Product product, String key) {
    assertRefused(product, key);
    assertThat(product.isMade()).isTrue();
    assertThat(product.findings().get(0).text())
        .startsWith("The dorsal shell is missing")
        .contains("dorsal-shell.make=no");
    assertThat(product.orthosis().orElseThrow().solids()).hasSize(1);
  }

  private static void assertRefused(Product product, String key) {
    assertThat(product.ok()).isFalse();
    for (Finding finding : product.findings()) {
      if (finding.severity() == Finding.Severity.REFUSAL) {
        TwoPiecePropertyTest.assertNamesAKey(finding, key);
        assertThat(finding.text()).contains(key);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trough.wrap=0.3",
        "trough.wrap=0.4",
        "trough.wrap=0.58",
        "trough.liner=1.5",
        "angle.pip-extension-deficit=45",
        "trough.distal=covered",
        "dorsal-shell.overlap=1",
        "dorsal-shell.length=15"
      })
  void aSlimFingerIsMade(String key) {
    assertMade(product("slim-little", List.of(key)));
  }

  @Test
  void flanksThatWouldMeetOnTheVolarSideAreRefused() {
    Product met = product("slim-little", List.of("trough.wrap=0.25", "dorsal-shell.overlap=7"));
    assertShellRefused(met, "dorsal-shell.overlap");
    assertThat(met.findings()).extracting(Finding::code).contains("dorsal-shell-overlap");
  }

  /** A sore spot on the back of a joint: half of its girths count from the other end. */
  @ParameterizedTest
  @ValueSource(doubles = {34.9, -34, 31, -28})
  void aSpotOnTheDorsumIsRelievedAllRound(double girth) {
    String bubble =
        "relief.bubbles=[{station: 24, girth: " + girth + ", height: 1, length: 7, width: 6}]";
    Product product = product("bulbous-ring", List.of(bubble));
    assertMade(product);
    assertThat(product.findings()).extracting(Finding::code).doesNotContain("relief-under-nothing");
    PieceInspection shell = product.inspection().orElseThrow().dorsalShell().orElseThrow();
    double clearance = product.order().design().dorsalShell().clearance();
    assertThat(shell.conformance().gapAtSpots())
        .singleElement()
        .satisfies(gap -> assertThat(gap).isCloseTo(clearance + 1, within(ErrorBudget.RELIEF)));
  }

  @Test
  void aSpotUnderNoPieceIsToldOf() {
    Product product =
        product("bulbous-ring", List.of("relief.bubbles=[{station: -20, girth: 20, height: 1}]"));
    assertMade(product);
    assertThat(product.findings()).extracting(Finding::code).contains("relief-under-nothing");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trough.liner=3",
        "angle.pip-extension-deficit=45",
        "trough.wrap=0.3",
        "trough.wrap=0.58",
        "relief.bubbles=[{station: 26, girth: 16, height: 1, length: 7, width: 6}]",
        "relief.bubbles=[{station: 26, girth: 19, height: 1, length: 7, width: 6}]"
      })
  void aBulbousFingerIsMade(String key) {
    assertMade(product("bulbous-ring", List.of(key)));
  }

  /** So short that the web clearance leaves no room for a shell about the PIP axis. */
  @Test
  void aShortFingerIsToldToLeaveTheShellOut() {
    List<String> shorter = List.of("length.web-to-pip=9 mm", "trough.web-clearance=6 mm");

    assertShellRefused(product("slim-little", shorter), "trough.web-clearance");
  }

  /** On a thick liner the step over the trough's rims leaves the shell off a slim dorsum. */
  @Test
  void aThickLinerLeavesTheShellOffASlimDorsum() {
    Product made = product("slim-little", List.of("trough.liner=4"));

    assertThat(made.ok()).isTrue();
    Piece shell = made.orthosis().orElseThrow().plainShell().orElseThrow();
    double station = made.orthosis().orElseThrow().digit().pipAxis();
    assertThat(shell.gap().at(shell.skinGirth(0, station), station))
        .isGreaterThan(made.order().design().dorsalShell().clearance() + 0.5);
  }

  @Test
  void aShellFarOffTheDorsumIsToldHowNear() {
    Product far = product("slim-little", List.of("dorsal-shell.clearance=3"));

    assertShellRefused(far, "dorsal-shell.clearance");
    assertThat(far.findings()).filteredOn(f -> f.code().equals("dorsal-shell-step")).hasSize(1);
  }

  @Test
  void aShellLongerThanItsRoomIsRefused() {
    assertShellRefused(
        product("slim-little", List.of("dorsal-shell.length=60")), "dorsal-shell.length");
  }

  /** A joint that falls off by 17 mm within the 6 mm to the next tape: no wall lies over that. */
  @Test
  void aTightWaistIsToldWhereTheEdgeFolds() {
    List<String> bulb = List.of("circumference.middle-phalanx=53 mm", "length.pip-to-dip=17 mm");

    assertRefused(product("bulbous-ring", bulb), "relief.height");
  }

  /** The largest overlap that is named does pass, and a little more does not. */
  @ParameterizedTest
  @CsvSource({"slim-little, 0.012", "left-deficit, 0.0096"})
  void theLargestOverlapPasses(String sample, double allowable) {
    List<String> brittle =
        List.of("dorsal-shell.overlap=6 mm", "material.allowable-strain=" + allowable);
    Product asked = product(sample, brittle);
    FitTogether fit = asked.inspection().orElseThrow().together().orElseThrow();
    double largest = fit.largestOverlap().orElseThrow();

    assertThat(fit.goingOn().strain()).isGreaterThan(allowable);
    assertThat(asked.findings())
        .filteredOn(f -> f.code().equals("going-on"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.text())
                    .contains(String.format(Locale.ROOT, "%.1f mm would work", largest)));
    assertThat(strain(sample, largest)).isLessThanOrEqualTo(allowable);
    assertThat(strain(sample, largest + 0.2)).isGreaterThan(allowable);
  }

  private static double strain(String sample, double overlap) {
    Product product =
        product(
            sample,
            List.of("dorsal-shell.overlap=" + overlap + " mm", "material.allowable-strain=0.012"));
    FitTogether fit = product.inspection().orElseThrow().together().orElseThrow();
    assertThat(fit.allowable()).isCloseTo(0.012, within(1e-12));
    return fit.goingOn().strain();
  }
}
