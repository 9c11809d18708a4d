package org.midlateral.recipe.batch;

import java.util.Optional;
import java.util.stream.Stream;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.record.MakingRecord;

/**
 * What became of one order.
 *
 * @param place where it stands
 * @param reference its reference; empty where it could not be read
 * @param folder its folder's name; empty where it has none
 * @param state what became of it
 * @param text why, or what to look at; may be empty
 * @param former where the former making was moved to, in the run's folder; empty where there was
 *     none to move
 * @param record of what was made; empty where nothing was
 */
public record Outcome(
    String place,
    String reference,
    String folder,
    OrderState state,
    String text,
    String former,
    Optional<MakingRecord> record) {
  /** An order that nothing was made of. */
  static Outcome without(
      String place, String reference, String folder, OrderState state, String text) {
    return new Outcome(place, reference, folder, state, text, "", Optional.empty());
  }

  /** What may become of an order. */
  public enum OrderState {
    /** Made and written. */
    MADE("made"),
    /** The trough made and written; the dorsal shell cannot be made. */
    PARTLY("partly"),
    /** Made by a run before, of the same input. */
    UNCHANGED("unchanged"),
    /** The input is right, the design cannot be made. */
    REFUSED("refused"),
    /** The input is wrong. */
    WRONG("wrong"),
    /** Its reference stood in an earlier order of this run. */
    DUPLICATE("duplicate"),
    /** Made by a run before, and not what the source says now: moved away. */
    SUPERSEDED("superseded"),
    /** It cannot be written where its folder is to be. */
    UNWRITTEN("unwritten"),
    /** A defect of this program. */
    DEFECT("defect");

    private final String word;

    OrderState(String word) {
      this.word = word;
    }

    /** As the report has it. */
    public String word() {
      return word;
    }

    /** What came of an order that could be read. */
    static OrderState of(Product product) {
      return product.ok() ? MADE : product.isMade() ? PARTLY : REFUSED;
    }

    /** The state of a word. */
    static Optional<OrderState> of(String word) {
      return Stream.of(values()).filter(state -> state.word.equals(word)).findFirst();
    }

    /** Whether all is there that the source asks for. */
    public boolean isDone() {
      return this == MADE || this == UNCHANGED || this == SUPERSEDED;
    }
  }
}
