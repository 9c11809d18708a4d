package org.midlateral.viewer.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** An action of a menu or a button, with its name and keys. */
final class MenuAction extends AbstractAction {
  private static final long serialVersionUID = 1;
  private final transient Runnable action;

  /**
   * An action.
   *
   * @param name as a menu shows it
   * @param mnemonic letter of the name, reached with Alt
   * @param keys as {@code ctrl Z}; empty for none
   * @param action what it does
   */
  MenuAction(String name, char mnemonic, String keys, Runnable action) {
    super(name);
    this.action = action;
    if (mnemonic != 0) {
      putValue(MNEMONIC_KEY, java.awt.event.KeyEvent.getExtendedKeyCodeForChar(mnemonic));
    }
    if (!keys.isEmpty()) {
      putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(keys));
    }
  }

  @Override
  public void actionPerformed(ActionEvent e) {
    action.run();
  }
}
