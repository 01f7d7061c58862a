package org.bearingline.routing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Finds the routed stretches that a groove is to run along. */
final class GroovedRuns {

  /** Cosine of the angle below which a straight edge faces a side: 1 mm in 700. */
  private static final double SQUARE = 1 - 1e-6;

  /**
   * One routed stretch of an edge.
   *
   * @param edge its pieces, wood on the left
   * @param contour the whole edge with this stretch alone routed
   * @param cavity the opening it belongs to; empty for the outside edge
   */
  record Run(Path edge, Contour contour, Optional<Cavity> cavity) {

    /** The way out of the wood across its chord; empty for an edge that runs all round. */
    Optional<BoardSide> side() {
      Point chord = edge.end().minus(edge.start());
      if (chord.norm() == 0) {
        return Optional.empty();
      }
      Point out = chord.left().times(-1);
      BoardSide best = BoardSide.LEFT;
      for (BoardSide side : BoardSide.values()) {
        if (side.outward().dot(out) > best.outward().dot(out)) {
          best = side;
        }
      }
      return Optional.of(best);
    }
  }

  private GroovedRuns() {}

  /** The routed stretches of a part's outside edge; none where all of it is sawn. */
  static List<Run> routed(Part part) {
    return runs(part.contour(), Optional.empty());
  }

  static List<Run> of(Part part, GrooveExtent extent) {
    Optional<Cavity> cavity = cavity(part, extent.edge());
    Contour contour = cavity.isPresent() ? cavity.get().contour() : part.contour();
    List<Run> runs = runs(contour, cavity);
    if (extent.side().isPresent() && runs.stream().noneMatch(r -> r.side().equals(extent.side()))) {
      Optional<Run> straight = straight(contour, extent.side().get(), cavity);
      if (straight.isPresent()) {
        return List.of(straight.get());
      }
    }
    if (runs.isEmpty()) {
      throw new Problem(
          Place.field(extent.edge()),
          "this edge is sawn all round, and a slot cutter's bearing rides a routed edge; name the"
              + " straight “side” that is jointed for it, or call the edge routed");
    }
    if (extent.side().isEmpty()) {
      return runs;
    }
    BoardSide side = extent.side().get();
    List<Run> chosen = runs.stream().filter(r -> r.side().equals(extent.side())).toList();
    if (chosen.isEmpty()) {
      throw new Problem(
          Place.field(extent.edge()),
          "the "
              + side.word()
              + " side has no straight edge and no routed stretch of its own; a groove can go along: "
              + words(runs));
    }
    return chosen;
  }

  /**
   * The longest straight edge of a side, where that side is no routed stretch of its own: jointed
   * or routed true, it carries a bearing.
   */
  private static Optional<Run> straight(Contour contour, BoardSide side, Optional<Cavity> cavity) {
    int n = contour.loop().size();
    int longest = -1;
    for (int i = 0; i < n; i++) {
      Primitive piece = contour.loop().primitives().get(i);
      boolean facesSide =
          piece.curvature() == 0 && piece.tangentAt(0).left().dot(side.outward()) <= -SQUARE;
      if (facesSide
          && (longest < 0 || piece.length() > contour.loop().primitives().get(longest).length())) {
        longest = i;
      }
    }
    if (longest < 0) {
      return Optional.empty();
    }
    List<EdgeKind> kinds = new ArrayList<>(Collections.nCopies(n, EdgeKind.SAWN));
    kinds.set(longest, EdgeKind.ROUTED);
    Path edge = Path.of(contour.loop().primitives().get(longest));
    return Optional.of(new Run(edge, new Contour(contour.loop(), kinds), cavity));
  }

  private static String words(List<Run> runs) {
    return String.join(
        ", ", runs.stream().map(r -> r.side().map(BoardSide::word).orElse("all round")).toList());
  }

  private static Optional<Cavity> cavity(Part part, String edge) {
    if (edge.equals(Template.OUTSIDE_EDGE)) {
      return Optional.empty();
    }
    List<String> known = new ArrayList<>(List.of(Template.OUTSIDE_EDGE));
    for (Cavity cavity : part.cavities()) {
      known.add(cavity.name());
      if (cavity.name().equals(edge)) {
        if (cavity.kind() != Cavity.Kind.THROUGH) {
          throw new Problem(
              Place.field(edge),
              "a slot cutter works the edge of a through opening, and this one is blind");
        }
        return Optional.of(cavity);
      }
    }
    throw new Problem(
        Place.field(edge), "the part has no such edge" + NearestName.hint(known, edge));
  }

  private static List<Run> runs(Contour contour, Optional<Cavity> cavity) {
    if (contour.isAll(EdgeKind.ROUTED)) {
      return List.of(new Run(Path.of(contour.loop()), contour, cavity));
    }
    List<Run> runs = new ArrayList<>();
    int n = contour.loop().size();
    for (int first = 0; first < n; first++) {
      boolean starts =
          contour.kinds().get(first) == EdgeKind.ROUTED
              && contour.kinds().get((first + n - 1) % n) == EdgeKind.SAWN;
      if (!starts) {
        continue;
      }
      List<Primitive> edge = new ArrayList<>();
      List<EdgeKind> kinds = new ArrayList<>(Collections.nCopies(n, EdgeKind.SAWN));
      for (int i = first; contour.kinds().get(i % n) == EdgeKind.ROUTED; i++) {
        edge.add(contour.loop().primitives().get(i % n));
        kinds.set(i % n, EdgeKind.ROUTED);
      }
      runs.add(new Run(new Path(edge), new Contour(contour.loop(), kinds), cavity));
    }
    return runs;
  }
}
