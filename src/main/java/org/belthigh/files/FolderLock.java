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
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A lock that the system gives back when its holder ends, however that ends. Who holds it stands in
 * a file of its own: where locks are POSIX ones, a process that opens and closes the locked file
 * anywhere loses its lock. So the locked file is opened once a process, and never read.
 */
final class FolderLock {
  /** The byte that is locked; far off, since on some systems a locked byte cannot be read. */
  private static final long FAR = 1L << 40;

  private static final int TRIES = 50;
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final Path key;
  private final FileChannel channel;

  private FolderLock(Path file, Path key, FileChannel channel) {
    this.file = file;
    this.key = key;
    this.channel = channel;
  }

  /**
   * Takes the lock, or says who has it.
   *
   * @throws Unwritable if another run holds it
   */
  static FolderLock take(Path file, Path folder) throws IOException {
    Path key = file.getParent().getParent().toRealPath();
    if (!HELD.add(key)) {
      throw Unwritable.inUse(folder, self());
    }
    boolean kept = false;
    try {
      for (int tries = 0; tries < TRIES; tries++) {
        Optional<FolderLock> taken = tryOnce(file, key, folder);
        if (taken.isPresent()) {
          kept = true;
          return taken.get();
        }
      }
      throw Unwritable.inUse(folder, holder(file));
    } finally {
      if (!kept) {
        HELD.remove(key);
      }
    }
  }

  private static Optional<FolderLock> tryOnce(Path file, Path key, Path folder) throws IOException {
    // whoever gives the lock back may take the folder away with it
    Files.createDirectories(file.getParent());
    FileChannel channel;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
    boolean kept = false;
    try {
      if (!locks(channel)) {
        throw Unwritable.inUse(folder, holder(file));
      }
      // whoever had it may have taken the file away between our opening and our locking: its size
      // says whose it is, since that can be asked for without opening it
      long mine = ProcessHandle.current().pid();
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(new byte[1]), mine - 1);
      kept = Files.exists(file) && Files.size(file) == mine;
      if (!kept) {
        return Optional.empty();
      }
      Files.writeString(who(file), self(), StandardCharsets.UTF_8);
      return Optional.of(new FolderLock(file, key, channel));
    } catch (IOException e) {
      // a full disk: what was begun must not stand in the next run's way
      kept = false;
      Files.deleteIfExists(who(file));
      Files.deleteIfExists(file);
      throw e;
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
    ProcessHandle self = ProcessHandle.current();
    return self.pid() + self.info().startInstant().map(at -> ", begun " + at).orElse("");
  }

  private static Path who(Path file) {
    return file.resolveSibling("holder");
  }

  /** Who wrote itself down; empty where nobody has yet. */
  private static String holder(Path file) {
    try {
      return Files.readString(who(file), StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return "";
    }
  }

  /** Takes the file away, still locked, so that nobody can take it in between. */
  void delete() throws IOException {
    Files.deleteIfExists(who(file));
    Files.deleteIfExists(file);
  }

  /** Gives the lock back. */
  void release() {
    try {
      channel.close();
    } catch (IOException e) {
      // the system gives it back when we end
    } finally {
      HELD.remove(key);
    }
  }
}
