package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
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
 * @param asked which of them the job asks for
 * @param ownPlates by the part's name, mm² of the box round the template of its edge
 */
record JobFamilies(
    List<Family> families,
    List<SharedCurve> curves,
    List<String> apart,
    Made asked,
    Map<String, Double> ownPlates) {

  static final JobFamilies NONE =
      new JobFamilies(List.of(), List.of(), List.of(), Made.NONE, Map.of());

  /** Which shared templates the job asks for. */
  enum Made {
    NONE,
    FAMILIES,
    SHORT
  }

  JobFamilies {
    families = List.copyOf(families);
    curves = List.copyOf(curves);
    apart = List.copyOf(apart);
    ownPlates = Map.copyOf(ownPlates);
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
    Map<String, Double> plates = new LinkedHashMap<>();
    for (RoutingResult result : results) {
      result.templates().stream()
          .filter(HalfPlate::isForEdge)
          .forEach(template -> plates.put(result.part().name(), area(template.plate().bounds())));
    }
    if (job.shortTemplates().isPresent()) {
      return ofCurves(families, results, apart, plates, job.shortTemplates().get(), units);
    }
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
        families,
        SharedCurves.of(results, families, units),
        apart,
        asked.isPresent() ? Made.FAMILIES : Made.NONE,
        plates);
  }

  /** With a short template for every curve, those of a family too. */
  private static JobFamilies ofCurves(
      List<Family> families,
      List<RoutingResult> results,
      List<String> apart,
      Map<String, Double> plates,
      YamlNode asked,
      Units units) {
    List<SharedCurve> curves = SharedCurves.of(results, List.of(), units);
    if (curves.isEmpty()) {
      throw asked.problem(
          "no single curve stands in two parts of this job with straight edge beside it, so there"
              + " is no short template to make; leave “families” out");
    }
    return new JobFamilies(families, curves, apart, Made.SHORT, plates);
  }

  static double area(Bounds box) {
    return box.width() * box.height();
  }

  /** Whether the families' templates are made. */
  boolean made() {
    return asked == Made.FAMILIES;
  }

  /** Whether a short template is made of each curve. */
  boolean shortMade() {
    return asked == Made.SHORT;
  }

  /** mm² of plate that a family's template saves, negative where it takes more. */
  double saved(Family family) {
    return family.members().stream().mapToDouble(m -> ownPlates.get(m.part())).sum()
        - area(family.plate().bounds());
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

  static String shortName(int index) {
    return "curve-" + (index + 1);
  }

  /** The part, where short templates make every curve of its edge. */
  private WorkedPart servedShort(WorkedPart worked) {
    String name = worked.order().name();
    if (!ownPlates.containsKey(name) || !SharedCurves.makeAll(worked.result(), curves)) {
      return worked;
    }
    List<String> names = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String from = shortName(i);
      curves.get(i).sentences().stream()
          .filter(sentence -> sentence.startsWith(name + ": "))
          .forEach(
              sentence -> {
                names.add(from);
                sentences.add(from + ": " + sentence.substring(name.length() + 2));
              });
    }
    sentences.add(
        "Rout from stop line to stop line, then join the places along their straights with a"
            + " straight edge laid as the template was.");
    return worked.by(new PlateWay.Short(names, sentences));
  }

  /** The part, its edge from the template of its family where that is made. */
  WorkedPart served(WorkedPart worked) {
    if (shortMade()) {
      return servedShort(worked);
    }
    if (!made()) {
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

  /** Whether a template that serves other parts too makes the edge. */
  static boolean isFromElsewhere(WorkedPart worked) {
    return worked.way() instanceof PlateWay.Shared || worked.way() instanceof PlateWay.Short;
  }

  /** The plates that a part brings to the cut list. */
  static List<Template> ownPlates(WorkedPart worked) {
    return worked.result().templates().stream()
        .filter(template -> !isFromElsewhere(worked) || !HalfPlate.isForEdge(template))
        .toList();
  }
}
