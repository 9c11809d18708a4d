package org.midlateral.viewer.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.Level;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.file.Orders;
import org.midlateral.viewer.sample.Sample;

/** Another unit: the same finger where the numbers are converted, the same numbers where not. */
class UnitChangeTest {
  private static Measurements measured(Draft draft) {
    return Orders.parse(DraftText.write(draft), "x", List.of()).order().measurements();
  }

  @Test
  void convertedItIsTheSameFinger() throws Exception {
    for (Sample sample : Sample.values()) {
      Draft draft = DraftText.read(sample.text());
      Measurements before = measured(draft);
      for (LengthUnit unit : LengthUnit.values()) {
        Draft converted = new UnitChange(draft, unit).converted();
        assertThat(converted.unit()).isEqualTo(unit);
        for (Level level : before.circumference().keySet()) {
          assertThat(measured(converted).circumference().get(level))
              .as("%s in %s: %s", sample, unit, level)
              .isCloseTo(before.circumference().get(level), within(0.0015));
        }
      }
    }
  }

  @Test
  void whatCarriesItsOwnUnitStaysAsTyped() {
    Draft draft =
        new Draft(Map.of("circumference.pip", "2 3/4 in", "trough.wall", "1.6", "hand", "left"));
    Draft converted = new UnitChange(draft, LengthUnit.CM).converted();
    assertThat(converted.get("circumference.pip")).isEqualTo("2 3/4 in");
    assertThat(converted.get("trough.wall")).isEqualTo("0.16");
    assertThat(converted.get("hand")).isEqualTo("left");
  }

  @Test
  void itIsAskedOnlyWhereANumberWouldChangeItsMeaning() {
    assertThat(new UnitChange(Draft.fresh("hand"), LengthUnit.IN).isToBeAsked()).isFalse();
    Draft typed = Draft.fresh("hand").with("circumference.pip", "70");
    assertThat(new UnitChange(typed, LengthUnit.IN).isToBeAsked()).isTrue();
    assertThat(new UnitChange(typed, LengthUnit.MM).isToBeAsked()).isFalse();
    assertThat(new UnitChange(typed, LengthUnit.IN).readAnew().get("circumference.pip"))
        .isEqualTo("70");
  }
}
