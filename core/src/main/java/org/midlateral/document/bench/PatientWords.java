package org.midlateral.document.bench;

import java.util.ArrayList;
import java.util.List;
import org.midlateral.measurement.Design.ClosureKind;

/**
 * What the patient's page says, in short sentences and plain words. Common practice, no source.
 *
 * @param hasTop whether there is a dorsal shell, the top piece
 * @param served what closes it
 * @param turns of tape, where that closes it
 */
record PatientWords(boolean hasTop, ClosureKind served, int turns) {

  /**
   * A heading and the sentences under it.
   *
   * @param heading in a word or two
   * @param sentences in reading order
   */
  record PatientAdvice(String heading, List<String> sentences) {
    PatientAdvice {
      sentences = List.copyOf(sentences);
    }
  }

  /** All of it, in reading order; rows of low lines are blanks to write on. */
  List<PatientAdvice> all() {
    List<String> end = new ArrayList<>(List.of("The curved end goes to your palm."));
    if (hasTop) {
      end.add("The bump on the top piece goes to your hand, not to the tip.");
    }
    return List.of(
        new PatientAdvice("Which end", end),
        new PatientAdvice("Close it", close()),
        new PatientAdvice(
            "Wear it",
            List.of(
                "At night: ________ hours.",
                "By day: ________ hours.",
                "Take it off after the first 30 minutes and look at your skin.",
                "Look each morning too.",
                "A red mark must fade in 30 minutes.")),
        new PatientAdvice(
            "Take it off at once",
            List.of(
                "Do this if it hurts, or if your finger is numb, cold, white, blue or swollen.",
                "Do this if a red mark stays, or if the skin is sore or wet.",
                "Then ask: ____________________ Phone: ____________________")),
        new PatientAdvice(
            "Care",
            List.of(
                "Wash it each day in cool water with soap, and dry it well.",
                "Keep it from heat: no hot water, no hot car, no hair dryer.",
                "Do not cut it or bend it.",
                "Bring it with you. Next visit: ____________________")));
  }

  private List<String> close() {
    return switch (served) {
      case WRAP ->
          List.of(
              "Wind the wrap from the tip to the hand.",
              "Lay it on as lightly as you were shown.",
              "Do not pull it tight: a tight wrap stops the blood.",
              "Do not wind it like a string in one place.");
      case SLEEVE ->
          List.of(
              "Pull the sleeve on from the tip.",
              "Lay it flat, with no fold.",
              "Do not roll it up: a roll is too tight.");
      case TAPE ->
          List.of(
              turns > 1
                  ? "Put tape once round at each end of the top piece."
                  : "Put tape once round the middle of the top piece.",
              "Tape the plastic and not your skin.",
              "Do not pull the tape tight.");
      case STRAP ->
          List.of(
              "Bring one strap round from each side and press it on.",
              "Do not pull the straps tight.",
              "Open one at a time.");
    };
  }
}
