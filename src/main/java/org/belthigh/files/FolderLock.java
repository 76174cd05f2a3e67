package org.belthigh.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A lock that the system gives back when its holder ends, however that ends. The file holds the
 * holder's process number, for the message to whoever comes second.
 */
final class FolderLock {
  /** The byte that is locked; far off, since on some systems a locked byte cannot be read. */
  private static final long FAR = 1L << 40;

  private static final int TRIES = 5;

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock, or says who has it.
   *
   * @throws Unwritable if another run holds it
   */
  static FolderLock take(Path file, Path folder) throws IOException {
    for (int tries = 0; tries < TRIES; tries++) {
      Optional<FolderLock> taken = tryOnce(file, folder);
      if (taken.isPresent()) {
        return taken.get();
      }
    }
    throw Unwritable.inUse(folder, "");
  }

  private static Optional<FolderLock> tryOnce(Path file, Path folder) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    boolean kept = false;
    try {
      if (!locks(channel)) {
        throw Unwritable.inUse(folder, holder(file));
      }
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(self().getBytes(StandardCharsets.UTF_8)));
      // whoever had it may have taken the file away between our opening and our locking
      kept = holder(file).equals(self());
      return kept ? Optional.of(new FolderLock(file, channel)) : Optional.empty();
    } finally {
      if (!kept) {
        channel.close();
      }
    }
  }

  private static boolean locks(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock(FAR, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private static String self() {
    return Long.toString(ProcessHandle.current().pid());
  }

  private static String holder(Path file) throws IOException {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (NoSuchFileException e) {
      return "";
    }
  }

  /** Takes the file away, still locked, so that nobody can take it in between. */
  void delete() throws IOException {
    Files.deleteIfExists(file);
  }

  /** Gives the lock back. */
  void release() {
    try {
      channel.close();
    } catch (IOException e) {
      // the system gives it back when we end
    }
  }
}
