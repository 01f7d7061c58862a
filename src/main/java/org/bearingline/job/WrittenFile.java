package org.bearingline.job;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.bearingline.outside.DrawingFile;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.TextFile;

/** A text file that a request names: on the disk, or given along with the request. */
public sealed interface WrittenFile {

  /** As the user would write it; it stands in messages. */
  String name();

  /** The whole text; a Problem where there is none. */
  String text();

  /** The bytes of a drawing; a Problem where there are none. */
  byte[] drawing();

  /** The file that this one names: its path starts at this one's folder. */
  WrittenFile beside(String name);

  /** A file on the disk. */
  static WrittenFile onDisk(String path) {
    try {
      return new OnDisk(Path.of(path));
    } catch (InvalidPathException impossible) {
      throw new Problem(Place.nowhere(), "“" + path + "” cannot be the name of a file");
    }
  }

  /** A file on the disk. */
  record OnDisk(Path path) implements WrittenFile {

    public OnDisk {
      Objects.requireNonNull(path);
    }

    @Override
    public String name() {
      return path.toString();
    }

    @Override
    public String text() {
      return TextFile.read(path);
    }

    @Override
    public byte[] drawing() {
      return DrawingFile.read(path);
    }

    @Override
    public WrittenFile beside(String name) {
      try {
        // Shown as the user would write it, so the folder is not made absolute.
        return new OnDisk(path.resolveSibling("").resolve(name));
      } catch (InvalidPathException impossible) {
        throw new Problem(Place.nowhere(), "“" + name + "” cannot be the name of a file");
      }
    }
  }

  /**
   * A file whose bytes were handed over; it names no other.
   *
   * @param name as the user named it
   * @param content the whole file
   */
  record HandedOver(String name, byte[] content) implements WrittenFile {

    public HandedOver {
      Objects.requireNonNull(name);
      Objects.requireNonNull(content);
    }

    @Override
    public String text() {
      return JobState.text(name, content);
    }

    @Override
    public byte[] drawing() {
      return DrawingFile.unpacked(content, Place.file(name));
    }

    @Override
    public WrittenFile beside(String other) {
      throw new Problem(Place.file(other), "this file did not come with " + name + "; add it");
    }
  }

  /**
   * A file that came with the request: whatever it names must have come too, and the disk is never
   * looked at.
   *
   * @param name of this one
   * @param texts all that came, by plain name
   */
  record InHand(String name, Map<String, String> texts) implements WrittenFile {

    public InHand {
      Objects.requireNonNull(name);
      texts = Map.copyOf(texts);
    }

    @Override
    public String text() {
      String text = texts.get(name);
      if (text == null) {
        throw new Problem(
            Place.file(name), "the job names this file, but it did not come with it; add the file");
      }
      return text;
    }

    @Override
    public byte[] drawing() {
      return text().getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public WrittenFile beside(String other) {
      return new InHand(other, texts);
    }
  }
}
