package org.midlateral.document.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.midlateral.measurement.Finding;
import org.midlateral.recipe.Orthosis;

/** What the walls take beside the joint, against the room that was measured. */
class NeighbourRoomTest {

  /** Gap, liner and wall of a trough that goes past the middle of the finger's side. */
  @ParameterizedTest
  @CsvSource({"0, 0.3, 1.6", "1, 0.3, 1.6", "0, 0, 2.4"})
  void aTroughTakesItsGapLinerAndWall(double liner, double clearance, double wall)
      throws Exception {
    NeighbourRoom room =
        room(
            "slim-little",
            "dorsal-shell.make=no",
            "relief.make=no",
            "trough.wrap=0.55",
            "trough.liner=" + liner,
            "trough.clearance=" + clearance,
            "trough.wall=" + wall);
    assertThat(room.radial()).isCloseTo(liner + clearance + wall, within(0.06));
    assertThat(room.ulnar()).isCloseTo(room.radial(), within(0.03));
    assertThat(room.findings()).isEmpty();
  }

  /** A bubble on the radial side takes room there, on either hand. */
  @ParameterizedTest
  @CsvSource({"slim-little, right", "slim-little, left"})
  void theSidesAreTheFingers(String sample, String hand) throws Exception {
    String spot = "relief.bubbles=[{station: 20, girth: 11.5, height: 1.5, length: 8, width: 6}]";
    NeighbourRoom room =
        room(
            sample,
            "hand=" + hand,
            "dorsal-shell.make=no",
            "relief.make=no",
            spot,
            "room.radial=2",
            "room.ulnar=2");
    assertThat(room.radial()).isGreaterThan(room.ulnar() + 0.8);
    assertThat(room.findings())
        .extracting(Finding::code, Finding::key)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("neighbour-tight", "room.radial"));
  }

  /** Allowed swelling takes room: the finger was measured without it. */
  @ParameterizedTest
  @CsvSource({"0, 3"})
  void swellingTakesRoom(double none, double some) throws Exception {
    double without = room("slim-little", "room.swelling=" + none).ulnar();
    double with = room("slim-little", "room.swelling=" + some).ulnar();
    // A girth larger by 3 mm is a radius larger by 3 / 2π, a little more across a broad section.
    assertThat(with - without).isBetween(0.4, 0.6);
  }

  private static NeighbourRoom room(String sample, String... overrides) throws Exception {
    Orthosis made = BenchFiles.orthosis(sample, overrides);
    return NeighbourRoom.of(made.order().measurements(), made.digit(), made.solids());
  }
}
