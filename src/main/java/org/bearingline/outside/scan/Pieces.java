package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which of the pieces that stand out from the ground is the template. */
final class Pieces {

  /** A piece that the picture cuts off gives way to a whole one of this share of its area. */
  private static final double WHOLE_ENOUGH = 0.25;

  /** A second piece of this share of the template's area may be what was meant. */
  private static final double AS_LIKELY = 0.5;

  /** A second piece of this share is worth a warning, a smaller one is an offcut or a pencil. */
  private static final double WORTH_TELLING = 0.05;

  private final List<TracedLoop> loops;
  private final List<TracedLoop> pieces;

  Pieces(List<TracedLoop> loops) {
    this.loops = loops;
    this.pieces =
        loops.stream()
            .filter(loop -> loop.area() > 0 && !loop.atMark())
            .sorted(Comparator.comparingDouble(TracedLoop::area).reversed())
            .toList();
  }

  /** The largest piece, or a whole one in its place where the picture's end cuts that off. */
  Optional<TracedLoop> outside() {
    Optional<TracedLoop> largest = pieces.stream().findFirst();
    return largest
        .filter(TracedLoop::atRim)
        .flatMap(
            cut ->
                pieces.stream()
                    .filter(p -> !p.atRim() && p.area() >= WHOLE_ENOUGH * cut.area())
                    .findFirst())
        .or(() -> largest);
  }

  /** The outside, then its openings, the largest first. */
  List<TracedLoop> template(TracedLoop outside) {
    List<TracedLoop> template = new ArrayList<>();
    template.add(outside);
    loops.stream()
        .filter(loop -> loop.area() < 0 && outside.surrounds(loop.point(0)))
        .filter(
            loop ->
                pieces.stream()
                    .filter(p -> p != outside)
                    .noneMatch(p -> p.surrounds(loop.point(0))))
        .sorted(Comparator.comparingDouble(TracedLoop::area))
        .forEach(template::add);
    return template;
  }

  /** How many pieces are left out. */
  int others() {
    return Math.max(0, pieces.size() - 1);
  }

  /** A whole piece nearly as large as the template: either may be meant. */
  Optional<TracedLoop> asLikely(TracedLoop outside) {
    return whole(outside).filter(p -> p.area() >= AS_LIKELY * outside.area()).findFirst();
  }

  /** The largest piece left out, where it is no offcut. */
  Optional<TracedLoop> worthTelling(TracedLoop outside) {
    return whole(outside).filter(p -> p.area() >= WORTH_TELLING * outside.area()).findFirst();
  }

  private java.util.stream.Stream<TracedLoop> whole(TracedLoop outside) {
    return pieces.stream().filter(p -> p != outside && !p.atRim());
  }
}
