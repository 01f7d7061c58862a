package org.bearingline.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Writes a set of files into a folder, all or none: each is written beside its place, and all are
 * moved into place when the last one is whole. Until then the folder's own files are untouched; a
 * folder that was not there is made, and taken away again where nothing comes of it. Used by one
 * thread.
 *
 * <pre>{@code
 * try (StagingFolder folder = StagingFolder.into(target)) {
 *   folder.write("rail.svg", bytes);
 *   folder.commit();
 * }
 * }</pre>
 */
public final class StagingFolder implements FileSink, AutoCloseable {

  private static final Place INTO = Place.option("--into");

  private final Path target;
  private final Mover mover;
  private final FileNames names = new FileNames();
  private final Deque<Path> madeFolders = new ArrayDeque<>();
  private final List<Path> spared = new ArrayList<>();
  private Path staging;
  private boolean committed;

  private StagingFolder(Path target, Mover mover) {
    this.target = target.toAbsolutePath().normalize();
    this.mover = mover;
  }

  /** Opens a folder, there or not yet; fails with a Problem of {@code --into}. */
  public static StagingFolder into(Path target) {
    return into(target, Mover::atomically);
  }

  static StagingFolder into(Path target, Mover mover) {
    StagingFolder folder = new StagingFolder(target, mover);
    folder.check();
    return folder;
  }

  private void check() {
    Path there = target;
    while (!Files.exists(there) && there.getParent() != null) {
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      throw new Problem(INTO, there + " is a file; name a folder to write into");
    }
    if (!Files.isWritable(there)) {
      throw new Problem(
          INTO, there + " may not be written to; name a folder that is yours to write into");
    }
  }

  /** A file that the work was made from: to write over it is refused. */
  public void spare(Path file) {
    spared.add(file);
  }

  private void requireNotSpared(String name) throws IOException {
    Path place = target.resolve(name);
    for (Path file : spared) {
      if (Files.exists(place) && Files.exists(file) && Files.isSameFile(place, file)) {
        throw new Problem(INTO, name + " would be written over your drawing; name another folder");
      }
    }
  }

  /** Writes one file beside its place. */
  @Override
  public void write(String name, byte[] content) {
    names.add(name);
    if (Files.isDirectory(target.resolve(name))) {
      throw new Problem(
          INTO, target.resolve(name) + " is a folder; move it away or write into another folder");
    }
    try {
      requireNotSpared(name);
      Files.write(staging().resolve(name), content);
    } catch (IOException e) {
      throw failed(name, e);
    }
  }

  private Path staging() throws IOException {
    if (staging == null) {
      for (Path missing = target; !Files.exists(missing); missing = missing.getParent()) {
        madeFolders.addLast(missing);
      }
      Files.createDirectories(target);
      staging = Files.createTempDirectory(target, ".staging-");
    }
    return staging;
  }

  /** Moves all files into place; where one move fails, what stood there before stands again. */
  public void commit() {
    List<Placed> placed = new ArrayList<>();
    for (String name : names.all()) {
      try {
        placed.add(place(name));
      } catch (IOException e) {
        takeBack(placed);
        throw failed(name, e);
      }
    }
    committed = true;
  }

  /**
   * A file that was moved into place.
   *
   * @param place where it stands
   * @param former the file it replaced, kept in the staging folder; null where there was none
   */
  private record Placed(Path place, Path former) {}

  private Placed place(String name) throws IOException {
    Path place = target.resolve(name);
    Path former = null;
    if (Files.exists(place)) {
      former = former(name);
      mover.move(place, former);
    }
    try {
      mover.move(staging.resolve(name), place);
    } catch (IOException e) {
      if (former != null) {
        restore(former, place);
      }
      throw e;
    }
    return new Placed(place, former);
  }

  private static void takeBack(List<Placed> placed) {
    for (Placed file : placed) {
      if (file.former() == null) {
        delete(file.place());
      } else {
        restore(file.former(), file.place());
      }
    }
  }

  private static void restore(Path former, Path place) {
    try {
      Mover.atomically(former, place);
    } catch (IOException e) {
      throw new Problem(
          INTO, place + " could not be put back; its former content is in " + former, e);
    }
  }

  private Problem failed(String name, IOException cause) {
    return new Problem(
        INTO,
        "the file "
            + target.resolve(name)
            + " could not be written, and nothing was changed; see whether the folder is yours to"
            + " write into and the disk has room",
        cause);
  }

  /**
   * Takes away whatever was not moved into place. A former file that could not be put back stays
   * where the problem says it is.
   */
  @Override
  public void close() {
    if (staging != null) {
      names.all().forEach(name -> delete(staging.resolve(name)));
      if (committed) {
        names.all().forEach(name -> delete(former(name)));
      }
      delete(staging);
    }
    if (!committed) {
      madeFolders.forEach(StagingFolder::delete);
    }
  }

  private Path former(String name) {
    return staging.resolve("former " + name);
  }

  /** Deletes a file or an empty folder; what cannot be deleted does no harm. */
  private static void delete(Path file) {
    file.toFile().delete();
  }
}
