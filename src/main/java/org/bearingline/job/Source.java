package org.bearingline.job;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.MeasuredShape;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.shape.ShapeReader;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/** Finds what a SOURCE means: a shape's name, a shape file or a job file. */
final class Source {

  /** Larger than any file a maker writes by hand. */
  private static final long LARGEST_FILE = 1_000_000;

  private Source() {}

  /**
   * The parts that a source asks for.
   *
   * @param source as the user named it
   * @param wishes of the command; they go before those of a job file
   */
  static List<PartOrder> orders(String source, Wishes wishes) {
    if (!isFile(source)) {
      return List.of(order(ShapeLibrary.builtIn().find(source), wishes));
    }
    Path file = path(source);
    String text = text(source, file);
    YamlNode top = YamlFile.read(source, text);
    if (!JobFile.isOne(top)) {
      return List.of(order(ShapeReader.read(source, text), wishes));
    }
    Path parent = file.toAbsolutePath().getParent();
    return ofJob(JobFile.read(top, parent), parent, wishes);
  }

  private static List<PartOrder> ofJob(JobFile job, Path folder, Wishes wishes) {
    List<PartOrder> orders = new ArrayList<>();
    for (JobFile.Entry entry : job.parts()) {
      Wishes merged = wishes.over(entry.wishes().over(job.general()));
      orders.add(
          new PartOrder(
              entry.name(),
              entry.quantity(),
              measured(entry, folder, merged),
              merged,
              entry.operations()));
    }
    return orders;
  }

  private static MeasuredShape measured(JobFile.Entry entry, Path folder, Wishes wishes) {
    YamlNode shape = entry.node().field("shape");
    CheckedShape checked;
    if (isFile(entry.source())) {
      Path file = folder.resolve(entry.source());
      checked = ShapeReader.read(file.toString(), text(entry.source(), file));
    } else {
      try {
        checked = ShapeLibrary.builtIn().find(entry.source());
      } catch (Problem unknown) {
        throw new Problem(shape.place(), unknown.getMessage(), unknown);
      }
    }
    try {
      return checked.measured(wishes.measures(), wishes.units());
    } catch (Problem refused) {
      // A measure's own place is its name; in a job file it also has a line.
      throw refused.place() instanceof Place.Field
          ? new Problem(
              entry.node().optional("measures").orElse(entry.node()).place(),
              refused.spoken(),
              refused)
          : refused;
    }
  }

  private static PartOrder order(CheckedShape shape, Wishes wishes) {
    return new PartOrder(
        shape.name(),
        1,
        shape.measured(wishes.measures(), wishes.units()),
        wishes,
        OperationFile.NONE);
  }

  /** A source is a file where it looks like a path; a bare word is a shape's name. */
  private static boolean isFile(String source) {
    return source.contains("/") || source.contains("\\") || source.contains(".");
  }

  private static Path path(String source) {
    try {
      return Path.of(source);
    } catch (InvalidPathException impossible) {
      throw new Problem(Place.nowhere(), "“" + source + "” cannot be the name of a file");
    }
  }

  private static String text(String named, Path file) {
    try {
      if (Files.size(file) > LARGEST_FILE) {
        throw new Problem(
            Place.file(named),
            "the file is larger than 1 MB; a shape or job file is a page or two");
      }
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (NoSuchFileException missing) {
      throw new Problem(
          Place.file(named), "there is no such file; check the path, or give a shape's name");
    } catch (CharacterCodingException notText) {
      throw new Problem(Place.file(named), "the file is not text in UTF-8; save it as UTF-8");
    } catch (IOException unreadable) {
      throw new Problem(
          Place.file(named), "the file cannot be read; check that it is a file and may be opened");
    }
  }
}
