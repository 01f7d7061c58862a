package org.bearingline.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.HeldFiles;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/**
 * A job that came with a request, worked out piece by piece as a page asks for it, by the same code
 * as the commands. What was worked out is kept. Safe for several threads, which wait for each
 * other.
 */
public final class JobInHand {

  /** The name of the job's own file. */
  public static final String FILE = "job.yaml";

  static final Wishes NOTHING = Wishes.NONE;

  private final WrittenFile file;
  private final JobFile job;
  private final JobParts parts;
  private final JobFields fields;
  private final Map<String, Worked> worked = new HashMap<>();
  private Source.Asked whole;
  private Optional<WorkedJob> together;
  private HeldFiles layout;

  private JobInHand(WrittenFile file, JobFile job, JobFields fields) {
    this.file = file;
    this.job = job;
    this.parts = new JobParts(job);
    this.fields = fields;
  }

  /** A part with what had to be left aside to work it out. */
  private record Worked(WorkedPart part, List<String> warnings) {}

  /** An order with what had to be left aside to read it. */
  private record Ordered(PartOrder order, List<String> warnings) {}

  /**
   * Reads a job.
   *
   * @param texts the job file {@link #FILE} and the files it names, by plain name
   * @throws Refused where the job cannot be read
   */
  public static JobInHand of(Map<String, String> texts) {
    WrittenFile file = new WrittenFile.InHand(FILE, texts);
    YamlNode top = YamlFile.read(FILE, file.text());
    JobFields fields = JobFields.of(top);
    try {
      return new JobInHand(file, JobFile.read(top, file), fields);
    } catch (Problem wrong) {
      throw new Refused(fields.view(wrong, null), wrong);
    }
  }

  /**
   * One part with one of its templates.
   *
   * @param part its name
   * @param plate number of the template, 1 or more
   * @param enlargement of the lettering, more than 0; empty to fit a screen
   */
  public synchronized PartView view(String part, int plate, OptionalDouble enlargement) {
    return told(
        part,
        () -> {
          Worked found = worked(part);
          return found
              .part
              .order()
              .placed(
                  () -> {
                    // What only the files need is refused at once, not when they are made.
                    Settings.paper(found.part.order().wishes());
                    Settings.kerf(found.part.order().wishes());
                    return new PartViewMaker(found.part)
                        .view(
                            parts.shape(part),
                            parts.measuresSet(part),
                            plate,
                            enlargement,
                            found.warnings);
                  });
        });
  }

  /** The drawing that one part is made after, sound or not. */
  public synchronized DrawnView drawn(String part) {
    return told(
        part,
        () -> {
          JobFile.Entry entry =
              parts
                  .entry(part)
                  .filter(JobFile.Entry::isDrawn)
                  .orElseThrow(
                      () -> new Problem(Place.nowhere(), part + " is not made after a drawing"));
          Wishes wishes = entry.wishes().over(job.general());
          WrittenFile drawing = file.beside(entry.source());
          List<DrawnLayer> layers = Drawings.layers(drawing);
          try {
            if (ordered(part).order.shape() instanceof DrawnDesign design) {
              return DrawnSight.sound(design, layers, Settings.units(wishes));
            }
          } catch (Problem faulty) {
            // Told with the part; the places are shown here.
          }
          return DrawnSight.refused(drawing, wishes.drawn(), layers, Settings.units(wishes));
        });
  }

  /** Every bit of the kit on one part. */
  public synchronized RackView rack(String part) {
    return told(
        part,
        () -> {
          PartOrder order = ordered(part).order;
          return order.placed(() -> new RackViewMaker(order).view());
        });
  }

  /** How the full-size sheets of a part's template fall. */
  public synchronized PagesView pages(String part, int plate) {
    return told(
        part,
        () -> {
          WorkedPart found = worked(part).part;
          return found.order().placed(() -> pages(found, plate));
        });
  }

  private static PagesView pages(WorkedPart worked, int number) {
    Plate plate = PartViewMaker.chosen(Plate.of(worked), number);
    Drawing sheets = plate.forPaper(Settings.units(worked.order().wishes()));
    SheetPlan plan = PartFiles.plan(worked, plate, sheets);
    Similarity placed = plate.mirror().orElse(Similarity.identity()).then(plan.placement());
    return PagesView.of(plan, placed.inverse());
  }

  /** The whole job with what is wrong in each part. */
  public synchronized JobView whole() {
    return new JobOverview(this, job).view();
  }

  /** Every file that a layout of the whole job writes, by name. */
  public synchronized Map<String, byte[]> files() {
    return told(null, this::laidOut);
  }

  /** The files of one part, by name. */
  public synchronized Map<String, byte[]> files(String part) {
    return told(
        part,
        () -> {
          WorkedPart found = together(part);
          HeldFiles held = new HeldFiles();
          found.order().placed(() -> PartFiles.writeAll(found, held));
          OtherPiece.of(found).ifPresent(other -> PartFiles.writeAll(other, held));
          return held.contents();
        });
  }

  /** One file of a layout; empty where a layout writes none of that name. */
  public synchronized Optional<byte[]> file(String name) {
    Refused refused = null;
    for (String part : parts.all().keySet()) {
      if (name.startsWith(part)) {
        try {
          Optional<byte[]> found = file(part, name);
          if (found.isPresent()) {
            return found;
          }
        } catch (Refused wrong) {
          // Perhaps the file is another part's, whose name begins alike.
          refused = wrong;
        }
      }
    }
    if (refused != null) {
      throw refused;
    }
    return Optional.ofNullable(files().get(name));
  }

  private Optional<byte[]> file(String part, String name) {
    WorkedPart found = told(part, () -> together(part));
    for (PartFiles.PartFile one : PartFiles.all(found)) {
      if (one.name().equals(name)) {
        return Optional.of(told(part, () -> found.order().placed(() -> one.content().get())));
      }
    }
    return Optional.empty();
  }

  private Map<String, byte[]> laidOut() {
    if (layout == null) {
      HeldFiles held = new HeldFiles();
      LayoutJob.write(asked(), NOTHING, held);
      layout = held;
    }
    return layout.contents();
  }

  /** Its parts by name. */
  JobParts parts() {
    return parts;
  }

  /** One part by itself, as worked out. */
  WorkedPart byItself(String part) {
    return worked(part).part;
  }

  private Worked worked(String part) {
    Worked known = worked.get(part);
    if (known == null) {
      Ordered ordered = ordered(part);
      PartOrder order = ordered.order;
      known = new Worked(order.placed(() -> WorkedPart.of(order)), ordered.warnings);
      worked.put(part, known);
    }
    return known;
  }

  /** A part with its edge from a shared template, where the job makes one for it. */
  WorkedPart together(String part) {
    if (job.sharedTemplates().isEmpty() && job.shortTemplates().isEmpty()) {
      return worked(part).part;
    }
    if (together == null) {
      together = workedTogether();
    }
    return together.stream()
        .flatMap(work -> work.parts().stream())
        .filter(one -> one.order().name().equals(part))
        .findFirst()
        .orElseGet(() -> worked(part).part);
  }

  /** Empty where a part cannot be worked out, or none can share. */
  private Optional<WorkedJob> workedTogether() {
    try {
      List<WorkedPart> alone =
          parts.all().keySet().stream().map(name -> worked(name).part).toList();
      return Optional.of(WorkedJob.of(alone, Optional.of(job), NOTHING));
    } catch (Problem told) {
      // Told with the part that has it, or with the whole.
      return Optional.empty();
    }
  }

  private Ordered ordered(String part) {
    Optional<JobFile.Entry> entry = parts.entry(part);
    if (job.top().optional("panels").isEmpty()) {
      return new Ordered(alone(entry.orElseThrow(() -> parts.unknown(part))), List.of());
    }
    try {
      return new Ordered(
          asked().orders().stream()
              .filter(order -> order.name().equals(part))
              .findFirst()
              .orElseThrow(() -> parts.unknown(part)),
          List.of());
    } catch (Problem elsewhere) {
      if (entry.isEmpty()) {
        throw elsewhere;
      }
      // A mistake in another part or a panel does not hide this one.
      return new Ordered(alone(entry.get()), List.of(elsewhere.spoken()));
    }
  }

  private PartOrder alone(JobFile.Entry entry) {
    return Source.order(entry, job, file, NOTHING);
  }

  private Source.Asked asked() {
    if (whole == null) {
      whole = Source.asked(file, NOTHING);
    }
    return whole;
  }

  /** Does some work; what is wrong is told with the field that caused it. */
  <T> T told(String part, Supplier<T> work) {
    try {
      return work.get();
    } catch (Problem wrong) {
      throw new Refused(fields.view(wrong, part), wrong);
    }
  }
}
