package org.bearingline.job;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.MeasuredShape;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.shape.ShapeReader;
import org.bearingline.yaml.TextFile;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/** Finds what a SOURCE means: a shape's name, a shape file or a job file. */
final class Source {

  private Source() {}

  /**
   * The parts that a source asks for.
   *
   * @param source as the user named it
   * @param wishes of the command; they go before those of a job file
   */
  static List<PartOrder> orders(String source, Wishes wishes) {
    return asked(source, wishes).orders();
  }

  /**
   * What a source asks for.
   *
   * @param orders its parts, panels last
   * @param job the file; empty for a single shape
   */
  record Asked(List<PartOrder> orders, Optional<JobFile> job) {}

  /** The same with the job file that it comes from. */
  static Asked asked(String source, Wishes wishes) {
    if (!isFile(source)) {
      return single(ShapeLibrary.builtIn().find(source), wishes);
    }
    Path file = path(source);
    String text = TextFile.read(file);
    YamlNode top = YamlFile.read(source, text);
    if (!JobFile.isOne(top)) {
      return single(ShapeReader.read(source, text), wishes);
    }
    // Paths in a job file start at its own folder, and show as the user would write them.
    Path folder = file.resolveSibling("");
    JobFile job = JobFile.read(top, folder);
    return new Asked(ofJob(job, folder, wishes), Optional.of(job));
  }

  private static Asked single(CheckedShape shape, Wishes wishes) {
    return new Asked(List.of(order(shape, wishes)), Optional.empty());
  }

  private static List<PartOrder> ofJob(JobFile job, Path folder, Wishes wishes) {
    List<PartOrder> orders = new ArrayList<>();
    for (JobFile.Entry entry : job.parts()) {
      Wishes merged = wishes.over(entry.wishes().over(job.general()));
      WrittenPlaces places = entry.places().outdoneBy(wishes);
      MeasuredShape shape = measured(entry, folder, merged, places);
      orders.add(
          new PartOrder(
              entry.name(),
              entry.quantity(),
              shape,
              merged,
              entry.operations(),
              entry.stock(),
              places));
    }
    return job.top().optional("panels").isPresent() ? PanelFile.added(orders, job, wishes) : orders;
  }

  private static MeasuredShape measured(
      JobFile.Entry entry, Path folder, Wishes wishes, WrittenPlaces places) {
    YamlNode shape = entry.node().field("shape");
    CheckedShape checked;
    if (isFile(entry.source())) {
      Path file = folder.resolve(entry.source());
      checked = ShapeReader.read(file.toString(), TextFile.read(file));
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
      throw places.at(refused);
    }
  }

  private static PartOrder order(CheckedShape shape, Wishes wishes) {
    return new PartOrder(
        shape.name(),
        1,
        shape.measured(wishes.measures(), wishes.units()),
        wishes,
        OperationFile.NONE,
        StockWishes.USUAL,
        WrittenPlaces.NONE);
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
}
