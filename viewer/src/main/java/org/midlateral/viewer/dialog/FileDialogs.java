package org.midlateral.viewer.dialog;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks for files and folders. */
public final class FileDialogs {
  private FileDialogs() {}

  /** Asks for a file to open; empty where none is chosen. */
  public static Optional<Path> toOpen(Component parent, Optional<Path> folder) {
    JFileChooser chooser = chooser(folder);
    chooser.setDialogTitle("Open a measurement file");
    chooser.setFileFilter(
        new FileNameExtensionFilter("Measurement files (yaml, yml, json)", "yaml", "yml", "json"));
    return chooser.showOpenDialog(parent) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  /**
   * A file to write; asks before one that exists is replaced.
   *
   * @param folder to look in first
   * @param near the file it is saved from, which is replaced without asking; empty for none
   * @param name for a file that has none yet, without its extension
   */
  public static Optional<Path> toSave(
      Component parent, Optional<Path> folder, Optional<Path> near, String name, String extension) {
    JFileChooser chooser = chooser(folder);
    chooser.setDialogTitle("Save as " + extension.toUpperCase(java.util.Locale.ROOT));
    String first = (name.isBlank() ? "finger" : name) + "." + extension;
    chooser.setSelectedFile(
        near.map(Path::toFile).orElse(new File(chooser.getCurrentDirectory(), first)));
    if (chooser.showSaveDialog(parent) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    File chosen = chooser.getSelectedFile();
    File file = chosen.getName().contains(".") ? chosen : new File(chosen + "." + extension);
    boolean other = near.map(path -> !path.toFile().equals(file)).orElse(true);
    if (file.exists() && other && !replace(parent, file.getName() + " exists. Replace it?")) {
      return Optional.empty();
    }
    return Optional.of(file.toPath());
  }

  /** The folder in which a further one will be made, named after an order. */
  public static Optional<Path> folder(Component parent, Optional<Path> folder, String reference) {
    JFileChooser chooser = chooser(folder);
    chooser.setDialogTitle("Where to make the folder " + reference + " with all files in it");
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    chooser.setApproveButtonText("Export here");
    return chooser.showDialog(parent, null) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  /** Asks whether what is there may be replaced. */
  public static boolean replace(Component parent, String question) {
    Object[] answers = {"Replace", "Cancel"};
    return JOptionPane.showOptionDialog(
            parent,
            question,
            "File exists",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            answers,
            answers[1])
        == 0;
  }

  private static JFileChooser chooser(Optional<Path> folder) {
    JFileChooser chooser = new JFileChooser();
    folder.ifPresent(first -> chooser.setCurrentDirectory(first.toFile()));
    return chooser;
  }
}
