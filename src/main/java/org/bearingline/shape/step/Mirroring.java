package org.bearingline.shape.step;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.construct.MirroredHalf;
import org.bearingline.problem.Place;

/** Completes a drawn half by its mirror image, edge kinds and places included. */
final class Mirroring {

  private Mirroring() {}

  static void complete(List<Drawn> half, Point p, Point q, Place place) {
    Path drawn = new Path(half.stream().map(Drawn::primitive).toList());
    Path whole = Pen.at(place, () -> MirroredHalf.complete(drawn, p, q));
    Similarity image = Similarity.mirror(p, q);
    List<Drawn> all = new ArrayList<>();
    for (Primitive piece : whole.primitives()) {
      all.add(source(piece, half, image).with(piece));
    }
    half.clear();
    half.addAll(all);
  }

  /** The step whose piece, or its image, holds the middle of a half of the given piece. */
  private static Drawn source(Primitive piece, List<Drawn> half, Similarity image) {
    // A piece across the axis is twice as long as its source, so its quarter is looked up.
    Point probe = piece.pointAt(0.25);
    Point mirrored = image.apply(probe);
    Drawn nearest = half.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Drawn candidate : half) {
      double distance =
          Math.min(
              candidate.primitive().distanceTo(probe), candidate.primitive().distanceTo(mirrored));
      if (distance < least) {
        least = distance;
        nearest = candidate;
      }
    }
    return nearest;
  }
}
