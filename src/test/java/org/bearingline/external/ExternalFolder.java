package org.bearingline.external;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files that others wrote and an installed package brings, for tests to read. Where they are
 * missing the test is skipped and says so, as with {@link ExternalProgram}.
 */
public final class ExternalFolder {

  private final Path folder;

  private ExternalFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * The folder.
   *
   * @param source what brings it, such as {@code Debian's package librsvg2-tests}
   */
  public static ExternalFolder of(String path, String source) {
    Path folder = Path.of(path);
    return Files.isDirectory(folder)
        ? new ExternalFolder(folder)
        : ExternalProgram.missing(source + " (" + path + ")");
  }

  /**
   * The same for what a network brings: where that cannot be reached the checkout is not at fault.
   */
  public static ExternalFolder fetched(String path, String source) {
    Path folder = Path.of(path);
    return Files.isDirectory(folder)
        ? new ExternalFolder(folder)
        : ExternalProgram.skipped(source + " (" + path + ")");
  }

  /** All files below with an ending such as {@code .svg}, sorted. */
  public List<Path> files(String ending) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> file.toString().endsWith(ending))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
