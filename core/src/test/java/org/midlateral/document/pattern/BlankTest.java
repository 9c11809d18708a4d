package org.midlateral.document.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.midlateral.Drawn;
import org.midlateral.Fingers;
import org.midlateral.RandomFile;
import org.midlateral.Seeded;
import org.midlateral.cut.MidlateralCut;
import org.midlateral.digit.DigitSurface;
import org.midlateral.digit.TapedDigit;
import org.midlateral.document.bench.BenchFiles;
import org.midlateral.measurement.Design.DistalEnd;
import org.midlateral.measurement.Design.TroughDesign;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.piece.Piece;
import org.midlateral.recipe.Orthosis;
import org.midlateral.trough.Trough;

class BlankTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private static final GeometryFactory PLANE = new GeometryFactory();

  /** A finger that is a cylinder of girth 60 from the web to the tip, 20 mm wide at the web. */
  private static Measurements cylinder() {
    return Fingers.ring()
        .withCircumference(
            Map.of(
                Level.PROXIMAL_PHALANX, 60.0,
                Level.PIP, 60.0,
                Level.MIDDLE_PHALANX, 60.0,
                Level.TIP, 60.0))
        .withWidth(Map.of(Level.WEB, 60.0 / Math.PI));
  }

  private static Piece trough(Measurements measured, TroughDesign design) throws DesignRefused {
    DigitSurface digit = TapedDigit.of(measured);
    return Trough.of(design, digit, MidlateralCut.of(measured, design, digit));
  }

  /**
   * Closed form: round a cylinder the sheet is a rectangle, once round over sheet and liner and 25
   * mm to pinch, less the corners of radius 4: (1 - π/4) 16 mm² each.
   */
  @Test
  void theBlankOfACylinderIsARectangleWithATongue() throws DesignRefused {
    Measurements measured = cylinder();
    TroughDesign design = Fingers.trough(0.5, DistalEnd.OPEN);
    Blank blank = Blank.of(measured, design, trough(measured, design));
    assertThat(blank.width()).isCloseTo(60 + 2 * Math.PI * 1.6 + 25, within(0.01));
    assertThat(blank.length()).isCloseTo(21 + 71 + 10, within(1e-9));
    assertThat(blank.thickness()).isEqualTo(1.6);

    Envelope box = blank.outline().getEnvelopeInternal();
    // Rounding the corners moves straight edges by less than a ten-thousandth of a millimetre.
    assertThat(box.getWidth()).isCloseTo(blank.width(), within(1e-4));
    assertThat(box.getHeight()).isCloseTo(blank.length(), within(1e-3));
    Geometry upper =
        blank.outline().intersection(PLANE.toGeometry(new Envelope(-200, 200, 10, 200)));
    double corners = 2 * (1 - Math.PI / 4) * 16;
    assertThat(upper.getArea()).isCloseTo(blank.width() * (81 - 10) - corners, within(0.1));
  }

  @Test
  void theTongueIsAsWideAsTheFingerAtTheWeb() throws DesignRefused {
    Measurements measured = cylinder();
    TroughDesign design = Fingers.trough(0.5, DistalEnd.OPEN);
    Blank blank = Blank.of(measured, design, trough(measured, design));
    assertThat(blank.tongueWidth()).isCloseTo(60 / Math.PI, within(1e-12));
    // Above the rounded corners of its end, and narrower than its root all the way.
    double nearEnd = widthAt(blank, -21 + 4.0);
    assertThat(nearEnd).isGreaterThan(60 / Math.PI);
    assertThat(widthAt(blank, -2)).isGreaterThan(nearEnd);
    assertThat(widthAt(blank, -2)).isLessThan(blank.width() / 2);
  }

  private static double widthAt(Blank blank, double station) {
    return widthAt(blank.outline(), station);
  }

  private static double widthAt(Geometry shape, double station) {
    return shape
        .intersection(PLANE.toGeometry(new Envelope(-200, 200, station - 0.01, station + 0.01)))
        .getEnvelopeInternal()
        .getWidth();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"bulbous-ring", "covered-tip", "left-deficit", "middle-inches", "slim-little"})
  void theTemplateLiesOnTheBlank(String sample) throws Exception {
    Orthosis orthosis = BenchFiles.orthosis(sample, "dorsal-shell.make=no");
    FlatPattern pattern = FlatPattern.of(orthosis.order(), orthosis.solids());
    assertThat(pattern.blank().outline().covers(pattern.template().outline())).isTrue();
  }

  /**
   * The trough's edge lies within the blank with something to cut away all round, but where it
   * comes nearer to the crease than that; above all beside the tongue's curve.
   */
  @Seeded(20)
  void theFinishedEdgeLiesWithinTheBlank(long seed) {
    Drawn drawn = new Drawn(seed);
    List<String> entries = new ArrayList<>();
    for (String entry : RandomFile.entries(drawn.even(RandomFile.DRAWS), 1.6)) {
      if (entry.matches("(hand|digit|circumference|length|width|angle)\\b.*")) {
        entries.add(entry);
      }
    }
    entries.add("trough.wrap=" + drawn.pick(List.of("0.5", "0.4", "0.6")));
    entries.add("trough.proximal-margin=" + drawn.pick(List.of("0", "3", "8")));
    entries.add("trough.distal=" + drawn.pick(List.of("open", "covered")));
    Order order = Orders.parse("reference: random", "random", entries).order();
    Piece trough;
    try {
      trough = trough(order.measurements(), order.design().trough());
    } catch (DesignRefused refused) {
      return;
    }
    Blank blank = Blank.of(order.measurements(), order.design().trough(), trough);
    double crease = -order.measurements().palmarCreaseToWeb();
    assertThat(blank.outline().buffer(1e-3).covers(blank.finished())).isTrue();
    Geometry edge =
        blank
            .finished()
            .getExteriorRing()
            .intersection(PLANE.toGeometry(new Envelope(-200, 200, crease + Blank.SPARE + 1, 200)));
    // Rounding the blank's inward corners only adds to it, the outward ones are far from the edge.
    assertThat(edge.distance(blank.outline().getExteriorRing())).isGreaterThan(0.8 * Blank.SPARE);
    LevelMark pip =
        LevelMark.of(order.measurements(), order.design().trough(), trough).stream()
            .filter(mark -> mark.level() == Level.PIP)
            .findFirst()
            .orElseThrow();
    assertThat(widthAt(blank.finished(), pip.station()))
        .isCloseTo(2 * pip.trim().flat(), within(0.05));
  }

  /** Invariant: half-marks on the skin are the trough's finished edge, wrap · C / 2. */
  @ParameterizedTest
  @ValueSource(strings = {"0.5", "0.45"})
  void theMarksAreTheTroughsEdge(String wrap) throws Exception {
    Orthosis orthosis =
        BenchFiles.orthosis("bulbous-ring", "trough.wrap=" + wrap, "dorsal-shell.make=no");
    TroughDesign design = orthosis.order().design().trough();
    Piece trough = orthosis.trough().piece();
    List<LevelMark> marks = LevelMark.of(orthosis.order().measurements(), design, trough);
    assertThat(marks).hasSize(5);
    for (LevelMark mark : marks) {
      double tape = orthosis.order().measurements().circumference().get(mark.level());
      assertThat(2 * mark.trim().skin()).isCloseTo(design.wrap() * tape, within(0.1));
      assertThat(mark.round().skin()).isCloseTo(tape, within(0.05));
      assertThat(mark.midlateral().skin()).isCloseTo(tape / 4, within(0.05));
      // A quarter of the girth turns the normal by a right angle; half a wall is in the middle.
      assertThat(mark.midlateral().flat())
          .isCloseTo(tape / 4 + Math.PI / 2 * (1.0 + 0.8), within(1e-6));
      assertThat(mark.midlateral().over())
          .isCloseTo(tape / 4 + Math.PI / 2 * (1.0 + 1.6), within(1e-6));
      if (mark.level() != Level.TIP) {
        Geometry edge =
            orthosis
                .trough()
                .piece()
                .outline()
                .polygon()
                .intersection(
                    PLANE.toGeometry(
                        new Envelope(-60, 60, mark.station() - 1e-3, mark.station() + 1e-3)));
        assertThat(edge.getEnvelopeInternal().getWidth())
            .as(mark.level().key())
            .isCloseTo(2 * mark.trim().skin(), within(0.1));
      }
    }
  }

  /** Off the developable parts the template keeps the arc's length within its own distortion. */
  @Test
  void theTemplateIsAsWideAsTheSheetBetweenTheMarks() throws Exception {
    Orthosis orthosis =
        BenchFiles.orthosis("slim-little", "dorsal-shell.make=no", "relief.make=no");
    FlatPattern pattern = FlatPattern.of(orthosis.order(), orthosis.solids());
    LevelMark mark = pattern.marks().get(0);
    TroughDesign design = orthosis.order().design().trough();
    var line = pattern.template().unrolled().level(mark.station());
    double flat = 0;
    for (int i = 1; i < line.size(); i++) {
      flat +=
          Math.hypot(line.get(i).x() - line.get(i - 1).x(), line.get(i).y() - line.get(i - 1).y());
    }
    // The mid-surface ends half a wall before the finished edge, on each side.
    double sheet =
        2 * mark.trim().flat() + Math.PI * design.clearance() - orthosis.trough().piece().wall();
    assertThat(flat).isCloseTo(sheet, within(0.01 * sheet));
  }

  /** Centred over the PIP joint, alike on both sides, past the rims by the overlap at least. */
  @Test
  void theDorsalBlankOverlapsTheRims() throws Exception {
    Orthosis orthosis = BenchFiles.orthosis("bulbous-ring");
    double overlap = orthosis.order().design().dorsalShell().overlap();
    DorsalBlank blank = FlatPattern.of(orthosis.order(), orthosis.solids()).dorsal().orElseThrow();
    var box = blank.finished().getEnvelopeInternal();
    assertThat(blank.axis()).isEqualTo(orthosis.digit().pipAxis());
    assertThat(box.centre().y).isCloseTo(blank.axis(), within(1e-9));
    assertThat(box.getMinX()).isCloseTo(-box.getMaxX(), within(1e-6));
    for (var rim : blank.rims()) {
      var at = rim.get(rim.size() / 2);
      double edge = Math.abs(at.x);
      double past = blank.finished().getBoundary().distance(GEOMETRY.createPoint(at));
      assertThat(past).isBetween(0.8 * overlap, 1.6 * overlap);
      assertThat(edge).isLessThan(box.getMaxX());
    }
    assertThat(blank.outline().contains(blank.finished())).isTrue();
    assertThat(blank.outline().getBoundary().distance(blank.finished()))
        .isCloseTo(DorsalBlank.SPARE, within(0.05));
    Orthosis alone = BenchFiles.orthosis("bulbous-ring", "dorsal-shell.make=no");
    assertThat(FlatPattern.of(alone.order(), alone.solids()).dorsal()).isEmpty();
  }
}
