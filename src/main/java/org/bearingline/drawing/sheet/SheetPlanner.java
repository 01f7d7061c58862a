package org.bearingline.drawing.sheet;

import java.util.List;
import java.util.Optional;
import org.bearingline.drawing.Drawing;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.problem.CutOff;
import org.bearingline.problem.Problem;

/**
 * Looks for the fewest pages: the paper upright or across, the drawing as it is or turned by a
 * quarter, and the grid of cells shifted along both axes. Of equal counts the least paper wins,
 * then the drawing as it is, then the fewest joints, then the first that was tried.
 */
final class SheetPlanner {

  /** How many stretches of line one search may look at: some hundredths of a second. */
  private static final int BUDGET = 40_000;

  /** Lengths cut from a roll are rounded up to whole centimetres. */
  private static final double ROLL_STEP = 10;

  private final Drawing drawing;
  private final PaperChoice choice;
  private final List<String> notes;

  SheetPlanner(Drawing drawing, PaperChoice choice, List<String> notes) {
    this.drawing = drawing;
    this.choice = choice;
    this.notes = List.copyOf(notes);
  }

  /** One way to lay the drawing on pages. */
  private record Way(
      PageFrame frame, FootText text, Similarity placement, PageCover cover, boolean quarter) {

    int pages() {
      return cover.pages().size();
    }

    double paper() {
      return pages() * frame.width() * frame.height();
    }

    boolean isBetterThan(Way other) {
      if (pages() != other.pages()) {
        return pages() < other.pages();
      }
      if (Math.abs(paper() - other.paper()) > 1) {
        return paper() < other.paper();
      }
      if (quarter != other.quarter) {
        return !quarter;
      }
      return cover.joints() < other.cover.joints();
    }
  }

  SheetPlan plan() {
    Way way = search(false).or(() -> search(true)).orElseThrow();
    SheetNames names = new SheetNames(way.cover.pages());
    List<Sheet> sheets = names.sheets(way.cover.grid());
    List<Primitive> lines = lines(way.placement);
    List<Joint> joints = Joint.between(sheets, choice.overlap(), lines);
    return new SheetPlan(
        choice, way.frame, way.text, way.placement, names.rows(), names.columns(), sheets, joints);
  }

  /** The best way with or without joints; pages that stand alone save the words about joining. */
  private Optional<Way> search(boolean joined) {
    FootText text = FootText.of(drawing, choice.correction(), notes, joined);
    Way best = null;
    Problem refused = null;
    for (boolean quarter : new boolean[] {false, true}) {
      Similarity placement = placement(quarter);
      List<Primitive> lines = lines(placement);
      for (boolean across : new boolean[] {false, true}) {
        try {
          PageFrame frame = frame(lines, across, text);
          Optional<PageCover> cover = cover(lines, frame, best, joined);
          if (cover.isPresent()) {
            Way way = new Way(frame, text, placement, cover.get(), quarter);
            best = best == null || way.isBetterThan(best) ? way : best;
          }
        } catch (Problem tooSmall) {
          refused = tooSmall;
        }
      }
    }
    if (best == null && joined) {
      throw refused;
    }
    return Optional.ofNullable(best);
  }

  private List<Primitive> lines(Similarity placement) {
    return DrawnLines.of(drawing).stream().map(line -> line.transformed(placement)).toList();
  }

  private Similarity placement(boolean quarter) {
    Bounds box = drawing.bounds();
    Similarity turn = quarter ? Similarity.rotation(90, box.center()) : Similarity.identity();
    Point corner = quarter ? turn.apply(new Point(box.minX(), box.maxY())) : low(box);
    return turn.then(Similarity.translation(-corner.x(), -corner.y()));
  }

  private static Point low(Bounds box) {
    return new Point(box.minX(), box.minY());
  }

  private PageFrame frame(List<Primitive> lines, boolean across, FootText text) {
    if (!choice.paper().isRoll()) {
      return PageFrame.of(choice, choice.paper().height().getAsDouble(), across, text);
    }
    double longest = PaperTable.usual("longest page");
    PageFrame whole = PageFrame.of(choice, longest, across, text);
    Bounds box = box(lines);
    double room = across ? whole.cell().width() : whole.cell().height();
    double drawn = (across ? box.width() : box.height()) + 2 * Grid.EDGE;
    double scale = across ? whole.scaleX() : whole.scaleY();
    double least = PageFrame.LONGEST_BAR + 10;
    double cut = longest - (room - Math.max(drawn, least)) * Math.max(1, scale);
    double rounded = Math.ceil((cut - 1e-6) / ROLL_STEP) * ROLL_STEP;
    return PageFrame.of(choice, Math.min(longest, rounded), across, text);
  }

  private Optional<PageCover> cover(
      List<Primitive> lines, PageFrame frame, Way best, boolean joined) {
    Bounds cell = frame.cell();
    Grid sized = new Grid(0, 0, cell.width(), cell.height(), choice.overlap());
    Shifts x = new Shifts(spans(lines, true), sized.sureWidth(), sized.stepX());
    Shifts y = new Shifts(spans(lines, false), sized.sureHeight(), sized.stepY());
    if (!joined) {
      Bounds box = box(lines);
      if (box.width() > sized.sureWidth() || box.height() > sized.sureHeight()) {
        return Optional.empty();
      }
      return PageCover.of(lines, at(sized, x.starts(1).get(0), y.starts(1).get(0)), 2);
    }
    int floor = Math.max(x.fewest(), y.fewest());
    int tooMany = best == null ? Integer.MAX_VALUE : best.pages() + 1;
    if (floor >= tooMany) {
      return Optional.empty();
    }
    return search(lines, sized, x, y, floor, tooMany);
  }

  private static Optional<PageCover> search(
      List<Primitive> lines, Grid sized, Shifts x, Shifts y, int floor, int tooMany) {
    Grid first = at(sized, x.starts(1).get(0), y.starts(1).get(0));
    int stretches = lines.stream().mapToInt(line -> EdgeCuts.of(line, first).length - 1).sum();
    int tries = Math.max(9, BUDGET / stretches);
    int each = (int) Math.sqrt(tries);
    PageCover best = null;
    for (double startX : x.starts(each)) {
      for (double startY : y.starts(each)) {
        CutOff.check();
        int limit = best == null ? tooMany : best.pages().size();
        Optional<PageCover> cover = PageCover.of(lines, at(sized, startX, startY), limit);
        if (cover.isPresent()) {
          best = cover.get();
          if (best.pages().size() <= floor) {
            return cover;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static Grid at(Grid sized, double startX, double startY) {
    return new Grid(
        startX - Grid.EDGE, startY - Grid.EDGE, sized.width(), sized.height(), sized.overlap());
  }

  private static Bounds box(List<Primitive> lines) {
    return lines.stream().map(Primitive::bounds).reduce(Bounds::union).orElseThrow();
  }

  private static List<Shifts.Span> spans(List<Primitive> lines, boolean alongX) {
    return lines.stream()
        .map(Primitive::bounds)
        .map(
            box ->
                alongX
                    ? new Shifts.Span(box.minX(), box.maxX())
                    : new Shifts.Span(box.minY(), box.maxY()))
        .toList();
  }
}
