package org.bearingline.export;

import java.nio.file.Path;

/**
 * Writes a set of files into a folder, all or none: each is written beside its place under another
 * name, and all are moved into place when the last one is whole.
 */
public final class StagingFolder implements AutoCloseable {

  /** Opens {@code target}, made where it is missing; fails with a Problem of {@code --into}. */
  public static StagingFolder into(Path target) {
    throw new UnsupportedOperationException();
  }

  /** Writes one file beside its place; {@code name} is a plain file name, each used once. */
  public void write(String name, byte[] content) {
    throw new UnsupportedOperationException();
  }

  /** Moves all files into place; on failure what stood there before stands there again. */
  public void commit() {
    throw new UnsupportedOperationException();
  }

  /** Takes away whatever was not moved into place. */
  @Override
  public void close() {
    throw new UnsupportedOperationException();
  }
}
