package org.midlateral.viewer.window;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import javax.swing.JFrame;
import javax.swing.SwingWorker;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.NotComputable;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.joint.JointHeld;
import org.midlateral.recipe.joint.JointWords;
import org.midlateral.recipe.rigidity.AdviceText;
import org.midlateral.recipe.rigidity.Adviser;
import org.midlateral.viewer.dialog.MessageDialogs;

/**
 * Tells how a design holds the joint and which designs near to it would, as the command line does.
 */
final class HoldingJob extends SwingWorker<String, Void> {
  private final JFrame window;
  private final Orthosis made;
  private final BooleanSupplier wanted;

  /**
   * A job.
   *
   * @param wanted whether the design is still the one that is open, when it has been told
   */
  HoldingJob(JFrame window, Orthosis made, BooleanSupplier wanted) {
    this.window = window;
    this.made = made;
    this.wanted = wanted;
  }

  @Override
  protected String doInBackground() {
    return text(made);
  }

  /** The whole answer, or why there is none. */
  static String text(Orthosis made) {
    try {
      JointHeld held = JointHeld.of(made);
      JointWords words = new JointWords(held);
      List<String> lines = new ArrayList<>(List.of(words.line(), ""));
      lines.addAll(words.more());
      lines.add("");
      lines.addAll(AdviceText.lines(Adviser.of(made, held.within())));
      lines.add("");
      lines.add("Estimate, for comparison; does not clear a piece for use.");
      return String.join("\n", lines);
    } catch (DesignRefused | NotComputable e) {
      return "How the joint is held cannot be computed: " + e.getMessage();
    }
  }

  @Override
  protected void done() {
    try {
      String text = get();
      if (wanted.getAsBoolean()) {
        MessageDialogs.held(window, made.order().measurements().reference(), text);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the joint was not computed", e.getCause());
    }
  }
}
