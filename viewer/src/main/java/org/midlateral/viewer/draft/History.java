package org.midlateral.viewer.draft;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The draft as it is now, with the way back and forward. Typing on in one field is one step.
 * Confined to one thread.
 */
public final class History {
  private static final int LONGEST = 500;

  private final Deque<Draft> before = new ArrayDeque<>();
  private final Deque<Draft> after = new ArrayDeque<>();
  private Draft current;
  private String typing = "";

  public History(Draft start) {
    current = start;
  }

  public Draft current() {
    return current;
  }

  public boolean canUndo() {
    return !before.isEmpty();
  }

  public boolean canRedo() {
    return !after.isEmpty();
  }

  /**
   * Takes a change.
   *
   * @param next the draft after it
   * @param path the key that is being typed at, or empty for a change that stands alone
   */
  public void change(Draft next, String path) {
    if (next.equals(current)) {
      return;
    }
    boolean goesOn = !path.isEmpty() && path.equals(typing) && !before.isEmpty();
    if (!goesOn) {
      before.push(current);
      if (before.size() > LONGEST) {
        before.removeLast();
      }
    }
    after.clear();
    current = next;
    typing = path;
  }

  /**
   * The next change of a key starts a step of its own.
   *
   * @param path the key; what goes on at another, as a drag in the picture, still goes on
   */
  public void settle(String path) {
    if (path.equals(typing)) {
      typing = "";
    }
  }

  public void undo() {
    if (canUndo()) {
      after.push(current);
      current = before.pop();
      typing = "";
    }
  }

  public void redo() {
    if (canRedo()) {
      before.push(current);
      current = after.pop();
      typing = "";
    }
  }
}
