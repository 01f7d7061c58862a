package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.problem.Problem;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;
import org.bearingline.routing.family.HalfTemplate;
import org.bearingline.routing.operation.EdgeOperation;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedTemplate;
import org.bearingline.yaml.YamlNode;

/** Puts half a plate in the place of the one that shapes a part's outer edge. */
final class HalfPlate {

  private final WorkedPart worked;
  private final YamlNode asked;

  private HalfPlate(WorkedPart worked, YamlNode asked) {
    this.worked = worked;
    this.asked = asked;
  }

  /** The part with half a plate where its job asks for one; refused where that is. */
  static WorkedPart asked(WorkedPart worked) {
    return worked
        .order()
        .operations()
        .half()
        .map(node -> new HalfPlate(worked, node).halved())
        .orElse(worked);
  }

  private WorkedPart halved() {
    worked.plan().ifPresent(this::check);
    worked.result().templates().stream().filter(HalfPlate::isForEdge).forEach(this::check);
    HalfTemplate half;
    try {
      half = HalfTemplate.of(worked.result(), Settings.units(worked.order().wishes()));
    } catch (Problem refused) {
      throw new Problem(asked.place(), refused.getMessage(), refused);
    }
    List<Template> templates = new ArrayList<>();
    for (Template template : worked.result().templates()) {
      templates.add(isForEdge(template) ? halved(template, half) : template);
    }
    RoutingResult result = worked.result().withTemplates(templates);
    Optional<WholeWork> whole =
        worked.whole().map(work -> work.with(halved(work.plan(), templates)));
    return new WorkedPart(
        worked.order(), result, worked.kit(), worked.grain(), whole, new PlateWay.Half(half));
  }

  static boolean isForEdge(Template template) {
    return template.serves().contains(Template.OUTSIDE_EDGE);
  }

  private void check(Template template) {
    List<String> more =
        template.serves().stream().filter(edge -> !edge.equals(Template.OUTSIDE_EDGE)).toList();
    if (!more.isEmpty()) {
      throw asked.problem(
          "the template makes "
              + Words.list(more)
              + " as well as the outer edge, and half a template makes the outer edge alone; leave"
              + " “template: half” out");
    }
  }

  private void check(OperationPlan plan) {
    for (PlannedTemplate template : plan.templates()) {
      if (!isForEdge(template.template())) {
        continue;
      }
      for (PlannedTemplate.Service service : template.services()) {
        if (service.operation().face() == Face.B) {
          throw asked.problem(
              service.operation().name()
                  + " is worked from face B, and half a template already lies with its side B up"
                  + " for the other half; work it from face A, or leave “template: half” out");
        }
        if (!(service.operation() instanceof EdgeOperation)) {
          throw asked.problem(
              "the template makes "
                  + service.operation().name()
                  + " as well as the outer edge, and half a template makes the outer edge alone;"
                  + " leave “template: half” out");
        }
      }
      if (!template.guides().isEmpty()) {
        throw asked.problem(
            "the template marks "
                + template.guides().get(0).label()
                + ", and half a template does not cover the whole part; leave “template: half”"
                + " out");
      }
    }
  }

  private static Template halved(Template template, HalfTemplate half) {
    List<String> notes = new ArrayList<>(half.sentences());
    notes.addAll(template.notes());
    return new Template(
        template.number(),
        "half " + template.title(),
        half.plate(),
        template.workingEdges(),
        template.serves(),
        template.offset(),
        notes);
  }

  private static OperationPlan halved(OperationPlan plan, List<Template> templates) {
    List<PlannedTemplate> planned = new ArrayList<>();
    for (int i = 0; i < templates.size(); i++) {
      PlannedTemplate whole = plan.templates().get(i);
      planned.add(
          isForEdge(templates.get(i))
              ? new PlannedTemplate(
                  templates.get(i), whole.services(), List.of(), false, false, List.of())
              : whole);
    }
    return new OperationPlan(
        plan.part(), plan.operations(), planned, plan.faces(), plan.sentences());
  }
}
