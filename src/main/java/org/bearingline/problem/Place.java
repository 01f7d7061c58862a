package org.bearingline.problem;

import java.util.Objects;

/**
 * Where a problem stands: a spot in a file, a field of a file, an option of a command, or nowhere.
 */
public sealed interface Place {

  /** How the place reads at the head of a sentence; empty for {@link Nowhere}. */
  String words();

  /**
   * A spot in a text file.
   *
   * @param file the file as the user named it
   * @param line 1 or more
   * @param column 1 or more
   */
  record Spot(String file, int line, int column) implements Place {
    public Spot {
      Objects.requireNonNull(file);
      if (line < 1 || column < 1) {
        throw new IllegalArgumentException("a spot counts lines and columns from 1");
      }
    }

    @Override
    public String words() {
      return file + ":" + line + ":" + column;
    }
  }

  /** A whole file or folder. */
  record InFile(String file) implements Place {
    @Override
    public String words() {
      return file;
    }
  }

  /** A named field or measure, such as {@code rise}. */
  record Field(String name) implements Place {
    @Override
    public String words() {
      return name;
    }
  }

  /** An option of a command, such as {@code --bit}. */
  record Option(String name) implements Place {
    @Override
    public String words() {
      return name;
    }
  }

  /** No place is known or none is needed. */
  record Nowhere() implements Place {
    @Override
    public String words() {
      return "";
    }
  }

  static Place spot(String file, int line, int column) {
    return new Spot(file, line, column);
  }

  static Place file(String file) {
    return new InFile(file);
  }

  static Place field(String name) {
    return new Field(name);
  }

  static Place option(String name) {
    return new Option(name);
  }

  static Place nowhere() {
    return new Nowhere();
  }
}
