package org.midlateral.viewer.window;

import java.util.function.Consumer;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.RiseEdit;
import org.midlateral.viewer.view.RiseListener;

/** Takes what is done to rises in the picture into the session: a whole drag is one step back. */
final class RiseEdits implements RiseListener {
  private final Session session;
  private final Consumer<String> goTo;

  /**
   * Edits.
   *
   * @param goTo goes to the field of a key
   */
  RiseEdits(Session session, Consumer<String> goTo) {
    this.session = session;
    this.goTo = goTo;
  }

  /** A sore spot that was clicked is relieved there. */
  @Override
  public void added(double station, double girth) {
    Draft draft = session.draft();
    int number = draft.items(RiseEdit.LIST);
    session.replace(RiseEdit.added(draft, station, girth));
    goTo.accept(RiseEdit.path(number, "height"));
  }

  @Override
  public void moved(int number, double station, double girth) {
    Draft moved = RiseEdit.moved(session.draft(), number, station, girth);
    session.change(moved, RiseEdit.path(number, "moved"));
  }

  @Override
  public void pairMoved(double offset) {
    session.change(RiseEdit.pairMoved(session.draft(), offset), RiseEdit.path(PAIR, "moved"));
  }

  @Override
  public void dropped(int number) {
    session.settle(RiseEdit.path(number, "moved"));
  }

  @Override
  public void raised(int number, int steps) {
    Draft draft = session.draft();
    Draft raised =
        number == PAIR ? RiseEdit.pairRaised(draft, steps) : RiseEdit.raised(draft, number, steps);
    session.change(raised, RiseEdit.path(number, "height"));
  }

  @Override
  public void takenOut(int number) {
    Draft draft = session.draft();
    session.replace(
        number == PAIR ? RiseEdit.pairTakenOut(draft) : draft.withoutItem(RiseEdit.LIST, number));
  }
}
