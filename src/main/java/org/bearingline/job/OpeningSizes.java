package org.bearingline.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.bearingline.drawing.Item;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/**
 * Sizes of openings and recesses and where they stand, as a maker measures them: from the sawn
 * reference edge where there is one, else from the nearer edge; not where a centre line marks the
 * place. What lies about one point is placed once, and equal openings are measured once. A circle
 * has its diameter and is placed by its centre, where the bit of a brace or a compass stands.
 */
final class OpeningSizes {

  /** More openings than this would crowd the picture; the report and the DXF have them all. */
  private static final int MOST = 6;

  private static final double SAME = 1e-3;

  /** Before a diameter, as drawings have it. */
  private static final String DIAMETER = "Ø ";

  private final Part part;
  private final Bounds box;
  private final double away;
  private final List<Item.Dimension> wanted = new ArrayList<>();
  private final List<Bounds> sized = new ArrayList<>();
  private final List<Point> placed = new ArrayList<>();

  private OpeningSizes(Part part, double away) {
    this.part = part;
    this.box = part.contour().loop().bounds();
    this.away = away;
  }

  /**
   * The dimensions, each with the least offset that would do.
   *
   * @param away mm from what is measured
   */
  static List<Item.Dimension> of(Part part, double away) {
    OpeningSizes sizes = new OpeningSizes(part, away);
    if (measures(part)) {
      // The outermost of nested ones places them all.
      part.cavities().stream()
          .map(cavity -> cavity.contour().loop())
          .sorted(
              Comparator.comparingDouble(loop -> -loop.bounds().width() * loop.bounds().height()))
          .forEach(sizes::opening);
    }
    return sizes.wanted;
  }

  /** Whether the openings of a part are few enough to be measured. */
  static boolean measures(Part part) {
    return part.cavities().size() <= MOST;
  }

  /** Whether a loop is one circle, in however many arcs. */
  static boolean isCircle(Loop loop) {
    return loop.primitives().get(0) instanceof Arc first
        && loop.primitives().stream()
            .allMatch(
                piece ->
                    piece instanceof Arc arc
                        && arc.center().distanceTo(first.center()) < SAME
                        && Math.abs(arc.radius() - first.radius()) < SAME);
  }

  private void opening(Loop loop) {
    Bounds whole = loop.bounds();
    boolean circle = isCircle(loop);
    if (sized.stream().noneMatch(other -> isSameSize(whole, other))) {
      sized.add(whole);
      Point left = new Point(whole.minX(), whole.maxY());
      Point right = new Point(whole.maxX(), whole.maxY());
      if (circle) {
        wanted.add(new Item.Dimension(left, right, away, DIAMETER, whole.width()));
      } else {
        add(left, right, away);
        add(new Point(whole.maxX(), whole.minY()), right, -away);
      }
    }
    // A circle is measured to its centre, which stands in for both of its sides.
    Bounds at =
        circle
            ? new Bounds(
                whole.center().x(), whole.center().y(), whole.center().x(), whole.center().y())
            : whole;
    if (placed.stream().noneMatch(other -> other.distanceTo(at.center()) < SAME)) {
      placed.add(at.center());
      if (!isMarked(at.center(), true)) {
        across(at);
      }
      if (!isMarked(at.center(), false)) {
        upright(at);
      }
    }
  }

  private void across(Bounds at) {
    boolean left = isFirst(at.minX() - box.minX(), box.maxX() - at.maxX(), true);
    // Where the part is round, its edge stands out at half height alone.
    double y = isStraight(left ? box.minX() : box.maxX(), true) ? at.minY() : at.center().y();
    if (left) {
      add(new Point(box.minX(), y), new Point(at.minX(), y), -away);
    } else {
      add(new Point(at.maxX(), y), new Point(box.maxX(), y), -away);
    }
  }

  private void upright(Bounds at) {
    boolean bottom = isFirst(at.minY() - box.minY(), box.maxY() - at.maxY(), false);
    double x = isStraight(bottom ? box.minY() : box.maxY(), false) ? at.minX() : at.center().x();
    if (bottom) {
      add(new Point(x, box.minY()), new Point(x, at.minY()), away);
    } else {
      add(new Point(x, at.maxY()), new Point(x, box.maxY()), away);
    }
  }

  /** Whether the left or lower edge is measured from. */
  private boolean isFirst(double before, double after, boolean across) {
    boolean low = isReference(across ? box.minX() : box.minY(), across);
    boolean high = isReference(across ? box.maxX() : box.maxY(), across);
    return low == high ? before <= after + SAME : low;
  }

  /** Whether a sawn edge lies there. */
  private boolean isReference(double at, boolean upright) {
    return isEdge(at, upright, Set.of(EdgeKind.SAWN));
  }

  private boolean isStraight(double at, boolean upright) {
    return isEdge(at, upright, Set.of(EdgeKind.values()));
  }

  private boolean isEdge(double at, boolean upright, Set<EdgeKind> kinds) {
    Contour contour = part.contour();
    for (int i = 0; i < contour.loop().size(); i++) {
      Primitive piece = contour.loop().primitives().get(i);
      if (kinds.contains(contour.kinds().get(i))
          && Math.abs(along(piece.start(), upright) - at) < SAME
          && Math.abs(along(piece.end(), upright) - at) < SAME) {
        return true;
      }
    }
    return false;
  }

  private static double along(Point p, boolean upright) {
    return upright ? p.x() : p.y();
  }

  /** Whether an upright or level centre line runs through a point. */
  private boolean isMarked(Point p, boolean upright) {
    for (Mark mark : part.marks()) {
      if (mark instanceof Mark.CentreLine line
          && Math.abs(along(line.from(), upright) - along(p, upright)) < SAME
          && Math.abs(along(line.to(), upright) - along(p, upright)) < SAME) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSameSize(Bounds a, Bounds b) {
    return Math.abs(a.width() - b.width()) < SAME && Math.abs(a.height() - b.height()) < SAME;
  }

  private void add(Point from, Point to, double offset) {
    double value = from.distanceTo(to);
    if (value > SAME) {
      wanted.add(new Item.Dimension(from, to, offset, "", value));
    }
  }
}
