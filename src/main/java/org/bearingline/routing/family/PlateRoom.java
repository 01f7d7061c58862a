package org.bearingline.routing.family;

import java.util.Optional;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;

/**
 * Makes a plate longer or deeper for parts that need more than its own part. Its edge is run on in
 * the direction in which it ends, which must be along x.
 */
final class PlateRoom {

  private final boolean woodAbove;

  /** How far an added piece reaches into the plate, mm: past its corners, which may be round. */
  private final double overlap;

  private PlateRoom(boolean woodAbove, double offset) {
    this.woodAbove = woodAbove;
    this.overlap = 1 + 2 * Math.abs(offset);
  }

  /**
   * The plate with room for the wanted box; sides that the box does not pass stay as they are.
   *
   * @param woodAbove whether the plate lies above its working edge
   * @param offset mm from the part's edge to the plate's; a grown plate has round corners
   * @throws org.bearingline.problem.Problem where the outlines cannot be joined
   */
  static Outline reaching(Outline plate, Bounds wanted, boolean woodAbove, double offset) {
    return new PlateRoom(woodAbove, offset).reaching(plate, wanted);
  }

  private Outline reaching(Outline plate, Bounds wanted) {
    Outline deeper = deepened(plate, wanted);
    Bounds box = deeper.bounds();
    Outline left =
        wanted.minX() < box.minX()
            ? lengthened(deeper, wanted.minX(), box.minX() + overlap)
            : deeper;
    return wanted.maxX() > box.maxX()
        ? lengthened(left, box.maxX() - overlap, wanted.maxX())
        : left;
  }

  private Outline deepened(Outline plate, Bounds wanted) {
    Bounds box = plate.bounds();
    if (woodAbove && wanted.maxY() > box.maxY()) {
      return joined(plate, new Bounds(box.minX(), box.maxY() - overlap, box.maxX(), wanted.maxY()));
    }
    if (!woodAbove && wanted.minY() < box.minY()) {
      return joined(plate, new Bounds(box.minX(), wanted.minY(), box.maxX(), box.minY() + overlap));
    }
    return plate;
  }

  private static Outline lengthened(Outline plate, double fromX, double toX) {
    Bounds box = plate.bounds();
    double inside = fromX < box.minX() ? toX : fromX;
    Optional<Line> end = Crossing.atX(plate.outer(), inside);
    return end.map(line -> joined(plate, new Bounds(fromX, line.start().y(), toX, line.end().y())))
        .orElse(plate);
  }

  private static Outline joined(Outline plate, Bounds more) {
    Region union = Overlay.union(Region.of(plate), Region.of(Outline.of(Loop.rectangle(more))));
    return union.pieces().get(0);
  }
}
