package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;
import org.bearingline.routing.family.Families;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.SharedCurve;
import org.bearingline.routing.family.SharedCurves;
import org.bearingline.yaml.YamlNode;

/**
 * Parts of a job that share a curve.
 *
 * @param families parts that one template could serve
 * @param curves single curves that stand in parts of no common family
 * @param apart why parts of one curve have a template each
 * @param made whether the job asks for the families' templates
 */
record JobFamilies(
    List<Family> families, List<SharedCurve> curves, List<String> apart, boolean made) {

  static final JobFamilies NONE = new JobFamilies(List.of(), List.of(), List.of(), false);

  JobFamilies {
    families = List.copyOf(families);
    curves = List.copyOf(curves);
    apart = List.copyOf(apart);
  }

  /** Finds them; refused where the job asks for shared templates and no two parts can share one. */
  static JobFamilies of(List<WorkedPart> all, JobFile job, Units units) {
    Map<String, String> reasons = new LinkedHashMap<>();
    for (WorkedPart worked : all) {
      FamilyRules.refusal(worked).ifPresent(why -> reasons.put(worked.order().name(), why));
    }
    List<Family> families = families(all, reasons, units);
    // A part with operations is told of as worked from their own faces, and stays so.
    for (WorkedPart worked : all) {
      if (worked.whole().isPresent() && isTurnedOver(worked, families)) {
        reasons.put(worked.order().name(), FamilyRules.WRONG_FACE);
      }
    }
    families = families(all, reasons, units);
    List<RoutingResult> results = free(all, reasons);
    List<String> apart = new ArrayList<>(FamilyRules.told(all, reasons));
    apart.addAll(Families.apart(results, units));
    Optional<YamlNode> asked = job.sharedTemplates();
    if (asked.isPresent() && families.isEmpty()) {
      throw asked
          .get()
          .problem(
              apart.isEmpty()
                  ? "no two parts of this job have the same curves in the same order, so there is no"
                      + " template to share; leave “families” out"
                  : "there is no template to share: " + withoutFullStop(apart.get(0)));
    }
    return new JobFamilies(
        families, SharedCurves.of(results, families, units), apart, asked.isPresent());
  }

  private static String withoutFullStop(String sentence) {
    return sentence.substring(0, sentence.length() - 1);
  }

  private static List<RoutingResult> free(List<WorkedPart> all, Map<String, String> reasons) {
    return all.stream()
        .filter(worked -> !reasons.containsKey(worked.order().name()))
        .map(WorkedPart::result)
        .toList();
  }

  private static List<Family> families(
      List<WorkedPart> all, Map<String, String> reasons, Units units) {
    return Families.of(free(all, reasons), units);
  }

  private static boolean isTurnedOver(WorkedPart worked, List<Family> families) {
    return families.stream()
        .flatMap(family -> family.members().stream())
        .anyMatch(one -> one.part().equals(worked.order().name()) && one.isTurnedOver());
  }

  boolean isEmpty() {
    return families.isEmpty() && curves.isEmpty() && apart.isEmpty();
  }

  /** The name of a family's files. */
  static String name(int index) {
    return "family-" + (index + 1);
  }

  /** The part, its edge from the template of its family where that is made. */
  WorkedPart served(WorkedPart worked) {
    if (!made) {
      return worked;
    }
    for (int i = 0; i < families.size(); i++) {
      for (FamilyMember member : families.get(i).members()) {
        if (member.part().equals(worked.order().name())) {
          WorkedPart turned = member.isTurnedOver() ? worked.fromFaceB() : worked;
          return turned.by(new PlateWay.Shared(name(i), families.get(i), member));
        }
      }
    }
    return worked;
  }

  /** The plates that a part brings to the cut list. */
  static List<Template> ownPlates(WorkedPart worked) {
    return worked.result().templates().stream()
        .filter(
            template ->
                !(worked.way() instanceof PlateWay.Shared) || !HalfPlate.isForEdge(template))
        .toList();
  }
}
