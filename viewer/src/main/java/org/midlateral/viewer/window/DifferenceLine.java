package org.midlateral.viewer.window;

import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.compare.DesignPair;

/** What the design that is shown differs by from the one that was kept; hidden while none is. */
final class DifferenceLine extends JTextArea {
  private static final long serialVersionUID = 1;

  private final transient Worker<DesignPair, String> worker =
      new Worker<>("comparer", DesignPair::difference, SwingUtilities::invokeLater, this::say);

  DifferenceLine() {
    setName("difference");
    setEditable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
    setVisible(false);
    getAccessibleContext().setAccessibleName("Difference from the design kept");
  }

  /** Tells of a pair when its figures are there; of none while there is nothing to compare. */
  void tell(Optional<DesignPair> pair) {
    worker.forget();
    say(pair.isPresent() ? "Computing the difference ..." : "");
    pair.ifPresent(worker::ask);
  }

  private void say(String line) {
    setText(line);
    setCaretPosition(0);
  }

  void close() {
    worker.close();
  }
}
