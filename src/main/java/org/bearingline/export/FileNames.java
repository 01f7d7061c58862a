package org.bearingline.export;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** The names of the files of one folder: plain, and each once. */
final class FileNames {

  private final Map<String, String> names = new LinkedHashMap<>();

  /** Adds a plain file name; the same name twice, be it in other capitals, is a Problem. */
  void add(String name) {
    Path plain = Path.of(name);
    if (plain.getNameCount() != 1 || !plain.equals(plain.getFileName())) {
      throw new IllegalArgumentException("not a plain file name: " + name);
    }
    // Some file systems do not tell capitals apart; there one file would hide the other.
    if (names.putIfAbsent(name.toLowerCase(Locale.ROOT), name) != null) {
      throw new Problem(
          Place.nowhere(),
          "two parts would both write the file " + name + "; give them different names");
    }
  }

  /** In the order they were added. */
  Collection<String> all() {
    return Collections.unmodifiableCollection(names.values());
  }
}
