package org.bearingline.shape;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.part.Part;

/** Shape files for tests. */
final class ShapeFixtures {

  static final Path SHAPES = Path.of("shapes");
  static final Path TEST_FILES = Path.of("src/test/resources/org/bearingline/shape");

  private ShapeFixtures() {}

  static List<Path> in(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CheckedShape read(Path file) {
    return ShapeReader.read(file.getFileName().toString(), text(file));
  }

  static CheckedShape builtIn(String name) {
    return ShapeLibrary.builtIn().find(name);
  }

  static Part part(CheckedShape shape, Map<String, String> settings) {
    return shape.measured(settings, Optional.empty()).part();
  }
}
