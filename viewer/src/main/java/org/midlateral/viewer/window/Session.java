package org.midlateral.viewer.window;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;
import org.midlateral.viewer.draft.DraftText.NotADraft;
import org.midlateral.viewer.draft.EditedText;
import org.midlateral.viewer.draft.History;
import org.midlateral.viewer.memory.Unsaved;
import org.midlateral.viewer.sample.Sample;

/** The measurement file being edited; its listeners are told of each change. */
final class Session {
  private static final long LARGEST = 1 << 20;

  private final List<Runnable> listeners = new ArrayList<>();
  private final List<Runnable> openers = new ArrayList<>();
  private History history;
  private Draft saved;
  private Path file;
  private String title;

  /** The file's text as it was last read or written; null where there is no file. */
  private String text;

  /** What stood in the way of a file; the message is one sentence for a person. */
  static final class FileTrouble extends Exception {
    private static final long serialVersionUID = 1;

    FileTrouble(String message) {
      super(message);
    }
  }

  Session(Sample sample) {
    try {
      start(DraftText.read(sample.text()), null, "sample " + sample.file(), null);
    } catch (NotADraft e) {
      throw new IllegalStateException(sample.file(), e);
    }
  }

  private void start(Draft draft, Path from, String name, String read) {
    history = new History(draft);
    saved = draft;
    file = from;
    title = name;
    text = read;
    openers.forEach(Runnable::run);
    changed();
  }

  void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** Is told before the change when another file or sample is opened. */
  void onOpen(Runnable listener) {
    openers.add(listener);
  }

  private void changed() {
    listeners.forEach(Runnable::run);
  }

  Draft draft() {
    return history.current();
  }

  boolean canUndo() {
    return history.canUndo();
  }

  boolean canRedo() {
    return history.canRedo();
  }

  boolean isDirty() {
    return !saved.equals(draft());
  }

  Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /** What the window is called. */
  String title() {
    return title + (isDirty() ? " (changed)" : "");
  }

  void edit(String path, String text) {
    history.change(draft().with(path, text), path);
    changed();
  }

  void replace(Draft draft) {
    change(draft, "");
  }

  /**
   * Takes a change.
   *
   * @param what goes on while it is the same: all of it is one step back; empty for a step alone
   */
  void change(Draft draft, String what) {
    history.change(draft, what);
    changed();
  }

  /** What went on under a name is whole. */
  void settle(String what) {
    history.settle(what);
  }

  void undo() {
    history.undo();
    changed();
  }

  void redo() {
    history.redo();
    changed();
  }

  /** Begins a finger with nothing in it but how its pieces will be made. */
  void begin(String making) {
    start(Draft.fresh(making), null, "New finger", null);
  }

  void openSample(Sample sample) {
    try {
      start(DraftText.read(sample.text()), null, "sample " + sample.file(), null);
    } catch (NotADraft e) {
      throw new IllegalStateException(sample.file(), e);
    }
  }

  /** Opens a file; where that fails, what was open stays. */
  void open(Path path) throws FileTrouble {
    try {
      if (Files.size(path) > LARGEST) {
        throw new FileTrouble(path + " is larger than 1 MiB, which no measurement file is.");
      }
      String read = Files.readString(path, StandardCharsets.UTF_8);
      start(DraftText.read(read), path, path.getFileName().toString(), read);
    } catch (CharacterCodingException e) {
      throw new FileTrouble(path + " is not a text in UTF-8.");
    } catch (IOException e) {
      throw new FileTrouble(path + " cannot be read.");
    } catch (NotADraft e) {
      throw new FileTrouble(path + " " + e.getMessage() + ".");
    }
  }

  /** Takes up values that were typed in and not saved, as a change of the file they are of. */
  void takeUp(Unsaved.Left left) {
    try {
      if (left.of().isPresent()) {
        open(left.of().get());
      } else {
        start(Draft.fresh(left.draft().get("making")), null, "New finger", null);
      }
    } catch (FileTrouble gone) {
      start(Draft.fresh(left.draft().get("making")), null, "New finger", null);
    }
    replace(left.draft());
  }

  /** Whether the file's text is another than when it was last read or written. */
  boolean isChangedOnDisk() {
    if (file == null || !Files.exists(file)) {
      return false;
    }
    try {
      return !Files.readString(file, StandardCharsets.UTF_8).equals(text);
    } catch (IOException e) {
      return true;
    }
  }

  /** Saves to a file, whole or not at all; of the file's own text all but the values stays. */
  void save(Path path) throws FileTrouble {
    String written = text == null ? DraftText.write(draft()) : EditedText.write(draft(), text);
    try {
      Path beside = Files.createTempFile(path.toAbsolutePath().getParent(), ".midlateral", ".part");
      try {
        Files.writeString(beside, written, StandardCharsets.UTF_8);
        Files.move(beside, path, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw new FileTrouble(path + " cannot be written.");
    }
    saved = draft();
    file = path;
    text = written;
    title = path.getFileName().toString();
    changed();
  }
}
