package org.bearingline.export;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Moves one file to a place that is free or holds a file to replace. */
@FunctionalInterface
interface Mover {

  void move(Path from, Path to) throws IOException;

  /** In one step where the file system can, so that nobody ever sees half a file. */
  static void atomically(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
