package org.bearingline.outline.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.outline.Outline;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The union of outlines whose arcs are flattened to chords, by JTS: to check an exact one by. */
public final class FlattenedUnion {

  private FlattenedUnion() {}

  /**
   * Area of the union in mm²; empty where JTS finds none. It may be off by the length of all arcs
   * times {@code chord}.
   *
   * @param chord mm by which a chord may miss its arc
   */
  public static OptionalDouble area(List<Outline> outlines, double chord) {
    List<Geometry> polygons = new ArrayList<>();
    for (Outline outline : outlines) {
      polygons.add(FlattenedBuffer.polygon(outline, chord));
    }
    try {
      return OptionalDouble.of(OverlayNGRobust.union(polygons).getArea());
    } catch (TopologyException | IllegalArgumentException unmade) {
      return OptionalDouble.empty(); // Flattened, a thin wall may cross itself.
    }
  }
}
