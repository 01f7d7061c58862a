package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.part.EdgeKind;

/** A plate while openings are being put into it. */
final class Plate {

  private final Loop outer;
  private final RoutingSettings settings;
  private final double wider;
  private final List<Loop> openings = new ArrayList<>();
  private final List<Path> workingEdges = new ArrayList<>();
  private final List<String> serves = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  Plate(Loop outer, RoutingSettings settings, double wider) {
    this.outer = outer;
    this.settings = settings;
    this.wider = wider;
  }

  Loop outer() {
    return outer;
  }

  /** Whether an opening leaves a bridge of the minimum width on all sides. */
  boolean hasRoomFor(Loop opening) {
    if (!Clearance.isInside(opening, outer, settings.minimumWidth())) {
      return false;
    }
    for (Loop other : openings) {
      if (!Clearance.isApart(opening, other, settings.minimumWidth())) {
        return false;
      }
    }
    return true;
  }

  void open(RoutedEdge edge, Loop opening) {
    openings.add(opening);
    follow(edge, List.of(opening.clockwise()));
  }

  void follow(RoutedEdge edge, List<Loop> loops) {
    serves.add(edge.name());
    workingEdges.addAll(Along.followed(loops, edge.run(), Math.abs(wider)));
    if (edge.run().runOut() < settings.runOut() && !edge.contour().isAll(EdgeKind.ROUTED)) {
      notes.add(
          "The template runs on only "
              + Length.print(edge.run().runOut(), settings.units())
              + " past the ends of "
              + edge.name()
              + ", for the part itself is in the way: start and stop with care.");
    }
  }

  void note(String sentence) {
    notes.add(sentence);
  }

  Template finished(int number, int of) {
    Outline plate = new Outline(outer, openings);
    Region core = Morphology.erode(Region.of(plate), settings.minimumWidth() / 2).region();
    if (core.pieces().size() != 1) {
      notes.add(
          "The template is narrower than "
              + Length.print(settings.minimumWidth(), settings.units())
              + " in places: glue a stiff strip over them.");
    }
    String title = of == 1 ? "template" : "template " + number + ": " + String.join(", ", serves);
    return new Template(number, title, plate, workingEdges, serves, -wider, notes);
  }
}
