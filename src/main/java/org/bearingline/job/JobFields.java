package org.bearingline.job;

import java.util.Optional;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.FieldPaths;
import org.bearingline.yaml.YamlNode;

/** Finds the field of a job that a problem speaks of. */
final class JobFields {

  private static final String OPTION = "--";

  private final YamlNode top;
  private final FieldPaths paths;

  private JobFields(YamlNode top, FieldPaths paths) {
    this.top = top;
    this.paths = paths;
  }

  static JobFields of(YamlNode top) {
    return new JobFields(top, FieldPaths.of(top));
  }

  /**
   * The problem with its field.
   *
   * @param part that was being worked out; null where none
   */
  ProblemView view(Problem problem, String part) {
    String place = problem.place().words();
    Optional<Problem> ofMeasure = causedByMeasure(problem);
    if (ofMeasure.isPresent()) {
      Problem inner = ofMeasure.get();
      if (healing(inner) != inner) {
        return new ProblemView(
            inner.getMessage(), problem.spoken(), field(healing(inner).place(), part), part, place);
      }
      String field = field(problem.place(), part);
      String name = ((Place.Field) inner.place()).name();
      if (field != null && !field.endsWith("/" + name)) {
        field = (field.endsWith("/measures") ? field : field + "/measures") + "/" + name;
      }
      return new ProblemView(inner.getMessage(), problem.spoken(), field, part, place);
    }
    return new ProblemView(
        problem.getMessage(),
        problem.spoken(),
        field(healing(problem).place(), part),
        part,
        place.isEmpty() ? null : place);
  }

  /**
   * Where a fault of a file or an edge goes away with a wish, that wish; else the problem. A spot
   * is where the wish itself was written.
   */
  private static Problem healing(Problem problem) {
    return !(problem.place() instanceof Place.Spot)
            && problem.getCause() instanceof Problem wish
            && wish.place() instanceof Place.Option
        ? wish
        : problem;
  }

  /** The problem of a measure that the file's place was put round. */
  private static Optional<Problem> causedByMeasure(Problem problem) {
    boolean wrapped =
        problem.place() instanceof Place.Spot
            && problem.getCause() instanceof Problem inner
            && inner.place() instanceof Place.Field
            && problem.getMessage().equals(inner.spoken());
    return wrapped ? Optional.of((Problem) problem.getCause()) : Optional.empty();
  }

  private String field(Place place, String part) {
    if (place instanceof Place.Spot spot) {
      return spot.file().equals(JobInHand.FILE)
          ? paths.at(spot).orElse(null)
          : "files/" + spot.file();
    }
    if (place instanceof Place.InFile file) {
      return file.file().equals(JobInHand.FILE) ? null : "files/" + file.file();
    }
    if (place instanceof Place.Option option) {
      String name = option.name().substring(OPTION.length());
      return name.equals("kit") ? "/kit" : block(part) + "/" + name;
    }
    return null;
  }

  /** Pointer to a part's block; empty for the job as a whole. */
  private String block(String part) {
    for (String list : new String[] {"parts", "panels"}) {
      Optional<YamlNode> blocks = top.optional(list).filter(YamlNode::isList);
      for (int i = 0; blocks.isPresent() && i < blocks.get().items().size(); i++) {
        YamlNode block = blocks.get().items().get(i);
        if (block.isMapping()
            && block
                .optional("name")
                .filter(YamlNode::isScalar)
                .map(name -> name.text().equals(part))
                .orElse(false)) {
          return "/" + list + "/" + i;
        }
      }
    }
    return "";
  }
}
