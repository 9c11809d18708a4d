package org.midlateral.viewer.window;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFrame;
import org.midlateral.viewer.dialog.FileDialogs;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.dialog.PictureFile;
import org.midlateral.viewer.lesson.Lesson.SlideSink;

/** Writes the lesson's pictures where the user says. */
final class Slides implements SlideSink {
  private final JFrame window;
  private final Supplier<Optional<Path>> folder;
  private Path last;
  private int written;

  /**
   * Slides.
   *
   * @param folder that the file dialogs begin in
   */
  Slides(JFrame window, Supplier<Optional<Path>> folder) {
    this.window = window;
    this.folder = folder;
  }

  @Override
  public void still(BufferedImage image, String name) {
    FileDialogs.toSave(window, folder.get(), Optional.empty(), name, "png")
        .ifPresent(path -> PictureFile.write(window, image, path));
  }

  /** Named after the first, which is asked for: {@code inv-7-lesson-step-3-0001.png} and on. */
  @Override
  public Optional<Consumer<BufferedImage>> frames(String name) {
    Optional<Path> first =
        FileDialogs.toSave(window, folder.get(), Optional.empty(), frame(name, 1), "png");
    written = 0;
    return first.map(
        path -> {
          Path parent = path.toAbsolutePath().getParent();
          String start = path.getFileName().toString().replaceFirst("(-0001)?\\.png$", "");
          last = parent;
          return image -> {
            written++;
            boolean whole =
                written > 0
                    && PictureFile.write(
                        window, image, parent.resolve(frame(start, written) + ".png"));
            // Where one cannot be written it was said, and the rest is not tried.
            written = whole ? written : Integer.MIN_VALUE;
          };
        });
  }

  private static String frame(String name, int number) {
    return String.format(Locale.ROOT, "%s-%04d", name, number);
  }

  @Override
  public void ended() {
    if (written > 0) {
      MessageDialogs.say(window, "Frames", written + " pictures were written to " + last + ".");
    }
  }
}
