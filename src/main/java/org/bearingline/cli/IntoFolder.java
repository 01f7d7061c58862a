package org.bearingline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads the option {@code --into}. */
final class IntoFolder {

  private IntoFolder() {}

  /** The folder to write into; an empty name would mean the folder the shell is in. */
  static Path of(String into) {
    if (into.isBlank()) {
      throw new Problem(
          Place.option("--into"), "name a folder to write into, or “.” for the one you are in");
    }
    try {
      return Path.of(into);
    } catch (InvalidPathException impossible) {
      throw new Problem(
          Place.option("--into"), "“" + into + "” cannot be the name of a folder", impossible);
    }
  }
}
