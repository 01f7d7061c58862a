package org.bearingline.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.Design;
import org.bearingline.shape.MeasuredShape;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.shape.ShapeReader;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/** Finds what a SOURCE means: a shape's name, a shape file, a drawing or a job file. */
final class Source {

  /** Where nobody waits to be told what takes long. */
  static final Consumer<String> SILENT = told -> {};

  private static final Pattern PICTURE = Pattern.compile(".*\\.(png|jpe?g|tiff?)");

  private Source() {}

  /**
   * The parts that a source asks for.
   *
   * @param source as the user named it
   * @param wishes of the command; they go before those of a job file
   */
  static List<PartOrder> orders(String source, Wishes wishes) {
    return asked(source, wishes, SILENT).orders();
  }

  /**
   * What a source asks for.
   *
   * @param orders its parts, panels last
   * @param job the file; empty for a single shape or drawing
   */
  record Asked(List<PartOrder> orders, Optional<JobFile> job) {

    /** The files on the disk that its parts are drawn in. */
    List<Path> drawings() {
      return orders.stream()
          .filter(order -> order.shape() instanceof DrawnDesign)
          .map(order -> Path.of(((DrawnDesign) order.shape()).file()))
          .toList();
    }
  }

  /** The same with the job file that it comes from; told what takes long. */
  static Asked asked(String source, Wishes wishes, Consumer<String> progress) {
    if (!isFile(source)) {
      return single(named(source), wishes);
    }
    refuseOtherKinds(source);
    return asked(WrittenFile.onDisk(source), wishes, progress);
  }

  /** A shape of that name; a folder or file that has the name by chance is pointed out. */
  private static CheckedShape named(String source) {
    try {
      return ShapeLibrary.builtIn().find(source);
    } catch (Problem unknown) {
      if (Files.isDirectory(Path.of(source))) {
        throw new Problem(Place.file(source), "this is a folder; name a file in it", unknown);
      }
      if (Files.exists(Path.of(source))) {
        throw new Problem(
            unknown.place(),
            unknown.getMessage() + "; for the file of that name write ./" + source,
            unknown);
      }
      throw unknown;
    }
  }

  private static void refuseOtherKinds(String source) {
    String name = source.toLowerCase(Locale.ROOT);
    if (PICTURE.matcher(name).matches()) {
      throw new Problem(
          Place.file(source),
          "a picture is traced first, with “bearingline keep "
              + source
              + " --into DIR”; lay out the shape file that comes of it");
    }
    if (name.matches(".*\\.(pdf|ai|eps)")) {
      throw new Problem(
          Place.file(source),
          "this is no shape, job or drawing that is read; save the drawing as SVG or as ASCII DXF");
    }
  }

  /** What a drawing, a shape file or a job file asks for. */
  static Asked asked(WrittenFile file, Wishes wishes) {
    return asked(file, wishes, SILENT);
  }

  private static Asked asked(WrittenFile file, Wishes wishes, Consumer<String> progress) {
    if (Drawings.isOne(file.name())) {
      return new Asked(List.of(Drawings.order(file, wishes, progress)), Optional.empty());
    }
    String text = file.text();
    YamlNode top = YamlFile.read(file.name(), text);
    if (!JobFile.isOne(top)) {
      return single(ShapeReader.read(file.name(), text), wishes);
    }
    JobFile job = JobFile.read(top, file);
    refuseDrawn(wishes, "this belongs to one drawing; write it in the job file, with the part");
    return new Asked(ofJob(job, file, wishes, progress), Optional.of(job));
  }

  private static void refuseDrawn(Wishes wishes, String sentence) {
    Optional<String> said = wishes.drawn().saidFirst();
    if (said.isPresent()) {
      throw new Problem(Place.option("--" + said.get()), sentence);
    }
  }

  private static Asked single(CheckedShape shape, Wishes wishes) {
    refuseDrawn(wishes, "this belongs to a drawing, and a shape is none");
    return new Asked(List.of(order(shape, wishes)), Optional.empty());
  }

  private static List<PartOrder> ofJob(
      JobFile job, WrittenFile file, Wishes wishes, Consumer<String> progress) {
    List<PartOrder> orders = new ArrayList<>();
    for (JobFile.Entry entry : job.parts()) {
      orders.add(order(entry, job, file, wishes, progress));
    }
    return job.top().optional("panels").isPresent() ? PanelFile.added(orders, job, wishes) : orders;
  }

  /** One part of a job as it stands there, without what the job's panels add to it. */
  static PartOrder order(JobFile.Entry entry, JobFile job, WrittenFile file, Wishes wishes) {
    return order(entry, job, file, wishes, SILENT);
  }

  private static PartOrder order(
      JobFile.Entry entry,
      JobFile job,
      WrittenFile file,
      Wishes wishes,
      Consumer<String> progress) {
    Wishes merged = wishes.over(entry.wishes().over(job.general()));
    WrittenPlaces places = entry.places().outdoneBy(wishes);
    return new PartOrder(
        entry.name(),
        entry.quantity(),
        design(entry, file, merged, places, progress),
        merged,
        entry.operations(),
        entry.stock(),
        places);
  }

  private static Design design(
      JobFile.Entry entry,
      WrittenFile job,
      Wishes wishes,
      WrittenPlaces places,
      Consumer<String> progress) {
    if (!entry.isDrawn()) {
      return measured(entry, job, wishes, places);
    }
    WrittenFile file = job.beside(entry.source());
    if (!Drawings.isOne(file.name())) {
      throw entry
          .node()
          .field("drawing")
          .problem("“" + entry.source() + "” is no drawing; name an .svg or .dxf file");
    }
    try {
      return Drawings.design(file, entry.name(), wishes.drawn(), progress);
    } catch (Problem refused) {
      throw places.at(refused);
    }
  }

  private static MeasuredShape measured(
      JobFile.Entry entry, WrittenFile job, Wishes wishes, WrittenPlaces places) {
    YamlNode shape = entry.node().field("shape");
    CheckedShape checked;
    if (isFile(entry.source())) {
      WrittenFile file = job.beside(entry.source());
      checked = ShapeReader.read(file.name(), file.text());
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
}
