package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Reach;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.family.HalfTemplate;

/** The half of a part that half a template covers: the sheets need no more paper than the plate. */
final class HalfOnPaper {

  private static final double NEAR = 1e-9;

  private final double mostX;
  private final double mostY;

  private HalfOnPaper(HalfTemplate half) {
    boolean upright = half.axisFrom().x() == half.axisTo().x();
    this.mostX = upright ? half.axisFrom().x() : Double.POSITIVE_INFINITY;
    this.mostY = upright ? Double.POSITIVE_INFINITY : half.axisFrom().y();
  }

  /** What routing found, as far as the centre line and without the saw line. */
  static RoutingResult of(RoutingResult whole, HalfTemplate half) {
    return new HalfOnPaper(half).of(whole);
  }

  private RoutingResult of(RoutingResult whole) {
    Reach reach = whole.reach();
    List<Leftover> leftovers = reach.leftovers().stream().filter(one -> isKept(one.at())).toList();
    return new RoutingResult(
        part(whole.part()),
        whole.settings(),
        whole.templates(),
        whole.cutterCentre(),
        new Reach(
            reach.cutter(),
            reach.follower(),
            leftovers,
            reach.overcuts(),
            reach.tolerance(),
            reach.cautions()),
        whole.largestCutter(),
        whole.bits(),
        Optional.empty(),
        whole.proof(),
        whole.passes(),
        whole.feed(),
        whole.cautions());
  }

  private Part part(Part part) {
    Region cut =
        Overlay.intersection(
            Region.of(Outline.of(part.contour().loop())),
            Region.of(Outline.of(Loop.rectangle(reaching(part)))));
    Loop outer = cut.pieces().get(0).outer();
    List<Cavity> cavities =
        part.cavities().stream()
            .filter(cavity -> isKept(cavity.contour().loop().bounds()))
            .toList();
    List<Mark> marks = part.marks().stream().filter(this::isKept).toList();
    return new Part(
        part.name(), part.about(), Contour.routed(outer), cavities, marks, part.notes());
  }

  /** From beyond the part's start to the centre line. */
  private Bounds reaching(Part part) {
    Bounds all = part.contour().loop().bounds().grown(1);
    return new Bounds(
        all.minX(), all.minY(), Math.min(all.maxX(), mostX), Math.min(all.maxY(), mostY));
  }

  private boolean isKept(Mark mark) {
    if (mark instanceof Mark.DrillCentre drill) {
      return isKept(drill.at());
    }
    if (mark instanceof Mark.CentreLine line) {
      return isKept(line.from()) && isKept(line.to());
    }
    Mark.ShoulderLine line = (Mark.ShoulderLine) mark;
    return isKept(line.from()) && isKept(line.to());
  }

  private boolean isKept(Bounds box) {
    return isKept(new Point(box.minX(), box.minY())) && isKept(new Point(box.maxX(), box.maxY()));
  }

  private boolean isKept(Point p) {
    return p.x() <= mostX + NEAR && p.y() <= mostY + NEAR;
  }
}
