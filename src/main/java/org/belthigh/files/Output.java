package org.belthigh.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A set of files that is written aside and moved in place when it is complete. A reader finds each
 * file old or new, never half; a run that is cut off before the move leaves all old, and one that
 * is cut off within it is completed by the next run on that folder. What another program put into
 * the folder stays. One output at a time may be open on a folder.
 *
 * <p>While it is open, the folder holds {@code .belthigh/}: {@code lock}, {@code writing/} (may be
 * half) and, from the point of no return on, {@code ready/} (is whole). New files and folders are
 * for their owner alone where the system knows that; a file that stands already keeps the
 * permissions it was given.
 */
public final class Output implements AutoCloseable {
  private static final String ASIDE = ".belthigh";

  /** Within what is ready: which files go, so that a run that was cut off is completed. */
  private static final String GONE = ".gone";

  private static final Set<PosixFilePermission> OWNER_FOLDER =
      PosixFilePermissions.fromString("rwx------");
  private static final Set<PosixFilePermission> OWNER_FILE =
      PosixFilePermissions.fromString("rw-------");

  private final Path named;
  private final Path folder;
  private final boolean ownerOnly;
  private final Set<String> paths = new TreeSet<>();

  /** Files that go when the others are moved in place: their digests by path. */
  private final Map<String, String> gone = new TreeMap<>();

  private Path firstMade;
  private FolderLock lock;

  private Output(Path folder, boolean ownerOnly) {
    this.named = folder;
    this.folder = folder.toAbsolutePath().normalize();
    this.ownerOnly = ownerOnly && knowsOwners(this.folder);
  }

  /**
   * An output of files about people into {@code folder}, which need not be there yet. What an
   * earlier run could not complete is completed first.
   *
   * @throws Unwritable if nothing can be written there, or another run is writing there
   */
  public static Output into(Path folder) {
    return new Output(folder, true).open();
  }

  /** The same for pages that hold nothing about anybody: everyone may read them. */
  public static Output ofPages(Path folder) {
    return new Output(folder, false).open();
  }

  private static boolean knowsOwners(Path folder) {
    return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  private Output open() {
    try {
      firstMade = firstMissing();
      makeFolder(folder);
      makeFolder(aside(""));
      lock = FolderLock.take(aside("lock"), named);
      delete(aside("writing"));
      moveReady();
      return this;
    } catch (IOException | ReadOnlyFileSystemException e) {
      close();
      throw Unwritable.because(named, e);
    } catch (Unwritable e) {
      close();
      throw e;
    }
  }

  /** The folder that is written to. */
  public Path folder() {
    return folder;
  }

  /** How many files were put. */
  public int files() {
    return paths.size();
  }

  /**
   * Keeps a file for {@link #commit}.
   *
   * @param path relative to the folder, with forward slashes; it may not lead out of it
   * @throws Unwritable if the disk is full or the folder cannot be written to
   */
  public void put(String path, byte[] bytes) {
    Path target = within(aside("writing"), path);
    try {
      makeFolder(target.getParent());
      write(target, bytes, permissions(within(folder, path)));
    } catch (IOException | ReadOnlyFileSystemException e) {
      throw Unwritable.because(named.resolve(path), e);
    }
    paths.add(path);
  }

  /**
   * Has a file that an earlier run wrote go when {@link #commit} moves the new ones in place; one
   * that was changed since stays.
   *
   * @param sha256 of the file as it was written, in small hexadecimal digits
   * @return whether it goes
   */
  public boolean remove(String path, String sha256) {
    Path target = within(folder, path);
    boolean same = !path.contains("\n") && digest(target).filter(d -> d.equals(sha256)).isPresent();
    if (same) {
      gone.put(path, sha256);
    }
    return same;
  }

  /** The digest of a file in the folder itself; empty where there is none that can be read. */
  private Optional<String> digest(Path target) {
    try {
      if (!Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)
          || !target.toRealPath().startsWith(folder.toRealPath())) {
        return Optional.empty();
      }
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(target));
      return Optional.of(HexFormat.of().formatHex(sum));
    } catch (IOException e) {
      return Optional.empty();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Path within(Path root, String path) {
    Path target = root.resolve(path).normalize();
    if (!target.startsWith(root) || target.equals(root)) {
      throw new IllegalArgumentException("The path '" + path + "' leads out of the output folder");
    }
    return target;
  }

  private FileAttribute<?>[] permissions(Path target) throws IOException {
    if (!knowsOwners(target)) {
      return new FileAttribute<?>[0];
    }
    if (Files.exists(target)) {
      return attributes(Files.getPosixFilePermissions(target));
    }
    return ownerOnly ? attributes(OWNER_FILE) : new FileAttribute<?>[0];
  }

  private static FileAttribute<?>[] attributes(Set<PosixFilePermission> permissions) {
    return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)};
  }

  /** Writes through to the disk: a power cut after the move must not leave an empty file. */
  private static void write(Path target, byte[] bytes, FileAttribute<?>... attributes)
      throws IOException {
    Files.deleteIfExists(target);
    try (FileChannel channel =
        FileChannel.open(
            target, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  /**
   * Moves every file in place: those in subfolders first, so that who finds a new file in the
   * folder itself finds all others new.
   *
   * @throws Unwritable if a file cannot be replaced
   */
  public void commit() {
    if (paths.isEmpty()) {
      return;
    }
    try {
      for (String path : paths) {
        makeWay(within(folder, path));
      }
      gone.keySet().removeAll(paths);
      if (!gone.isEmpty()) {
        StringBuilder list = new StringBuilder();
        gone.forEach((path, sha256) -> list.append(sha256).append(' ').append(path).append('\n'));
        write(
            aside("writing").resolve(GONE),
            list.toString().getBytes(StandardCharsets.UTF_8),
            permissions(folder.resolve(GONE)));
      }
      Files.move(aside("writing"), aside("ready"), StandardCopyOption.ATOMIC_MOVE);
      flush(aside(""));
      moveReady();
    } catch (IOException | ReadOnlyFileSystemException e) {
      throw Unwritable.because(named, e);
    }
  }

  /** Everything that can stand in the way is found before the first file is moved. */
  private void makeWay(Path target) throws IOException {
    makeFolder(target.getParent());
    if (!target.getParent().toRealPath().startsWith(folder.toRealPath())) {
      throw Unwritable.leadsOut(target);
    }
    if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(target.toString());
    }
  }

  private void moveReady() throws IOException {
    Path ready = aside("ready");
    if (!Files.exists(ready)) {
      return;
    }
    removeGone(ready.resolve(GONE));
    Set<Path> moved = new TreeSet<>();
    for (Path file : deepestFirst(ready)) {
      if (!Files.isDirectory(file) && !file.equals(ready.resolve(GONE))) {
        Path target = folder.resolve(ready.relativize(file).toString());
        makeFolder(target.getParent());
        move(file, target, named.resolve(ready.relativize(file).toString()));
        moved.add(target.getParent());
      }
    }
    moved.forEach(Output::flush);
    delete(ready);
  }

  /**
   * Old files go before new ones come: a list of files that names one must not stand without it.
   */
  private void removeGone(Path list) throws IOException {
    if (!Files.exists(list)) {
      return;
    }
    for (String line : Files.readAllLines(list)) {
      int blank = line.indexOf(' ');
      Path target = within(folder, line.substring(blank + 1));
      if (digest(target).filter(d -> d.equals(line.substring(0, blank))).isPresent()) {
        Files.deleteIfExists(target);
        removeEmpty(target.getParent());
      }
    }
  }

  private void removeEmpty(Path from) throws IOException {
    for (Path at = from; !at.equals(folder) && at.startsWith(folder); at = at.getParent()) {
      try (Stream<Path> inside = Files.list(at)) {
        if (inside.findAny().isPresent()) {
          return;
        }
      }
      Files.deleteIfExists(at);
    }
  }

  /** Has the disk keep what was moved in a folder. Windows opens no folder, and keeps it itself. */
  private static void flush(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // the files are whole all the same: only a power cut just now would undo the move
    }
  }

  private static void move(Path file, Path target, Path shown) throws IOException {
    try {
      Files.move(file, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } catch (FileSystemException e) {
      throw Unwritable.held(shown, e);
    }
  }

  private void makeFolder(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      Files.createDirectories(path, ownerOnly ? attributes(OWNER_FOLDER) : new FileAttribute<?>[0]);
    }
  }

  private Path aside(String name) {
    return folder.resolve(ASIDE).resolve(name);
  }

  private Path firstMissing() {
    Path missing = null;
    for (Path at = folder; at != null && !Files.exists(at); at = at.getParent()) {
      missing = at;
    }
    return missing;
  }

  /** Takes away what was not moved, and the folder where it was made for nothing. */
  @Override
  public void close() {
    if (lock == null) {
      removeMade();
      return;
    }
    try {
      delete(aside("writing"));
      lock.delete();
      if (!Files.exists(aside("ready"))) {
        Files.deleteIfExists(aside(""));
      }
    } catch (IOException e) {
      // what is left lies aside, and the next run takes it away
    } finally {
      lock.release();
    }
    removeMade();
  }

  private void removeMade() {
    if (firstMade == null) {
      return;
    }
    try {
      Files.deleteIfExists(aside(""));
      for (Path at = folder; at.startsWith(firstMade); at = at.getParent()) {
        Files.deleteIfExists(at);
      }
    } catch (IOException | ReadOnlyFileSystemException e) {
      // not empty: it was made for something
    }
  }

  private static void delete(Path path) throws IOException {
    for (Path each : deepestFirst(path)) {
      Files.deleteIfExists(each);
    }
  }

  /** All below {@code path} and itself, each before the folder that it is in; none if not there. */
  private static List<Path> deepestFirst(Path path) throws IOException {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(path)) {
      return all.sorted(
              Comparator.comparingInt(Path::getNameCount)
                  .reversed()
                  .thenComparing(Comparator.naturalOrder()))
          .toList();
    } catch (NoSuchFileException e) {
      return List.of();
    }
  }
}
