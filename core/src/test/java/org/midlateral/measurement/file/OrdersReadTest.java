package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.midlateral.measurement.Design;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Hand;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;

class OrdersReadTest {

  @TempDir Path directory;

  static final String PLAIN =
      """
      reference: demo-ring-a
      hand: right
      digit: ring
      unit: mm
      circumference:
        proximal-phalanx: 62
        pip: 66
        middle-phalanx: 56
        tip: 48
      length:
        palmar-crease-to-web: 21
        web-to-pip: 24
        pip-to-dip: 23
        dip-to-tip: 24
      width: {}
      angle:
        pip-extension-deficit: 15
      """;

  @Test
  void readsMeasurementsInMillimetresAndRadians() throws Exception {
    Path file = directory.resolve("demo.yaml");
    Files.writeString(file, PLAIN);

    Orders.Result result = Orders.read(file, List.of());

    assertThat(result.errors()).isEmpty();
    Measurements measured = result.order().measurements();
    assertThat(measured.reference()).isEqualTo("demo-ring-a");
    assertThat(measured.hand()).isEqualTo(Hand.RIGHT);
    assertThat(measured.digit()).isEqualTo(Digit.RING);
    assertThat(measured.circumference())
        .containsEntry(Level.PIP, 66.0)
        .containsEntry(Level.TIP, 48.0)
        .hasSize(4);
    assertThat(measured.pulpEnd()).isEqualTo(71);
    assertThat(measured.pipExtensionDeficit()).isEqualTo(Math.PI / 12);
    assertThat(result.order().design()).isEqualTo(defaultDesign());
    assertThat(result.cautions()).isEmpty();
  }

  @Test
  void readsJson() {
    String json =
        """
        {
        \t"reference": 12, "hand": "left", "digit": "little",
        \t"circumference": {"proximal-phalanx": 5.2e1, "pip": 54, "middle-phalanx": "4.6 cm", "tip": 40},
        \t"length": {"palmar-crease-to-web": 18, "web-to-pip": 18, "pip-to-dip": 17, "dip-to-tip": 20},
        \t"dorsal-shell": {"make": false, "length": "auto"},
        \t"relief": {"make": true, "bubbles": [{"station": 20, "girth": -9, "height": 1, "width": 4}]}
        }
        """;

    Orders.Result result = Orders.parse(json, "demo.json", List.of());

    assertThat(result.errors()).isEmpty();
    assertThat(result.order().measurements().reference()).isEqualTo("12");
    assertThat(result.order().measurements().circumference())
        .containsEntry(Level.PROXIMAL_PHALANX, 52.0)
        .containsEntry(Level.MIDDLE_PHALANX, 46.0);
    assertThat(result.order().design().dorsalShell().make()).isFalse();
    assertThat(result.order().design().relief().make()).isEqualTo(Design.Make.YES);
    assertThat(result.order().design().relief().bubbles())
        .containsExactly(new Design.Bubble(20, -9, 1, 8, 4));
  }

  @Test
  void overridesGoBeforeTheFile() {
    List<String> overrides =
        List.of(
            "circumference.pip=2 1/2 in",
            "trough.wrap=0.45",
            "relief.bubbles=[{station: 24, girth: 10, height: 1}]");

    Order order = Orders.parse(PLAIN, "demo.yaml", overrides).order();

    assertThat(order.measurements().circumference()).containsEntry(Level.PIP, 63.5);
    assertThat(order.design().trough().wrap()).isEqualTo(0.45);
    assertThat(order.design().relief().bubbles()).hasSize(1);
  }

  /** The design of a file that chooses nothing. */
  static Design defaultDesign() {
    return new OrderBuilder(new Settings(Map.of())).design();
  }

  /** One key of an item that the file has; an item more would want all its keys. */
  @Test
  void anOverrideMayBeOfOneKeyOfAnItem() {
    String bubbles = "relief.bubbles=[{station: 20, girth: 2, height: 1}]";

    Orders.Result lower =
        Orders.parse(PLAIN, "demo.yaml", List.of(bubbles, "relief.bubbles[0].height=0.4"));
    assertThat(lower.errors()).isEmpty();
    assertThat(lower.order().design().relief().bubbles())
        .singleElement()
        .satisfies(bubble -> assertThat(bubble.height()).isEqualTo(0.4))
        .satisfies(bubble -> assertThat(bubble.station()).isEqualTo(20));
    assertThat(
            Orders.parse(PLAIN, "demo.yaml", List.of(bubbles, "relief.bubbles[1].height=0.4"))
                .errors())
        .singleElement()
        .satisfies(error -> assertThat(error.message()).contains("the whole list, relief.bubbles"));
  }

  @Test
  void defaultsAreThoseOfTheTable() {
    Design design = defaultDesign();

    assertThat(design.trough().wall()).isEqualTo(1.6);
    assertThat(design.trough().vents()).isEqualTo(new Design.VentDesign(0, 8));
    assertThat(design.dorsalShell().make()).isTrue();
    assertThat(design.dorsalShell().length()).isEmpty();
    assertThat(design.closure().layers()).isEqualTo(1);
    assertThat(design.material().name()).isEqualTo("pa12");
    assertThat(design.print().process()).isEqualTo(Design.ProcessDesign.POWDER);
    assertThat(design.print().label()).isFalse();
    assertThat(design.support().moment()).isEmpty();
  }
}
