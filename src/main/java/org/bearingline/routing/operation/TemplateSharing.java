package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.kit.Kit;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.part.Part;
import org.bearingline.routing.RoutingSettings;

/**
 * Puts the edges that operations ask for into as few plates as they go into. Two operations share
 * one edge where each comes out as designed from it, played forward; two openings share a plate
 * where a bridge of plate stays between them.
 */
final class TemplateSharing {

  private final Part part;
  private final RoutingSettings settings;
  private final Units units;
  private final OtherFollower other;
  private final List<PlateDraft> plates = new ArrayList<>();
  private final List<String> sentences = new ArrayList<>();
  private final Loop blank;

  private TemplateSharing(Part part, List<EdgeWork> works, RoutingSettings settings, Kit kit) {
    this.part = part;
    this.settings = settings;
    this.units = settings.units();
    this.other = new OtherFollower(kit, units);
    this.blank = blank(works);
  }

  /**
   * What came of it.
   *
   * @param plates in the order of their numbers, from 1
   * @param sentences what has a plate of its own and why
   */
  record Shared(List<PlateDraft> plates, List<String> sentences) {}

  static Shared share(Part part, List<EdgeWork> works, RoutingSettings settings, Kit kit) {
    TemplateSharing sharing = new TemplateSharing(part, works, settings, kit);
    works.stream().filter(EdgeWork::isOutside).forEach(sharing::take);
    works.stream().filter(work -> !work.isOutside()).forEach(sharing::take);
    return new Shared(sharing.plates, sharing.sentences);
  }

  /** A plate round the whole part and all openings, for the router's base and for stops. */
  private Loop blank(List<EdgeWork> works) {
    Bounds box = part.contour().loop().bounds();
    for (EdgeWork work : works) {
      if (!work.isOutside()) {
        box = box.union(work.edge().bounds());
      }
    }
    return Loop.rectangle(box.grown(Math.max(settings.margin(), settings.minimumWidth())));
  }

  private void take(EdgeWork work) {
    for (PlateDraft plate : plates) {
      Optional<PlateEdge> making = plate.making(work);
      if (making.isPresent()) {
        making.get().serve(work.operation());
        return;
      }
    }
    if (work.isOutside()) {
      ownPlate(work, work.edge(), plates.isEmpty() ? "" : elsewhere(work));
      return;
    }
    String why = "";
    for (PlateDraft plate : plates) {
      Optional<String> refusal = plate.refusal(work);
      if (refusal.isEmpty()) {
        plate.put(work);
        return;
      }
      why = why.isEmpty() ? refusal.get() : why;
    }
    ownPlate(work, outerFor(work), why);
  }

  private String elsewhere(EdgeWork work) {
    double further = plates.get(0).edges().get(0).first().tool().wider() - work.tool().wider();
    return "the edge would have to lie "
        + Length.print(Math.abs(further), units)
        + (further > 0 ? " further out" : " further in");
  }

  /** The first plate's edge where the opening lies well inside it, so that all plates stack. */
  private Loop outerFor(EdgeWork work) {
    if (!plates.isEmpty()) {
      Loop first = plates.get(0).outer();
      if (Clear.isInside(work.edge(), first)
          && Clear.between(work.edge(), first) >= settings.minimumWidth()) {
        return first;
      }
    }
    return blank;
  }

  private void ownPlate(EdgeWork work, Loop outer, String why) {
    List<String> advice = new ArrayList<>();
    for (int i = 0; i < plates.size(); i++) {
      for (PlateEdge edge : plates.get(i).edges()) {
        if (advice.isEmpty()) {
          other.advice(work, edge, i + 1).ifPresent(advice::add);
        }
      }
    }
    PlateDraft plate = new PlateDraft(outer, settings.minimumWidth(), units);
    plates.add(plate);
    plate.put(work);
    if (plates.size() > 1) {
      sentences.add(
          Sentences.started(work.operation().name())
              + " has template "
              + plates.size()
              + " of its own: on template 1, "
              + why
              + ".");
      sentences.addAll(advice);
    }
  }
}
