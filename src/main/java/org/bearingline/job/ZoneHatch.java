package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.ScanLine;
import org.bearingline.outline.Similarity;
import org.bearingline.routing.setup.ClampZone;
import org.bearingline.routing.setup.ClampZones;

/**
 * Zones for clamps as slanting dotted lines, those for tape alone slanting the other way. They have
 * no line round them, so that nobody takes one for an edge to cut.
 */
final class ZoneHatch {

  /** Between two lines of a full-size drawing, mm. */
  private static final double SPACING = 7;

  private static final double SLANT = 45;

  private final double spacing;

  ZoneHatch(double enlargement) {
    this.spacing = SPACING * enlargement;
  }

  List<Item> items(ClampZones zones) {
    List<Item> items = new ArrayList<>();
    zones.zones().forEach(zone -> items.addAll(items(zone.outline(), zone.reachesEdge())));
    return items;
  }

  /** The lines of one zone. */
  List<Item> items(Outline zone, boolean clamps) {
    double slant = clamps ? SLANT : -SLANT;
    Outline turned = zone.transformed(Similarity.rotation(-slant, Point.ORIGIN));
    Similarity back = Similarity.rotation(slant, Point.ORIGIN);
    Bounds box = turned.bounds();
    List<Item> items = new ArrayList<>();
    // Lines lie at whole multiples, so that neighbouring zones look like one stuff.
    for (double y = Math.ceil(box.minY() / spacing) * spacing; y < box.maxY(); y += spacing) {
      for (double[] ends : ScanLine.chords(turned, y, spacing)) {
        Point from = back.apply(new Point(ends[0], y));
        Point to = back.apply(new Point(ends[1], y));
        items.add(new Item.Stroke(Path.of(new Line(from, to))));
      }
    }
    return items;
  }

  /** What to write in the zones. */
  static List<PlateMarks.Said> words(ClampZones zones) {
    List<PlateMarks.Said> words = new ArrayList<>();
    for (ClampZone zone : zones.zones()) {
      String text = (zone.reachesEdge() ? "clamp " : "tape ") + zone.number();
      words.add(new PlateMarks.Said(text, middle(zone.outline())));
    }
    return words;
  }

  /** The middle of the longest level chord at half height. */
  private static Point middle(Outline zone) {
    Bounds box = zone.bounds();
    double y = box.center().y();
    double[] longest = {box.minX(), box.minX()};
    for (double[] ends : ScanLine.chords(zone, y, Math.max(1e-3, box.height() / 100))) {
      if (ends[1] - ends[0] > longest[1] - longest[0]) {
        longest = ends;
      }
    }
    return new Point((longest[0] + longest[1]) / 2, y);
  }
}
