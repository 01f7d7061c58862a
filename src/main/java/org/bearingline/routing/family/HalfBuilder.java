package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/**
 * Cuts a template in half: T ∩ {x ≤ c + o} for a centre line x = c and a lap o past it, or the same
 * in y. Past the centre line the plate keeps the part's true line, not a straight: where the edge
 * is curved there, a straight would let the bit into the part.
 */
final class HalfBuilder {

  private static final double TOLERANCE = Families.TOLERANCE;

  /** The lap goes at most this share of the way to the part's other end. */
  private static final double MOST_LAP = 0.5;

  private final RoutingResult result;
  private final Template template;
  private final Bounds part;
  private final Units units;

  HalfBuilder(RoutingResult result, Units units) {
    this.result = result;
    this.units = units;
    this.part = result.part().contour().loop().bounds();
    this.template =
        Families.template(result)
            .orElseThrow(
                () -> problem("has no template for its outer edge, so there is no half to make"));
  }

  private Problem problem(String what) {
    return new Problem(Place.field(result.part().name()), "this part " + what);
  }

  HalfTemplate build() {
    Point centre = part.center();
    Point up = centre.plus(new Point(0, 1));
    Point along = centre.plus(new Point(1, 0));
    double acrossX = unlikeness(Similarity.mirror(centre, up));
    if (acrossX <= TOLERANCE) {
      return half(true, acrossX);
    }
    double acrossY = unlikeness(Similarity.mirror(centre, along));
    if (acrossY <= TOLERANCE) {
      return half(false, acrossY);
    }
    throw problem(
        "has no centre line: its halves differ by "
            + Length.print(Math.min(acrossX, acrossY), units)
            + "; make the whole template");
  }

  /** How far the routed edge and its mirror image lie apart, mm. */
  private double unlikeness(Similarity mirror) {
    Contour contour = result.part().contour();
    Contour mirrored = contour.transformed(mirror);
    return PathDistance.between(routed(contour), routed(mirrored));
  }

  private static List<Primitive> routed(Contour contour) {
    List<Primitive> routed = new ArrayList<>();
    for (int i = 0; i < contour.kinds().size(); i++) {
      if (contour.kinds().get(i) == EdgeKind.ROUTED) {
        routed.add(contour.loop().primitives().get(i));
      }
    }
    return routed;
  }

  private HalfTemplate half(boolean upright, double deviation) {
    Point centre = part.center();
    double reach = (upright ? part.width() : part.height()) / 2;
    double lap = Math.min(result.settings().runOut(), MOST_LAP * reach);
    Bounds box = template.plate().bounds().grown(1);
    Bounds kept =
        upright
            ? new Bounds(box.minX(), box.minY(), centre.x() + lap, box.maxY())
            : new Bounds(box.minX(), box.minY(), box.maxX(), centre.y() + lap);
    Region cut =
        Overlay.intersection(
            Region.of(template.plate()), Region.of(Outline.of(Loop.rectangle(kept))));
    if (cut.pieces().size() != 1) {
      throw problem("has a template that falls apart at its centre line; make the whole one");
    }
    Outline plate = cut.pieces().get(0);
    Line axis = across(plate, upright, upright ? centre.x() : centre.y());
    return new HalfTemplate(
        result.part().name(),
        plate,
        axis.start(),
        axis.end(),
        lap,
        deviation,
        lines(plate, upright, lap, axis),
        sentences(upright, lap));
  }

  private List<Registration> lines(Outline plate, boolean upright, double lap, Line axis) {
    String name = result.part().name();
    List<Registration> lines = new ArrayList<>();
    lines.add(
        new Registration(
            name, Registration.Kind.CENTRE, axis.start(), axis.end(), "centre line: turn here"));
    double end = upright ? part.minX() : part.minY();
    Bounds box = plate.bounds();
    if (end > (upright ? box.minX() : box.minY()) + TOLERANCE) {
      Line line = across(plate, upright, end);
      lines.add(
          new Registration(name, Registration.Kind.END, line.start(), line.end(), name + ": end"));
    }
    double stop = (upright ? part.center().x() : part.center().y()) + lap / 2;
    Line line = across(plate, upright, stop);
    lines.add(new Registration(name, Registration.Kind.STOP, line.start(), line.end(), "stop"));
    return lines;
  }

  /** The line over the plate square to the way it is turned. */
  private static Line across(Outline plate, boolean upright, double at) {
    if (upright) {
      return Crossing.atX(plate.outer(), at).orElseThrow();
    }
    // The same with x and y exchanged.
    Similarity swap = Similarity.mirror(Point.ORIGIN, new Point(1, 1));
    Line line = Crossing.atX(plate.outer().transformed(swap), at).orElseThrow();
    return line.transformed(swap);
  }

  private List<String> sentences(boolean upright, double lap) {
    String name = result.part().name();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Half template of "
            + name
            + ": one half and "
            + Length.print(lap, units)
            + " past the centre line. Lay its centre line to the part's, rout that half as far as"
            + " the stop line, then turn the template over on the centre line for the other half.");
    sentences.add(
        straightAtCentre(upright)
            .map(
                length ->
                    "The edge runs straight for "
                        + Length.print(length, units)
                        + " across the centre line, so the halves blend there.")
            .orElse(
                "The edge is curved at the centre line: mark the line finely on part and template,"
                    + " for a shift shows twice."));
    sentences.add(
        "Stop at the stop line and lift the router clear: the plate ends in the middle of the work,"
            + " and the bit must not go round its end.");
    if (!result.part().contour().isAll(EdgeKind.ROUTED)) {
      sentences.add(
          "Make first the half at which the cut begins, as the feed arrows run, then the half at"
              + " which it ends: there the bit comes in on the finished edge beside the centre line."
              + " Beyond the part's end the plate runs on by "
              + Length.print(result.settings().runOut(), units)
              + ", for the bearing to be on it before the bit meets wood.");
    }
    sentences.add(
        "Draw the lines on both sides of the plate and write A and B on it: one half is made with"
            + " side A up, the other with side B up.");
    return sentences;
  }

  /** How long the straight is that crosses the centre line on the routed edge, mm. */
  private Optional<Double> straightAtCentre(boolean upright) {
    double at = upright ? part.center().x() : part.center().y();
    double shortest = Double.POSITIVE_INFINITY;
    for (Primitive piece : routed(result.part().contour())) {
      Bounds box = piece.bounds();
      double low = upright ? box.minX() : box.minY();
      double high = upright ? box.maxX() : box.maxY();
      if (low <= at + TOLERANCE && high >= at - TOLERANCE) {
        shortest = Math.min(shortest, piece.curvature() == 0 ? piece.length() : 0);
      }
    }
    return shortest > TOLERANCE && Double.isFinite(shortest)
        ? Optional.of(shortest)
        : Optional.empty();
  }
}
