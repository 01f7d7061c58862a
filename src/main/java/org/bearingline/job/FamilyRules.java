package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.routing.Template;
import org.bearingline.routing.family.Families;
import org.bearingline.routing.operation.EdgeOperation;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.PlannedTemplate;

/** What keeps a part's template to itself. */
final class FamilyRules {

  static final String WRONG_FACE =
      "on the shared one it would lie other face up, and its operations are told for the face they"
          + " name";

  private FamilyRules() {}

  /** Why the template of a part's edge cannot be another's too; empty where it can. */
  static Optional<String> refusal(WorkedPart worked) {
    if (worked.way() instanceof PlateWay.Half) {
      return Optional.of("half a template was asked for");
    }
    if (worked.hand().isPresent()) {
      return Optional.of("it is turned over for the other piece of its pair");
    }
    Set<String> more = new LinkedHashSet<>();
    for (Template template : worked.result().templates()) {
      if (HalfPlate.isForEdge(template)) {
        more.addAll(template.serves());
      }
    }
    more.remove(Template.OUTSIDE_EDGE);
    worked.plan().ifPresent(plan -> plan.templates().forEach(template -> collect(template, more)));
    if (!more.isEmpty()) {
      return Optional.of("it makes " + Words.list(List.copyOf(more)) + " too");
    }
    boolean fromB =
        worked.plan().stream()
            .flatMap(plan -> plan.templates().stream())
            .filter(template -> HalfPlate.isForEdge(template.template()))
            .flatMap(template -> template.services().stream())
            .anyMatch(service -> service.operation().face() == Face.B);
    return fromB ? Optional.of("its edge is worked from face B") : Optional.empty();
  }

  private static void collect(PlannedTemplate template, Set<String> more) {
    if (HalfPlate.isForEdge(template.template())) {
      // An opening bears its operation's name or the shape's; either way it is told once.
      template.services().stream()
          .map(PlannedTemplate.Service::operation)
          .filter(operation -> !(operation instanceof EdgeOperation))
          .filter(operation -> !more.contains(operation.edge().of()))
          .forEach(operation -> more.add(operation.name()));
      template.guides().forEach(hole -> more.add("the marks for " + hole.label()));
    }
  }

  /** A sentence for each part that has the curve of another, but keeps its template. */
  static List<String> told(List<WorkedPart> all, Map<String, String> reasons) {
    List<String> sentences = new ArrayList<>();
    for (WorkedPart worked : all) {
      String name = worked.order().name();
      if (reasons.containsKey(name)) {
        all.stream()
            .filter(other -> other != worked)
            .filter(other -> Families.share(other.result(), worked.result()))
            .findFirst()
            .ifPresent(
                other ->
                    sentences.add(
                        name
                            + " has the curve of "
                            + other.order().name()
                            + ", but keeps its own template: "
                            + reasons.get(name)
                            + "."));
      }
    }
    return sentences;
  }
}
