package org.bearingline.outside;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads the bytes of a drawing, and of no other file. */
public final class DrawingFile {

  private DrawingFile() {}

  /**
   * The content, uncompressed where it is compressed with gzip.
   *
   * @param file its path shows in messages as it is given
   * @throws Problem where there is no such file, it is no plain file, empty, larger than {@link
   *     DrawingLimits#LARGEST_FILE} or closed to the reader
   */
  public static byte[] read(Path file) {
    Place place = Place.file(file.toString());
    try {
      if (Files.isDirectory(file)) {
        throw new Problem(place, "this is a folder; name a drawing in it");
      }
      // Size and kind first: a device or pipe would never end.
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new Problem(place, "this is no plain file; save the drawing and name its file");
      }
      if (Files.size(file) > DrawingLimits.LARGEST_FILE) {
        throw tooLarge(place);
      }
      return unpacked(Files.readAllBytes(file), place);
    } catch (NoSuchFileException missing) {
      throw new Problem(place, "there is no such file; check the path", missing);
    } catch (IOException unreadable) {
      throw new Problem(
          place, "the file cannot be read; check that it is a file and may be opened", unreadable);
    }
  }

  /** The same bytes, or those that gzip packed into them. */
  public static byte[] unpacked(byte[] bytes, Place place) {
    if (bytes.length == 0) {
      throw new Problem(place, "the file is empty; save the drawing again");
    }
    boolean isPacked = bytes.length > 2 && bytes[0] == 0x1f && bytes[1] == (byte) 0x8b;
    if (!isPacked) {
      return bytes;
    }
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      byte[] content = in.readNBytes((int) DrawingLimits.LARGEST_FILE + 1);
      if (content.length > DrawingLimits.LARGEST_FILE) {
        throw tooLarge(place);
      }
      return content;
    } catch (IOException damaged) {
      throw new Problem(
          place, "the compressed file is damaged; save the drawing uncompressed", damaged);
    }
  }

  private static Problem tooLarge(Place place) {
    return new Problem(
        place,
        "the drawing is larger than "
            + DrawingLimits.LARGEST_FILE / 1_000_000
            + " MB; simplify it or take a part of it");
  }
}
