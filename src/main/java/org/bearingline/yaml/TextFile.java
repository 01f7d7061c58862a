package org.bearingline.yaml;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads a file that a maker wrote by hand. */
public final class TextFile {

  /** Larger than any file a maker writes by hand, in bytes. */
  private static final long LARGEST = 1_000_000;

  private TextFile() {}

  /**
   * The whole text.
   *
   * @param file its path shows in messages as it is given
   * @throws Problem where there is no such file, or it is a folder, too large, closed to the reader
   *     or not text in UTF-8
   */
  public static String read(Path file) {
    Place place = Place.file(file.toString());
    try {
      if (Files.isDirectory(file)) {
        throw new Problem(place, "this is a folder; name a file in it");
      }
      if (Files.size(file) > LARGEST) {
        throw new Problem(
            place, "the file is larger than 1 MB; one written by hand is a page or two");
      }
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (NoSuchFileException missing) {
      throw new Problem(place, "there is no such file; check the path", missing);
    } catch (CharacterCodingException notText) {
      throw new Problem(place, "the file is not text in UTF-8; save it as UTF-8", notText);
    } catch (IOException unreadable) {
      throw new Problem(
          place, "the file cannot be read; check that it is a file and may be opened", unreadable);
    }
  }
}
