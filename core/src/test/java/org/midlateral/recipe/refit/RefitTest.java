package org.midlateral.recipe.refit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.accuracy.ErrorBudget;
import org.midlateral.digit.Slice;
import org.midlateral.digit.TapedDigit;
import org.midlateral.document.drawing.Lengths;
import org.midlateral.json.RecordJson;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.query.BoundingVolumeHierarchy;
import org.midlateral.recipe.Orthosis;

/** A piece on the finger it was made for, on a swollen one and on one that shrank. */
class RefitTest {
  private static Orthosis made;

  private static Order sample(List<String> more) {
    List<String> all = new ArrayList<>(more);
    all.add("print.edge-length=1.2");
    return Orders.read(Path.of("..", "samples", "slim-little.yaml"), all).order();
  }

  @BeforeAll
  static void make() throws Exception {
    made = Orthosis.make(sample(List.of()));
  }

  /** The same finger with every tape reading changed by so many millimetres. */
  private static Measurements changed(double by) {
    List<String> tapes = new ArrayList<>();
    made.order()
        .measurements()
        .circumference()
        .forEach((level, tape) -> tapes.add("circumference." + level.key() + "=" + (tape + by)));
    return sample(tapes).measurements();
  }

  @Test
  void theSameFingerFitsWithTheGapsAsMade() {
    for (Refit refit : Refit.of(made, made.order().measurements())) {
      assertThat(refit.verdict()).isEqualTo(Refit.Verdict.FITS);
      assertThat(refit.mean()).isCloseTo(refit.asMade(), within(1e-9));
      assertThat(refit.pressedShare()).isZero();
      assertThat(refit.levels()).isNotEmpty();
      for (Refit.AtLevel level : refit.levels()) {
        assertThat(level.mean()).isCloseTo(level.asMade(), within(1e-9));
        assertThat(level.circumferenceChange()).isZero();
      }
    }
    Refit trough = Refit.of(made, made.order().measurements()).get(0);
    assertThat(trough.min()).isCloseTo(0.3, within(ErrorBudget.CLEARANCE));
  }

  /** As where a piece was moulded on the skin: what touches does not press. */
  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.7, 1.3})
  void aPieceWithoutClearanceFitsItsOwnFinger(double liner) throws Exception {
    Orthosis touching =
        Orthosis.make(
            sample(
                List.of(
                    "trough.clearance=0", "trough.liner=" + liner, "dorsal-shell.clearance=0")));
    assertThat(Refit.of(touching, touching.order().measurements()))
        .allSatisfy(refit -> assertThat(refit.verdict()).isEqualTo(Refit.Verdict.FITS));
  }

  /** Four millimetres round are 0.64 mm more radius: twice the clearance of the trough. */
  @Test
  void aSwollenFingerIsTight() {
    Refit trough = Refit.of(made, changed(4)).get(0);

    assertThat(trough.verdict()).isEqualTo(Refit.Verdict.TIGHT);
    assertThat(trough.min()).isNegative();
    assertThat(trough.pressedShare()).isGreaterThan(Refit.TIGHT_SHARE);
    assertThat(trough.why()).contains("swelling").contains("+4.0 mm");
  }

  @Test
  void aFingerThatShrankIsLoose() {
    Refit trough = Refit.of(made, changed(-6)).get(0);

    assertThat(trough.verdict()).isEqualTo(Refit.Verdict.LOOSE);
    assertThat(trough.min()).isPositive();
    assertThat(trough.pressedShare()).isZero();
    assertThat(trough.why()).contains("Swelling that went down").contains("-6.0 mm");
  }

  /**
   * Round the whole finger, the radius falls by the tape's change over 2 pi; trough and shell meet
   * it from opposite sides about one centreline, so their means are held against it one by one.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-4, -2, 2})
  void theMeanGapFollowsTheRadius(double change) {
    for (Refit refit : Refit.of(made, changed(change))) {
      double more = -change / (2 * Math.PI);
      assertThat(refit.mean() - refit.asMade()).isCloseTo(more, within(0.25 * Math.abs(more)));
    }
  }

  @Test
  void tellsWhereItPresses() {
    double pip = made.order().measurements().circumference().get(Level.PIP);
    Measurements later = sample(List.of("circumference.pip=" + (pip + 5))).measurements();
    Refit trough = Refit.of(made, later).get(0);

    assertThat(trough.verdict()).isEqualTo(Refit.Verdict.TIGHT);
    assertThat(trough.minStation()).isCloseTo(made.digit().pipAxis(), within(4.0));
    assertThat(trough.levels())
        .filteredOn(l -> l.level().equals("pip"))
        .singleElement()
        .satisfies(l -> assertThat(l.circumferenceChange()).isCloseTo(5, within(1e-9)));
  }

  /** What a liner takes is not there to swell into. */
  @Test
  void aLinerTakesItsThickness() throws Exception {
    Orthosis lined = Orthosis.make(sample(List.of("trough.liner=1")));

    Refit same = Refit.of(lined, lined.order().measurements()).get(0);
    assertThat(same.min()).isCloseTo(0.3, within(ErrorBudget.CLEARANCE));
    assertThat(Refit.of(lined, changed(4)).get(0).verdict()).isEqualTo(Refit.Verdict.TIGHT);
  }

  /** Relieved on the radial side, the same finger of either hand is pressed on its ulnar side. */
  @Test
  void girthIsRadialOnBothHands() throws Exception {
    String bubble = "relief.bubbles=[{station: 20, girth: 7, height: 1, length: 14, width: 7}]";
    List<Double> girths = new ArrayList<>();
    for (String hand : List.of("right", "left")) {
      Orthosis relieved = Orthosis.make(sample(List.of(bubble, "hand=" + hand)));
      girths.add(Refit.of(relieved, changed(3)).get(0).minGirth());
    }
    assertThat(girths.get(0)).isLessThan(-1);
    assertThat(girths.get(1)).isCloseTo(girths.get(0), within(1e-6));
  }

  /** Relieved on one side of its dorsum, the shell is pressed on the other, where it is told. */
  @ParameterizedTest
  @ValueSource(ints = {17, -17})
  void theLeastGapOfTheShellIsWhereItIsTold(int girth) throws Exception {
    String bubble = "{station: 20, girth: " + girth + ", height: 1, length: 14, width: 8}";
    Orthosis relieved =
        Orthosis.make(
            sample(List.of("relief.bubbles=[" + bubble + "]", "dorsal-shell.clearance=0.5")));
    Measurements later = changed(3);

    Refit shell = Refit.of(relieved, later).get(1);

    // Both fingers are straight and of one length, so that the shell lies where it was made.
    Slice slice = TapedDigit.of(later).slice(shell.minStation());
    assertThat(shell.minGirth() * girth).isNegative();
    assertThat(Math.abs(shell.minGirth())).isBetween(8.0, slice.circumference() / 2);
    Vector3D foot = slice.point(slice.angle(shell.minGirth()));
    BoundingVolumeHierarchy inside =
        BoundingVolumeHierarchy.of(relieved.dorsalShell().orElseThrow().inner());
    assertThat(inside.closest(foot).distance()).isCloseTo(Math.abs(shell.min()), within(0.01));
  }

  @Test
  void aLevelTapedOnlyLaterHasNoChange() throws Exception {
    Measurements later = sample(List.of("circumference.dip=40")).measurements();
    List<Refit> refits = Refit.of(made, later);

    assertThat(refits.get(0).levels())
        .filteredOn(l -> l.level().equals("dip"))
        .singleElement()
        .satisfies(l -> assertThat(l.circumferenceChange()).isNaN());
    assertThat(RecordJson.ROUNDED.text(refits.get(0))).contains("\"circumferenceChange\" : null");
  }

  private static Measurements bent(double degrees) {
    return sample(List.of("angle.pip-extension-deficit=" + degrees)).measurements();
  }

  /** Twelve degrees lost with every girth as it was: the angle, and no word of swelling. */
  @Test
  void lostExtensionIsToldBeforeHowItSits() {
    for (Refit refit : Refit.of(made, bent(12))) {
      assertThat(refit.verdict()).isEqualTo(Refit.Verdict.EXTENSION_LOST);
      assertThat(refit.angleChange()).isCloseTo(12, within(1e-9));
      assertThat(refit.why())
          .startsWith("12° of extension were lost")
          .contains("Do not force it on")
          .contains("Ask")
          .doesNotContain("look for swelling")
          .doesNotContain("went down");
    }
  }

  @Test
  void regainedExtensionIsToldAsWhatThePieceNoLongerHolds() throws Exception {
    Orthosis former = Orthosis.make(sample(List.of("angle.pip-extension-deficit=14")));

    for (Refit refit : Refit.of(former, bent(4))) {
      assertThat(refit.verdict()).isEqualTo(Refit.Verdict.EXTENSION_REGAINED);
      assertThat(refit.why())
          .startsWith("10° of extension were regained")
          .contains("still holds the former angle")
          .doesNotContain("welling");
    }
  }

  /** Nine degrees are less than a goniometer can tell: the piece sits as at the angle made for. */
  @Test
  void anAngleThatMayBeTheGoniometersIsNone() {
    for (Refit refit : Refit.of(made, bent(9))) {
      assertThat(refit.verdict()).isEqualTo(Refit.Verdict.FITS);
      assertThat(refit.mean()).isCloseTo(refit.asMade(), within(1e-9));
      assertThat(refit.angleChange()).isCloseTo(9, within(1e-9));
    }
  }

  /** Deeper than what is tight, but no larger than a fold of skin. */
  @Test
  void aSpotIsNotTight() throws Exception {
    double pip = 48;
    double by = 0;
    Refit trough;
    do {
      by += 0.05;
      Measurements later = sample(List.of("circumference.pip=" + (pip + by))).measurements();
      trough = Refit.of(made, later).get(0);
    } while (trough.deepShare() == 0);

    assertThat(trough.min()).isLessThan(-Refit.TIGHT_DEPTH);
    assertThat(trough.deepShare()).isLessThan(Refit.SPOT);
    assertThat(trough.verdict() == Refit.Verdict.TIGHT)
        .isEqualTo(trough.pressedShare() > Refit.TIGHT_SHARE);
  }

  /** Pressed in, though no girth grew by more than a tape can tell: no swelling is guessed. */
  @Test
  void tightWithoutAGirthThatGrewIsNoSwelling() {
    Refit trough = Refit.of(made, changed(2.4)).get(0);

    assertThat(trough.verdict()).isEqualTo(Refit.Verdict.TIGHT);
    assertThat(trough.why()).contains("measure again").doesNotContain("welling");
  }

  @Test
  void whatALinerCanGiveIsSaid() throws Exception {
    Orthosis lined = Orthosis.make(sample(List.of("trough.liner=1")));

    assertThat(Refit.of(lined, changed(4)).get(0).why()).contains("thinner liner");
    assertThat(Refit.of(made, changed(4)).get(0).why()).doesNotContain("liner");
    assertThat(Refit.of(made, changed(-6)).get(0).why()).contains("a liner about");
  }

  @Test
  void inchesAreToldInInches() throws Exception {
    Path inches = Path.of("..", "samples", "middle-inches.yaml");
    List<String> coarse = List.of("print.edge-length=2 mm", "dorsal-shell.make=no");
    Order order = Orders.read(inches, coarse).order();
    List<String> swollen = List.of("circumference.pip=2 7/8");
    Measurements later = Orders.read(inches, swollen).order().measurements();
    double change = later.circumference().get(Level.PIP) - pip(order);

    assertThat(Refit.of(Orthosis.make(order), later).get(0).why())
        .contains("+" + new Lengths(LengthUnit.IN).text(change) + " in at the PIP joint");
  }

  private static double pip(Order order) {
    return order.measurements().circumference().get(Level.PIP);
  }
}
