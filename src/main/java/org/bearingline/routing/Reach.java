package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;

/**
 * A = (T ⊕ D(R)) ⊖ D(r): what remains of the work when a follower of radius R rides the template T
 * with a cutter of radius r. Leftover = A \ P, overcut = P \ A, both within the stock.
 *
 * @param cutter the cutter
 * @param follower what rides the template
 * @param leftovers numbered in reading order from the left
 * @param overcuts in reading order from the left
 * @param tolerance mm to which the edges of A are known
 * @param cautions sentences for the maker; empty for the exact way
 */
public record Reach(
    Cutter cutter,
    Follower follower,
    List<Leftover> leftovers,
    List<Overcut> overcuts,
    double tolerance,
    List<String> cautions) {

  /** A piece less deep than this, in mm, is rounding and not wood; ten times the exact way's. */
  private static final double CRUMB_DEPTH = 1e-5;

  /** A piece smaller than this, in mm², likewise. */
  private static final double CRUMB_AREA = 1e-6;

  public Reach {
    leftovers = List.copyOf(leftovers);
    overcuts = List.copyOf(overcuts);
    cautions = List.copyOf(cautions);
  }

  /**
   * The reach alone, with the usual run-out, without the template, the saw line and the rest.
   *
   * @throws org.bearingline.problem.Problem where the bit does not enter a cavity
   */
  public static Reach of(Part part, Cutter cutter, Follower follower) {
    return of(part, RoutingSettings.usual(cutter, follower));
  }

  static Reach of(Part part, RoutingSettings settings) {
    return of(
        RoutedEdge.all(part, settings.runOut(), settings.margin()),
        settings.cutter(),
        settings.follower());
  }

  static Reach of(List<RoutedEdge> edges, Cutter cutter, Follower follower) {
    Gathering gathering = new Gathering();
    for (RoutedEdge edge : edges) {
      gathering.add(edge, EdgeCut.of(edge, cutter, follower));
    }
    return gathering.reach(cutter, follower);
  }

  /** Whether every routed edge comes out as designed. */
  public boolean isComplete() {
    return leftovers.isEmpty();
  }

  private static final class Gathering {
    private final List<Leftover> leftovers = new ArrayList<>();
    private final List<Overcut> overcuts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private double tolerance;

    void add(RoutedEdge edge, EdgeCut cut) {
      tolerance = Math.max(tolerance, cut.tolerance());
      for (String caution : cut.cautions()) {
        if (!cautions.contains(caution)) {
          cautions.add(caution);
        }
      }
      if (cut.left().isEmpty() && cut.over().isEmpty()) {
        return;
      }
      NearestEdge designed = new NearestEdge(edge.run().loop().primitives());
      NearestEdge made = NearestEdge.of(cut.cutEdges());
      for (Outline piece : cut.left().pieces()) {
        PieceMeasure m = PieceMeasure.of(piece, designed, made);
        if (isWood(piece, m)) {
          leftovers.add(
              new Leftover(
                  0,
                  edge.name(),
                  piece,
                  m.at(),
                  piece.area(),
                  m.depth(),
                  m.insideRadius(),
                  m.neck() ? Leftover.Kind.NECK : Leftover.Kind.CORNER));
        }
      }
      for (Outline piece : cut.over().pieces()) {
        PieceMeasure m = PieceMeasure.of(piece, designed, made);
        if (isWood(piece, m)) {
          overcuts.add(new Overcut(edge.name(), piece, m.at(), piece.area(), m.depth()));
        }
      }
    }

    private boolean isWood(Outline piece, PieceMeasure measure) {
      return piece.area() > CRUMB_AREA && measure.depth() > Math.max(CRUMB_DEPTH, tolerance);
    }

    Reach reach(Cutter cutter, Follower follower) {
      leftovers.sort(Comparator.comparing(Leftover::at, ReadingOrder.FROM_LEFT));
      overcuts.sort(Comparator.comparing(Overcut::at, ReadingOrder.FROM_LEFT));
      List<Leftover> numbered = new ArrayList<>();
      for (Leftover leftover : leftovers) {
        numbered.add(leftover.numbered(numbered.size() + 1));
      }
      return new Reach(cutter, follower, numbered, overcuts, tolerance, cautions);
    }
  }

  /** From the left; one above the other, from the top. */
  static final class ReadingOrder {
    /** Points whose x agrees to this, in mm, stand one above the other. */
    private static final double COLUMN = 1e-3;

    static final Comparator<Point> FROM_LEFT =
        (p, q) -> {
          int column = Long.compare(Math.round(p.x() / COLUMN), Math.round(q.x() / COLUMN));
          return column != 0 ? column : Double.compare(q.y(), p.y());
        };

    private ReadingOrder() {}
  }
}
