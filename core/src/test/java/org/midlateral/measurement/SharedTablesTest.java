package org.midlateral.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.ValueKind;
import org.midlateral.shared.SharedData;

/** The tables of the shared data agree with each other and with the records. */
class SharedTablesTest {

  private final KeyTable table = KeyTable.standard();

  @Test
  void everyKeySaysWhatItIsAndWhereItComesFrom() {
    for (InputKey key : table.keys()) {
      assertThat(key.comment()).as(key.path()).endsWith(".").hasSizeGreaterThan(10);
      assertThat(key.source()).as(key.path()).isNotBlank();
      boolean bounded = key.kind().isNumeric() || key.kind() == ValueKind.LIST;
      assertThat(key.refused().isPresent()).as(key.path()).isEqualTo(bounded);
      assertThat(key.choices().isEmpty()).as(key.path()).isEqualTo(key.kind() != ValueKind.CHOICE);
      assertThat(key.required() && key.standard().isPresent()).as(key.path()).isFalse();
      assertThat(key.example().isPresent())
          .as(key.path())
          .isEqualTo(key.required() && !key.isOfItem());
    }
    assertThat(table.keys())
        .extracting(InputKey::section)
        .filteredOn(table::isSection)
        .isNotEmpty()
        .noneMatch(section -> table.sectionComment(section).isEmpty());
  }

  @Test
  void usualRangesLieWithinTheAllowedAndDefaultsWithinTheUsual() {
    for (InputKey key : table.keys()) {
      key.usual()
          .ifPresent(
              usual -> {
                assertThat(key.refused().orElseThrow().contains(usual.low()))
                    .as(key.path())
                    .isTrue();
                assertThat(key.refused().orElseThrow().contains(usual.high()))
                    .as(key.path())
                    .isTrue();
                key.standard()
                    .filter(value -> !key.or().contains(value))
                    .ifPresent(
                        value ->
                            assertThat(usual.contains(Double.parseDouble(value)))
                                .as(key.path())
                                .isTrue());
              });
    }
  }

  @Test
  void choicesAreThoseOfTheRecords() {
    assertChoices("hand", Hand.values());
    assertChoices("digit", Digit.values());
    assertChoices("unit", LengthUnit.values());
    assertChoices("trough.distal", Design.DistalEnd.values());
    assertChoices("relief.make", Design.Make.values());
    assertChoices("closure.kind", Design.ClosureKind.values());
    assertChoices("print.proximal", Design.ProximalSign.values());
    assertChoices("making", Design.Making.values());
    assertChoices("paper", Design.Paper.values());
    assertChoices("print.process", Design.ProcessDesign.values());
    assertThat(table.find("material.name").orElseThrow().choices())
        .isEqualTo(Material.all().stream().map(Material::name).toList());
  }

  private void assertChoices(String path, Enum<?>[] values) {
    List<String> names =
        List.of(values).stream().map(value -> value.name().toLowerCase(Locale.ROOT)).toList();
    assertThat(table.find(path).orElseThrow().choices()).containsExactlyInAnyOrderElementsOf(names);
  }

  @Test
  void levelsHaveTheirKeys() {
    for (Level level : Level.values()) {
      assertThat(table.find("width." + level.key())).isPresent();
    }
    assertThat(table.namesIn("circumference"))
        .containsExactly("proximal-phalanx", "pip", "middle-phalanx", "dip", "tip");
  }

  @Test
  void materialsArePlausibleAndSourced() {
    for (Material material : Material.all()) {
      String name = material.name();
      assertThat(material.modulus()).as(name).isBetween(10.0, 5000.0);
      assertThat(material.poisson()).as(name).isBetween(0.3, 0.5);
      assertThat(material.density()).as(name).isBetween(0.8, 1.5);
      assertThat(material.allowableStrain()).as(name).isBetween(0.005, 0.3);
      assertThat(material.sources())
          .as(name)
          .containsOnlyKeys(
              "modulus",
              "poisson",
              "density",
              "allowable-strain",
              "softens",
              "creep",
              "moist",
              "made-by")
          .allSatisfy((property, source) -> assertThat(source).isNotBlank());
      Material.Creep creep = material.overnight().orElseThrow();
      assertThat(creep.share()).as(name).isBetween(creep.low(), creep.high());
      assertThat(creep.low()).as(name).isBetween(0.05, 1.0);
      assertThat(creep.high()).as(name).isLessThanOrEqualTo(1);
      if (!material.moulded()) {
        assertThat(table.find("print.process").orElseThrow().choices())
            .as(name)
            .containsAll(material.madeBy());
      }
    }
  }

  @Test
  void ownValuesOfAMaterialGoBeforeTheTables() {
    Design.MaterialDesign chosen =
        new Design.MaterialDesign(
            "pp",
            OptionalDouble.of(1200),
            OptionalDouble.empty(),
            OptionalDouble.of(0.9),
            OptionalDouble.empty());

    Material material = Material.of(chosen);

    assertThat(material.modulus()).isEqualTo(1200);
    assertThat(material.density()).isEqualTo(0.9);
    // FreeCAD generic material card of PP.
    assertThat(material.poisson()).isEqualTo(0.44);
    assertThat(material.sources()).containsEntry("modulus", "stated in the measurement file");
  }

  @Test
  void cautionsCoverWhatCanHurt() {
    Set<String> codes = new HashSet<>();
    for (Caution caution : Caution.all()) {
      assertThat(codes.add(caution.code())).as(caution.code()).isTrue();
      assertThat(caution.text()).endsWith(".");
      assertThat(Material.all()).extracting(Material::name).containsAll(caution.materials());
    }
    assertThat(codes)
        .contains(
            "estimate", "skin-check", "remove-it", "not-for", "edges", "skin-contact", "heat");
  }

  @Test
  void heatIsCautionedWhereAMaterialSoftensEarly() {
    for (Material material : Material.all()) {
      List<String> heat =
          Caution.forMaterial(material.name()).stream()
              .filter(c -> c.code().equals("heat"))
              .map(Caution::text)
              .toList();
      if (material.softens() < 90) {
        assertThat(heat).as(material.name()).hasSize(1);
        assertThat(heat.get(0))
            .contains(String.format(Locale.ROOT, "about %.0f °C.", material.softens()));
      } else {
        assertThat(heat).as(material.name()).isEmpty();
      }
    }
    assertThat(Caution.forMaterial("petg")).extracting(Caution::code).contains("heat");
    assertThat(Caution.forMaterial("pa12")).extracting(Caution::code).doesNotContain("heat");
  }

  @Test
  void theVersionIsThatOfTheBuild() {
    assertThat(SharedData.version()).matches("\\d+\\.\\d+\\.\\d+.*");
  }
}
