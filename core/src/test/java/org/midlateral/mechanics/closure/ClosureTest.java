package org.midlateral.mechanics.closure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.document.bench.BenchFiles;
import org.midlateral.measurement.Design.ClosureKind;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.Concerns;
import org.midlateral.recipe.Orthosis;

class ClosureTest {

  private static Closure closure(Orthosis orthosis) {
    return Closure.of(orthosis.order(), orthosis.digit(), orthosis.relief(), orthosis.solids());
  }

  /** Closed form: 1 N over 25 mm round a radius of 10 mm is 1 / 250 MPa. */
  @Test
  void laplaceByHand() {
    assertThat(Laplace.pressure(1, 1, 25, 2 * Math.PI * 10)).isCloseTo(0.004, within(1e-15));
    assertThat(Laplace.pressure(2, 1, 25, 2 * Math.PI * 10)).isCloseTo(0.008, within(1e-15));
  }

  /**
   * The bandager's form, P (mmHg) = 4620 n T / (C W), T in kgf, C and W in cm: S. Thomas, The use
   * of the Laplace equation in the calculation of sub-bandage pressure, World Wide Wounds (2003);
   * the constant from memory, rounded to three figures there.
   */
  @Test
  void laplaceAsBandagersWriteIt() {
    double tension = 0.1 * 9.80665;
    double pressure = Laplace.pressure(2, tension, 25, 66) * Laplace.MMHG_PER_MPA;
    assertThat(pressure).isCloseTo(4620 * 2 * 0.1 / (6.6 * 2.5), within(0.05));
  }

  /** Closed form: round a bare finger the taut girth is the skin's own. */
  @Test
  void theTautGirthOfABareFingerIsItsCircumference() throws Exception {
    Measurements measured = BenchFiles.orthosis("slim-little").order().measurements();
    DigitSurface digit = TapedDigit.of(measured);
    assertThat(new OuterGirth(digit, List.of()).at(digit.pipAxis()))
        .isCloseTo(measured.circumference().get(Level.PIP), within(0.001));
  }

  /**
   * Closed form: over a round finger of girth 2πr in a closed shell of outer radius R the strap is
   * 2πR and the lap; with a trough alone of wrap one half it is a half round and the taut rest.
   */
  @Test
  void theStrapOfACircleIsItsGirthAndTheLap() throws Exception {
    String width = "width.pip=" + 56 / Math.PI;
    Orthosis round =
        BenchFiles.orthosis(
            "slim-little",
            "circumference.proximal-phalanx=56",
            "circumference.pip=56",
            "circumference.middle-phalanx=56",
            "circumference.tip=50",
            "width.proximal-phalanx=" + 56 / Math.PI,
            width,
            "width.middle-phalanx=" + 56 / Math.PI,
            "trough.clearance=0",
            "dorsal-shell.make=no",
            "closure.kind=strap");
    Closure closure = closure(round);
    Strap strap = closure.straps().get(0);
    double inner = 28 / Math.PI;
    double outer = inner + round.trough().piece().wall();
    assertThat(strap.length()).isCloseTo(strap.girth() + 30, within(1e-9));
    assertThat(strap.station()).isEqualTo(round.digit().pipAxis());
    // Half round the outside of the trough, then taut over its rims and round the bare dorsum:
    // from the outer rim's round edge tangent to the skin's circle.
    double wall = outer - inner;
    double edge = (inner + outer) / 2;
    double reach = Math.sqrt(edge * edge - Math.pow(inner - wall / 2, 2));
    double lean = Math.acos((inner - wall / 2) / edge);
    double taut = 2 * reach + 2 * lean * wall / 2 + (Math.PI - 2 * lean) * inner;
    assertThat(strap.girth()).isCloseTo(Math.PI * outer + taut, within(0.4));
    Strap bare = Strap.of(round.order().design().closure(), 0, 2 * Math.PI * 9, 100).orElseThrow();
    assertThat(bare.length()).isCloseTo(2 * Math.PI * 9 + 30, within(1e-12));
  }

  /** Figures in MPa as everywhere; the sentence in kPa and mmHg, as bandagers speak. */
  @Test
  void aTautWrapIsWarnedOf() throws Exception {
    Closure closure =
        closure(BenchFiles.orthosis("bulbous-ring", "closure.tension=3", "dorsal-shell.make=no"));
    Finding finding = closure.findings().get(0);
    assertThat(finding.code()).isEqualTo("wrap-presses");
    assertThat(finding.value()).isBetween(0.015, 0.035);
    assertThat(finding.limit()).isEqualTo(Concerns.PRESSURE);
    assertThat(finding.text())
        .contains(
            String.format(Locale.ROOT, "up to %.1f kPa", 1000 * finding.value()),
            "4.3 kPa (32 mmHg)");
  }

  @Test
  void aStrapIsNotAdvisedOverABulbousJoint() throws Exception {
    Closure closure = closure(BenchFiles.orthosis("bulbous-ring", "closure.kind=strap"));
    assertThat(closure.straps()).isEmpty();
    assertThat(closure.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo("strap-over-sore-joint");
              assertThat(f.severity()).isEqualTo(Finding.Severity.CAUTION);
              assertThat(f.text())
                  .contains("bulbous", "elastic wrap", "sleeve")
                  .doesNotContain("wound");
            });
  }

  @Test
  void norOverASoreOne() throws Exception {
    Closure closure =
        closure(BenchFiles.orthosis("middle-inches", "relief.make=yes", "closure.kind=strap"));
    assertThat(closure.straps()).isEmpty();
    assertThat(closure.findings().get(0).text()).contains("sore spot");
    assertThat(closure(BenchFiles.orthosis("middle-inches")).straps()).hasSize(2);
  }

  /** On a slim finger two shell edges leave less than the hook needs: said, and a wrap instead. */
  @Test
  void aHookNeedsRoomBetweenTheShellsEdges() throws Exception {
    Closure closed = closure(BenchFiles.orthosis("slim-little", "closure.kind=strap"));
    assertThat(closed.straps()).isEmpty();
    assertThat(closed.served()).isEqualTo(ClosureKind.WRAP);
    assertThat(closed.findings().get(0))
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo("strap-no-room");
              assertThat(f.value()).isLessThan(f.limit());
              assertThat(f.limit()).isEqualTo(24);
            });
    Closure open =
        closure(BenchFiles.orthosis("slim-little", "closure.kind=strap", "dorsal-shell.make=no"));
    assertThat(open.straps()).hasSize(2);
    assertThat(open.served()).isEqualTo(ClosureKind.STRAP);
  }

  /** What serves instead is warned of as if it had been chosen. */
  @ParameterizedTest
  @CsvSource({"strap, bulbous-ring, yes", "tape, covered-tip, no"})
  void theWrapThatStandsInIsWarnedOfToo(String kind, String sample, String shell) throws Exception {
    Closure closure =
        closure(
            BenchFiles.orthosis(
                sample, "closure.kind=" + kind, "closure.tension=4", "dorsal-shell.make=" + shell));
    assertThat(closure.served()).isEqualTo(ClosureKind.WRAP);
    assertThat(closure.findings())
        .extracting(Finding::code)
        .containsExactly(
            kind.equals("tape") ? "tape-on-skin" : "strap-over-sore-joint", "wrap-presses");
  }

  /** A wrap of half overlap lies in two layers; every turn is a girth and a slope. */
  @Test
  void theWrapsLengthIsItsTurns() throws Exception {
    Orthosis orthosis = BenchFiles.orthosis("slim-little", "closure.overlap=0.5");
    ElasticWrap wrap = closure(orthosis).wrap();
    assertThat(wrap.layers()).isEqualTo(2);
    assertThat(wrap.passes()).isEqualTo(1);
    double least = 37 * wrap.turns();
    double most = (48 + 2 * Math.PI * 6) * wrap.turns() + 30;
    assertThat(wrap.length()).isBetween(least, most);
    ElasticWrap twice = closure(BenchFiles.orthosis("slim-little", "closure.layers=4")).wrap();
    assertThat(twice.passes()).isEqualTo(2);
    assertThat(twice.length() - 30).isCloseTo(2 * (wrap.length() - 30), within(1e-6));
  }

  /** A band as wide as the trough is long has nothing to overlap. */
  @Test
  void aSingleTurnIsOneLayer() throws Exception {
    String[] wide = {"closure.width=60", "closure.overlap=0.5", "closure.layers=1"};
    ElasticWrap once = closure(BenchFiles.orthosis("slim-little", wide)).wrap();
    assertThat(once.turns()).isEqualTo(1);
    assertThat(once.layers()).isEqualTo(1);
    wide[2] = "closure.layers=2";
    ElasticWrap twice = closure(BenchFiles.orthosis("slim-little", wide)).wrap();
    assertThat(twice.passes()).isEqualTo(2);
    assertThat(twice.pressures().get(0).pressure())
        .isCloseTo(2 * once.pressures().get(0).pressure(), within(1e-12));
  }

  /** On the shell throughout, and no turn on another. */
  @ParameterizedTest
  @CsvSource({"8, 2", "12, 1", "20, 1"})
  void tapeStaysOnTheShell(double width, int turns) throws Exception {
    Orthosis orthosis =
        BenchFiles.orthosis("slim-little", "dorsal-shell.make=yes", "closure.width=" + width);
    Tape tape = closure(orthosis).tape();
    var outline = orthosis.dorsalShell().orElseThrow().piece().outline();
    assertThat(tape.stations()).hasSize(turns);
    assertThat(tape.stations().get(0) - width / 2)
        .isGreaterThanOrEqualTo(outline.flankStart() - 1e-9);
    if (turns == 2) {
      assertThat(tape.stations().get(1) + width / 2).isLessThanOrEqualTo(outline.flankEnd() + 1e-9);
      assertThat(tape.stations().get(1) - tape.stations().get(0)).isGreaterThanOrEqualTo(width);
    }
  }

  @Test
  void tapeWithoutAShellLiesOnSkin() throws Exception {
    Closure closure =
        closure(BenchFiles.orthosis("covered-tip", "closure.kind=tape", "dorsal-shell.make=no"));
    assertThat(closure.findings())
        .extracting(Finding::code)
        .containsExactly("tape-on-skin", "wrap-presses");
    Closure closed = closure(BenchFiles.orthosis("covered-tip", "closure.kind=tape"));
    assertThat(closed.findings()).isEmpty();
    assertThat(closure.isTapeOnSkin()).isTrue();
    assertThat(closed.isTapeOnSkin()).isFalse();
    assertThat(closed.tape().lengths()).allMatch(length -> length > 61 + 30);
  }

  @Test
  void aSleeveIsSizedByTheGirthOverTheOrthosis() throws Exception {
    Sleeve slim = closure(BenchFiles.orthosis("slim-little", "dorsal-shell.make=no")).sleeve();
    assertThat(slim.levels()).hasSize(4).allMatch(level -> level.worn() > level.skin());
    // 54.6 mm at the thickest, stretched by a half; 43.7 mm at the thinnest, by a twentieth.
    assertThat(slim.tightest()).isCloseTo(18.2, within(0.05));
    assertThat(slim.slackest()).isCloseTo(20.8, within(0.05));
    assertThat(slim.oneWidthServes()).isTrue();
  }

  /** Over shell and bulge 93.1 mm round, at the tip 62.0 mm. */
  @Test
  void noEvenSleeveHoldsABulbousFinger() throws Exception {
    Sleeve bulbous = closure(BenchFiles.orthosis("bulbous-ring")).sleeve();
    assertThat(bulbous.tightest()).isCloseTo(31.05, within(0.05));
    assertThat(bulbous.slackest()).isCloseTo(29.5, within(0.05));
    assertThat(bulbous.oneWidthServes()).isFalse();
    assertThat(bulbous.parts()).hasSize(2);
    assertThat(bulbous.parts().get(0).to()).isEqualTo(bulbous.parts().get(1).from());
    for (LevelGirth level : bulbous.levels()) {
      boolean proximal = level.station() < bulbous.parts().get(0).to();
      Sleeve.SleevePart part = bulbous.parts().get(proximal ? 0 : 1);
      // Either width stretches by 5 to 50 % over every level it covers.
      assertThat(level.worn() / 2 / part.tightest()).isLessThanOrEqualTo(1.5 + 1e-9);
      assertThat(level.worn() / 2 / part.slackest()).isGreaterThanOrEqualTo(1.05 - 1e-9);
      assertThat(part.tightest()).isLessThanOrEqualTo(part.slackest());
    }
  }
}
