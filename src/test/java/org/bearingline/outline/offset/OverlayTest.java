package org.bearingline.outline.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.junit.jupiter.api.Test;

/** Unions, intersections and differences, those with shared edges first. */
class OverlayTest {

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.of(Outline.of(Loop.rectangle(new Bounds(x0, y0, x1, y1))));
  }

  private static Region disc(double x, double y, double r) {
    return Region.of(Outline.of(Loop.of(Arc.circle(new Point(x, y), r))));
  }

  @Test
  void aRegionWithoutItselfIsNothing() {
    Region part = Overlay.difference(box(0, 0, 100, 60), disc(50, 30, 10));
    assertTrue(Overlay.difference(part, part).isEmpty());
    assertEquals(part.area(), Overlay.union(part, part).area(), 1e-12);
    assertEquals(part.area(), Overlay.intersection(part, part).area(), 1e-12);
  }

  @Test
  void aSliverOfRoundingVanishes() {
    Region part = box(0, 0, 100, 60);
    assertTrue(
        Overlay.difference(part.transformed(Similarity.translation(1e-9, 1e-9)), part).isEmpty());
  }

  @Test
  void neighboursWithACommonEdgeBecomeOne() {
    Region joined = Overlay.union(box(0, 0, 50, 60), box(50, 0, 100, 60));
    assertEquals(1, joined.pieces().size());
    assertEquals(4, joined.size());
    assertTrue(Overlay.intersection(box(0, 0, 50, 60), box(50, 0, 100, 60)).isEmpty());
  }

  @Test
  void aDiscInsideLeavesAnOpening() {
    Region drilled = Overlay.difference(box(0, 0, 100, 60), disc(50, 30, 10));
    assertEquals(6000 - 100 * Math.PI, drilled.area(), 1e-9);
    assertEquals(1, drilled.pieces().get(0).openings().size());
  }

  /** Two discs of radius r at distance r share r²(2π/3 − √3/2). */
  @Test
  void lensOfTwoDiscs() {
    double r = 12;
    double lens = r * r * (2 * Math.PI / 3 - Math.sqrt(3) / 2);
    assertEquals(lens, Overlay.intersection(disc(0, 0, r), disc(r, 0, r)).area(), 1e-9);
    assertEquals(
        2 * Math.PI * r * r - lens, Overlay.union(disc(0, 0, r), disc(r, 0, r)).area(), 1e-9);
    assertEquals(
        Math.PI * r * r - lens, Overlay.difference(disc(0, 0, r), disc(r, 0, r)).area(), 1e-9);
  }
}
