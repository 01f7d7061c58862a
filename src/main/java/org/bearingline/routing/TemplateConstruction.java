package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.OffsetResult;
import org.bearingline.part.Cavity;
import org.bearingline.part.Part;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * T = P⁺ ⊖ D(R − r) where R ≥ r, else P⁺ ⊕ D(r − R); an opening of the plate is the cavity with the
 * signs exchanged. Cavities share the plate of the outer edge where enough of it stays between
 * them; one that lies inside another, such as the opening inside its ledge, or too near to it, gets
 * a plate of its own, for two openings of one plate cannot overlap.
 */
final class TemplateConstruction {

  private final Part part;
  private final RoutingSettings settings;
  private final double wider;
  private final List<Plate> plates = new ArrayList<>();

  private TemplateConstruction(Part part, RoutingSettings settings) {
    this.part = part;
    this.settings = settings;
    this.wider = settings.follower().radius() - settings.cutter().radius();
  }

  /**
   * The finished plates with the centre's paths.
   *
   * @param templates in the order they are used
   * @param cutterCentre along every routed edge
   */
  record Built(List<Template> templates, List<CutterRun> cutterCentre) {}

  static Built build(Part part, List<RoutedEdge> edges, RoutingSettings settings) {
    TemplateConstruction construction = new TemplateConstruction(part, settings);
    List<CutterRun> runs = new ArrayList<>();
    for (RoutedEdge edge : edges) {
      Region cut = construction.offset(edge);
      construction.place(edge, cut.pieces().get(0));
      for (Path path : CutterPath.of(edge, cut, settings.cutter(), settings.follower())) {
        runs.add(new CutterRun(edge.name(), path));
      }
    }
    List<Template> templates = new ArrayList<>();
    for (Plate plate : construction.plates) {
      templates.add(plate.finished(templates.size() + 1, construction.plates.size()));
    }
    return new Built(templates, runs);
  }

  private Region offset(RoutedEdge edge) {
    boolean grows = edge.isOutside() == wider < 0;
    Region designed = edge.region();
    Region offset = designed;
    if (wider != 0) {
      OffsetResult result =
          grows
              ? Morphology.dilate(designed, Math.abs(wider))
              : Morphology.erode(designed, Math.abs(wider));
      offset = result.region();
    }
    String what = edge.isOutside() ? "the template" : "the template's opening";
    if (offset.isEmpty()) {
      throw new Problem(
          Place.field(edge.name()),
          "nothing is left of "
              + what
              + " with this follower and bit; choose a follower nearer to the bit's diameter");
    }
    if (offset.pieces().size() > 1) {
      throw new Problem(
          Place.field(edge.name()),
          what
              + " falls into "
              + offset.pieces().size()
              + " pieces with this follower and bit, the first gap near "
              + near(offset)
              + "; choose a follower nearer to the bit's diameter");
    }
    return offset;
  }

  private static String near(Region region) {
    Bounds box = region.pieces().get(1).bounds();
    return String.format(Locale.ROOT, "x %.0f mm, y %.0f mm", box.minX(), box.minY());
  }

  private void place(RoutedEdge edge, Outline cut) {
    if (edge.isOutside()) {
      Plate plate = new Plate(cut.outer(), settings, wider);
      plate.follow(edge, List.of(cut.outer()));
      plates.add(plate);
      return;
    }
    Loop opening = cut.outer();
    for (Plate plate : plates) {
      if (plate.hasRoomFor(opening)) {
        plate.open(edge, opening);
        return;
      }
    }
    Plate plate = new Plate(blank(opening), settings, wider);
    plate.open(edge, opening);
    edge.cavity().ifPresent(cavity -> sharedOpening(edge, cavity, plate));
    plates.add(plate);
  }

  /** A plate round the whole part with its margins, for the router's base and for stops. */
  private Loop blank(Loop opening) {
    if (!plates.isEmpty()) {
      Plate first = plates.get(0);
      if (Clearance.isInside(opening, first.outer(), settings.minimumWidth())) {
        return first.outer();
      }
    }
    double margin = Math.max(settings.margin(), settings.minimumWidth());
    return Loop.rectangle(part.contour().loop().bounds().union(opening.bounds()).grown(margin));
  }

  /** Says so where the opening inside a ledge can also be made from the ledge's template. */
  private void sharedOpening(RoutedEdge edge, Cavity cavity, Plate plate) {
    for (Cavity other : part.cavities()) {
      if (other != cavity && other.kind() == Cavity.Kind.LEDGE) {
        double width =
            Clearance.evenWidth(cavity.contour().loop(), other.contour().loop()).orElse(0);
        if (width > 0) {
          double collar = settings.cutter().diameter() + 2 * (wider + width);
          plate.note(
              "With a collar of "
                  + Length.print(collar, settings.units())
                  + " on the same bit the template of "
                  + other.name()
                  + " makes "
                  + edge.name()
                  + " too, and this one is not needed.");
        }
      }
    }
  }
}
