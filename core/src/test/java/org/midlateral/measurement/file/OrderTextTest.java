package org.midlateral.measurement.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.midlateral.Drawn;
import org.midlateral.Seeded;
import org.midlateral.measurement.Design.Making;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.AllowedRange;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.ValueKind;

class OrderTextTest {
  /** More than there are keys. */
  private static final int DRAWS = 120;

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void theTemplateIsInOrderAndChoosesTheDefaults(LengthUnit unit) {
    Orders.Result result =
        Orders.parse(Template.text(unit, Making.AUTO), "template.yaml", List.of());

    assertThat(result.errors()).isEmpty();
    assertThat(result.cautions()).isEmpty();
    assertThat(result.order().measurements().unit()).isEqualTo(unit);
    assertThat(result.order().design()).isEqualTo(OrdersReadTest.defaultDesign());
  }

  @Test
  void theTemplateHasEveryKey() {
    String template = Template.text(LengthUnit.MM);

    for (InputKey key : KeyTable.standard().keys()) {
      assertThat(template).containsPattern("(?m)^[ #-]*" + key.name().replace("[]", "") + ":");
      assertThat(template.replaceAll("\\s*\\n\\s*#\\s*", " ")).contains(key.comment());
    }
    assertThat(template).contains("invented", "No person's name", "clears");
  }

  @Test
  void inchesOfTheTemplateAreFractionsOfARuler() {
    assertThat(Template.text(LengthUnit.IN)).contains("pip: 2 19/32 ").contains("wall: 1.6 mm ");
  }

  /** Any values within the ranges come back as they were, to the last bit. */
  @Seeded(150)
  void comesBackEqual(long seed) {
    Drawn drawn = new Drawn(seed);
    comesBackEqual(drawn.between(0, 1, DRAWS), drawn.pick(List.of(LengthUnit.values())));
  }

  /** Every value at the same limit of its range, or half-way. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 0.01, 0.5, 0.99, 1})
  void limitsComeBackEqual(double at) {
    double[] draws = new double[DRAWS];
    Arrays.fill(draws, at);
    for (LengthUnit unit : LengthUnit.values()) {
      comesBackEqual(draws, unit);
    }
  }

  private static void comesBackEqual(double[] draws, LengthUnit unit) {
    List<String> overrides = new ArrayList<>();
    int draw = 0;
    for (InputKey key : KeyTable.standard().keys()) {
      if (key.isOfItem() || key.path().startsWith("station") || key.path().startsWith("width")) {
        continue;
      }
      double at = draws[draw++];
      if (!key.choices().isEmpty() && !key.path().equals("unit")) {
        overrides.add(
            key.path() + "=" + key.choices().get((int) (at * 0.999 * key.choices().size())));
      } else if (key.kind().isNumeric()
          && key.kind() != ValueKind.COUNT
          && !key.path().contains("vents")) {
        AllowedRange range = key.usual().orElseGet(() -> key.refused().orElseThrow());
        double value = range.low() + at * (range.high() - range.low());
        overrides.add(key.path() + "=" + value + (key.kind() == ValueKind.LENGTH ? " mm" : ""));
      }
    }
    overrides.add(
        "relief.bubbles=[{station: " + draws[0] * 40 + " mm, girth: -3 mm, height: 1 mm}]");
    Orders.Result drawn = Orders.parse(Template.text(unit), "t.yaml", overrides);
    if (!drawn.ok()) {
      // Only values that do not fit each other can be refused here.
      assertThat(drawn.errors()).allMatch(e -> e.text().matches(".*(mix-up|puts the).*"));
      return;
    }

    Orders.Result again = Orders.parse(OrderText.write(drawn.order()), "again.yaml", List.of());

    assertThat(again.errors()).isEmpty();
    assertThat(again.order()).isEqualTo(drawn.order());
  }
}
