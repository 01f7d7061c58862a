package org.bearingline.routing.family;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Part;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.shape.ShapeLibrary;

/** Routed parts for tests; measures as name and text in turn. */
final class Rails {

  private Rails() {}

  static Part part(String name, String shape, String... measures) {
    Map<String, String> given = new LinkedHashMap<>();
    for (int i = 0; i < measures.length; i += 2) {
      given.put(measures[i], measures[i + 1]);
    }
    return ShapeLibrary.builtIn().find(shape).measured(given, Optional.empty()).part().named(name);
  }

  /** A rail with one lift a side, radii and rise of 16 mm. */
  static Part lift(String name, double length, double width, double end) {
    return part(
        name,
        "cloud-lift-rail",
        "length",
        length + "mm",
        "width",
        width + "mm",
        "end",
        end + "mm",
        "rise",
        "16mm",
        "radius",
        "16mm",
        "outer_radius",
        "16mm");
  }

  static Part moved(Part part, Similarity similarity) {
    return new Part(
        part.name(),
        part.about(),
        part.contour().transformed(similarity),
        List.of(),
        List.of(),
        List.of());
  }

  /** Routed with a bit of 12.7 mm and a bearing of that diameter or another. */
  static RoutingResult routed(Part part, double bearing) {
    return Routing.workOut(
        part, RoutingSettings.usual(new Cutter(12.7), new Follower.Bearing(bearing)), Kit.usual());
  }

  static RoutingResult routed(Part part) {
    return routed(part, 12.7);
  }
}
