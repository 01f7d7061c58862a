package org.bearingline.bench;

import org.bearingline.oracle.JtsReference;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.locationtech.jts.geom.Geometry;

/** What is timed; radii are half those of half-inch and three-quarter-inch bits. */
public enum Operation {
  OUT(6.35, "out +6.35"),
  IN(6.35, "in -6.35"),
  CLOSING(9.525, "closing 9.525");

  final double radius;
  final String title;

  Operation(double radius, String title) {
    this.radius = radius;
    this.title = title;
  }

  Region ours(Region region) {
    return switch (this) {
      case OUT -> Morphology.dilate(region, radius).region();
      case IN -> Morphology.erode(region, radius).region();
      case CLOSING -> Morphology.close(region, radius).region();
    };
  }

  Geometry jts(Geometry flat, JtsReference reference) {
    return switch (this) {
      case OUT -> reference.buffer(flat, radius);
      case IN -> reference.buffer(flat, -radius);
      case CLOSING -> reference.buffer(reference.buffer(flat, radius), -radius);
    };
  }
}
