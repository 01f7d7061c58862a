package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;

/** Works out where clamps may stand. */
final class ClampZoneMaker {

  /** A zone's edge this near to the plate's, in mm, is the plate's edge. */
  private static final double ON_EDGE = 1e-6;

  /** Where along a shared edge a clamp is tried. */
  private static final double[] ALONG = {0, 0.25, 0.5, 0.75, 1};

  private final Outline surface;
  private final List<Path> paths;
  private final ClampSettings settings;
  private final Units units;
  private final double keepOff;

  ClampZoneMaker(Outline surface, List<Path> paths, ClampSettings settings, Units units) {
    this.surface = surface;
    this.paths = List.copyOf(paths);
    this.settings = settings;
    this.units = units;
    keepOff = settings.baseDiameter() / 2 + settings.clearance();
  }

  ClampZones zones() {
    Region free = Overlay.difference(Region.of(surface), SweptDisc.of(paths, keepOff));
    Region wide = Morphology.open(free, settings.pad() / 2).region();
    List<Outline> pieces = new ArrayList<>(wide.pieces());
    pieces.sort(Comparator.comparingDouble(Outline::area).reversed());
    List<ClampZone> zones = new ArrayList<>();
    for (Outline piece : pieces) {
      zones.add(new ClampZone(zones.size() + 1, piece, reachesEdge(piece)));
    }
    return new ClampZones(settings, zones, sentences(zones));
  }

  /** Whether a clamp as wide as its foot comes in over the plate's edge, clear of the base. */
  private boolean reachesEdge(Outline zone) {
    for (Primitive piece : zone.outer().primitives()) {
      if (piece.length() > ON_EDGE && liesOnEdge(piece)) {
        for (double share : ALONG) {
          if (isClearOutside(piece.pointAt(share), piece.tangentAt(share))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean liesOnEdge(Primitive piece) {
    for (double share : new double[] {0, 0.5, 1}) {
      if (surface.outer().distanceTo(piece.pointAt(share)) > ON_EDGE) {
        return false;
      }
    }
    return true;
  }

  /** The clamp's body is as wide as its foot and stands within a foot's width of the edge. */
  private boolean isClearOutside(Point at, Point along) {
    Point outward = along.left().times(-1);
    for (double aside : new double[] {-0.5, 0, 0.5}) {
      for (double away : new double[] {0, 0.5, 1}) {
        Point body =
            at.plus(along.times(aside * settings.pad())).plus(outward.times(away * settings.pad()));
        if (clearOf(body) < keepOff - ON_EDGE) {
          return false;
        }
      }
    }
    return true;
  }

  private double clearOf(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Path path : paths) {
      for (Primitive run : path.primitives()) {
        least = Math.min(least, run.distanceTo(p));
      }
    }
    return least;
  }

  private List<String> sentences(List<ClampZone> zones) {
    String base =
        "the router's base of "
            + Length.printRough(settings.baseDiameter(), units)
            + " comes no nearer than "
            + Length.printRough(settings.clearance(), units);
    if (zones.isEmpty()) {
      return List.of(
          "Nowhere does a clamp stand clear of the router's base of "
              + Length.printRough(settings.baseDiameter(), units)
              + ": hold the work with double-sided tape under the template or screws into waste, or"
              + " rout one end while the other is clamped, and stop the router before moving a"
              + " clamp.");
    }
    List<String> words = new ArrayList<>();
    String clamps = numbers(zones, true);
    String tape = numbers(zones, false);
    if (!clamps.isEmpty()) {
      words.add("Clamps may stand in " + clamps + "; " + base + ".");
    }
    if (!tape.isEmpty()) {
      words.add(
          "A clamp does not come to "
              + tape
              + ": hold there with double-sided tape, pins or screws where they do no harm"
              + (clamps.isEmpty() ? "; " + base + "." : "."));
    }
    return words;
  }

  private static String numbers(List<ClampZone> zones, boolean reaching) {
    List<String> numbers = new ArrayList<>();
    for (ClampZone zone : zones) {
      if (zone.reachesEdge() == reaching) {
        numbers.add(Integer.toString(zone.number()));
      }
    }
    if (numbers.isEmpty()) {
      return "";
    }
    return (numbers.size() == 1 ? "zone " : "zones ") + String.join(", ", numbers);
  }
}
