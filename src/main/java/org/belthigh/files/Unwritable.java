package org.belthigh.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** Nothing could be written, for a reason that a person can do something about. */
public final class Unwritable extends UncheckedIOException {
  private static final long serialVersionUID = 1L;

  private final transient Problem problem;
  private final boolean inUse;

  private Unwritable(Problem problem, boolean inUse, IOException cause) {
    super(problem.text(), cause);
    this.problem = problem;
    this.inUse = inUse;
  }

  /** Where, what is wrong, and what to do. */
  public Problem problem() {
    return problem;
  }

  /** Whether another run is writing there, so that waiting helps. */
  public boolean inUse() {
    return inUse;
  }

  static Unwritable inUse(Path folder, String process) {
    String who = process.isEmpty() ? "" : " (process " + process + ")";
    return of(
        folder,
        "another run of belthigh is writing here" + who,
        "one run at a time may write to a folder",
        "Maybe wait until it ends, then give the command again.",
        true,
        new IOException("locked"));
  }

  static Unwritable leadsOut(Path target) {
    return of(
        target,
        "a link on the way leads out of the folder",
        "every file must lie in the folder",
        "Maybe take the link away, or name the folder that it leads to.",
        false,
        new IOException("link"));
  }

  /** A file that cannot be replaced while some program holds it; the rest is kept aside. */
  static Unwritable held(Path target, IOException cause) {
    return of(
        target,
        "the file cannot be replaced",
        "it must be one that this user may write",
        "Maybe it is open in another program: close it and give the command again, which completes"
            + " what is kept in .belthigh.",
        false,
        cause);
  }

  /** What {@code cause} means at {@code place}. */
  static Unwritable because(Path place, Exception cause) {
    if (cause instanceof Unwritable known) {
      return known;
    }
    IOException io = cause instanceof IOException e ? e : new IOException(cause);
    String reason = reason(cause).toLowerCase(Locale.ROOT);
    if (cause instanceof ReadOnlyFileSystemException || reason.contains("read-only")) {
      return of(
          place,
          "the disk is read-only",
          "it must be one that can be written to",
          "Maybe name another folder.",
          false,
          io);
    }
    if (reason.contains("space") || reason.contains("quota") || reason.contains("too large")) {
      return of(
          place,
          "the disk is full",
          "there must be room for all files; nothing was replaced",
          "Maybe delete something, or name a folder on another disk.",
          false,
          io);
    }
    if (cause instanceof FileAlreadyExistsException || cause instanceof NotDirectoryException) {
      return of(
          ((FileSystemException) cause).getFile(),
          "something else of this name stands here",
          "files and folders must not stand in each other's place",
          "Maybe name another folder, or move that one away.",
          false,
          io);
    }
    return of(
        place,
        cause instanceof AccessDeniedException
            ? "this user may not write here"
            : "nothing can be written here (" + reason(cause) + ")",
        "the folder must be one that this user may write to",
        "Maybe it belongs to somebody else, or is write-protected: name another folder.",
        false,
        io);
  }

  private static String reason(Exception cause) {
    if (cause instanceof FileSystemException e && e.getReason() != null) {
      return e.getReason();
    }
    if (cause instanceof FileSystemException) {
      return cause.getClass().getSimpleName().replace("Exception", "");
    }
    return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
  }

  private static Unwritable of(
      Object place, String found, String allowed, String maybe, boolean inUse, IOException cause) {
    Origin origin = Origin.of(place.toString().replace('\\', '/'));
    return new Unwritable(Problem.fault(origin, "", found, allowed, maybe), inUse, cause);
  }
}
