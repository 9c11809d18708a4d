package org.midlateral.viewer.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.SwingWorker;
import javax.swing.WindowConstants;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Courses;
import org.midlateral.recipe.course.CourseFile;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.viewer.weeks.WeeksPanel;

/** The weeks of a course, in a window of their own. */
final class WeeksWindow {
  private WeeksWindow() {}

  /** Opens a course beside the window; gives what stood in the way. */
  static Optional<String> open(JFrame window, Path path) {
    CourseFile file = new CourseFile(path);
    Courses.CourseRead read = file.read();
    if (!read.ok()) {
      return read.errors().stream().map(InputError::message).reduce((a, b) -> a + "\n" + b);
    }
    new SwingWorker<FollowUp, Void>() {
      @Override
      protected FollowUp doInBackground() {
        return FollowUp.of(read.course());
      }

      @Override
      protected void done() {
        try {
          show(window, path, new WeeksPanel(file, get()));
        } catch (InterruptedException stopped) {
          Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
          throw new IllegalStateException("a course was not told", e.getCause());
        }
      }
    }.execute();
    return Optional.empty();
  }

  private static void show(JFrame window, Path path, WeeksPanel panel) {
    JDialog dialog = new JDialog(window, "The weeks: " + path.getFileName(), false);
    dialog.setName("weeks");
    dialog.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    dialog.add(panel);
    dialog.pack();
    dialog.setLocationRelativeTo(window);
    dialog.setVisible(true);
  }
}
