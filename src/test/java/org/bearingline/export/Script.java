package org.bearingline.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.bearingline.external.ExternalProgram;

/** A reader written in Python that stands beside the tests of this package. */
public final class Script {

  private Script() {}

  /** Runs a script on one file's content and gives the lines it prints. */
  public static List<String> run(String script, byte[] content, Path folder, String... modules) {
    ExternalProgram python = ExternalProgram.pythonWith(modules);
    try (InputStream in = Objects.requireNonNull(Script.class.getResourceAsStream(script))) {
      Path code = folder.resolve(script);
      Files.write(code, in.readAllBytes());
      Path file = Files.write(folder.resolve(script + ".input"), content);
      return python.run(code, file).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The lines that start with the word, that word taken off, split at spaces. */
  public static List<String[]> facts(List<String> lines, String word) {
    return lines.stream()
        .filter(line -> line.startsWith(word + " "))
        .map(line -> line.substring(word.length() + 1).split(" "))
        .toList();
  }
}
