package org.bearingline.outside.scan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads the bytes of a picture, and of no other file. */
public final class PictureFile {

  /** Bytes: 120 million pixels of three colours, unpacked. */
  private static final long LARGEST = 400_000_000;

  private PictureFile() {}

  /** Whether a file is a picture, by the end of its name. */
  public static boolean isOne(String name) {
    return name.toLowerCase(Locale.ROOT).matches(".*\\.(png|jpe?g|tiff?)");
  }

  /** The content; a Problem where there is none, or it is no plain file, or too large. */
  public static byte[] read(Path file) {
    Place place = Place.file(file.toString());
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new Problem(place, "this is no plain file; name a picture");
      }
      if (Files.size(file) > LARGEST) {
        throw new Problem(
            place, "the picture is larger than 400 MB; scan at a lower dpi or save it as JPEG");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException missing) {
      throw new Problem(place, "there is no such file; check the path", missing);
    } catch (IOException unreadable) {
      throw new Problem(
          place, "the file cannot be read; check that it is a file and may be opened", unreadable);
    }
  }
}
