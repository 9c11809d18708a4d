package org.midlateral.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** A file that could not be written; the message is one sentence for a person, with the path. */
public final class FileProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What was in the way. */
  public enum Kind {
    EXISTS("exists already and is not replaced unless asked for"),
    IS_FOLDER("is a folder, and a file is to be written there"),
    NOT_A_FOLDER("is no folder, and files are to be written into it"),
    NO_FOLDER("cannot be written: its folder does not exist"),
    NOT_ALLOWED("cannot be written: its folder, or the file itself, is read-only"),
    FULL("cannot be written: the disk is full"),
    FAILED("cannot be written");

    private final String text;

    Kind(String text) {
      this.text = text;
    }
  }

  private final Kind kind;
  private final transient Path path;

  private FileProblem(Kind kind, Path path, String detail, Exception cause) {
    super(path + " " + kind.text + detail + ".", cause);
    this.kind = kind;
    this.path = path;
  }

  static FileProblem exists(Path path) {
    return new FileProblem(Kind.EXISTS, path, "", null);
  }

  static FileProblem isFolder(Path path) {
    return new FileProblem(Kind.IS_FOLDER, path, "", null);
  }

  static FileProblem notAFolder(Path path) {
    return new FileProblem(Kind.NOT_A_FOLDER, path, "", null);
  }

  /** What a failed access to a file comes to. */
  public static FileProblem of(Path path, Exception cause) {
    Kind kind = kindOf(cause);
    String detail = kind == Kind.FAILED ? ": " + reason(cause) : "";
    return new FileProblem(kind, path, detail, cause);
  }

  /** What was in the way. */
  public Kind kind() {
    return kind;
  }

  /** The file that was to be written. */
  public Path path() {
    return path;
  }

  private static Kind kindOf(Exception cause) {
    if (cause instanceof FileAlreadyExistsException) {
      return Kind.EXISTS;
    }
    if (cause instanceof NoSuchFileException || cause instanceof NotDirectoryException) {
      return Kind.NO_FOLDER;
    }
    if (cause instanceof AccessDeniedException || cause instanceof ReadOnlyFileSystemException) {
      return Kind.NOT_ALLOWED;
    }
    // The platform tells these two only in words.
    String words = reason(cause).toLowerCase(Locale.ROOT);
    if (words.contains("not a directory")) {
      return Kind.NO_FOLDER;
    }
    if (words.contains("read-only")) {
      return Kind.NOT_ALLOWED;
    }
    boolean full = words.contains("no space left") || words.contains("not enough space");
    return cause instanceof IOException && full ? Kind.FULL : Kind.FAILED;
  }

  private static String reason(Exception cause) {
    String text =
        cause instanceof FileSystemException system ? system.getReason() : cause.getMessage();
    return text == null ? cause.getClass().getSimpleName() : text;
  }
}
