package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.routing.RoutingResult;

/** Cuts the piece with one curve out of a template, with straight edge on both sides of it. */
final class ShortTemplate {

  private final RoutingResult host;
  private final Course course;
  private final int curve;
  private final Units units;

  ShortTemplate(RoutingResult host, Course course, int curve, Units units) {
    this.host = host;
    this.course = course;
    this.curve = curve;
    this.units = units;
  }

  SharedCurve serving(List<SharedCurves.PlaceOfCurve> places) {
    double start = course.start(curve).x();
    double end = course.end(curve).x();
    boolean up = course.sense() > 0;
    double before =
        places.stream()
            .mapToDouble(SharedCurves.PlaceOfCurve::before)
            .reduce(straight(curve), Math::min);
    double after =
        places.stream()
            .mapToDouble(SharedCurves.PlaceOfCurve::after)
            .reduce(straight(curve + 1), Math::min);
    List<SharedCurve.Use> uses = places.stream().map(SharedCurves.PlaceOfCurve::use).toList();
    double low = up ? start - before : end - after;
    double high = up ? end + after : start + before;
    Outline whole = Families.template(host).orElseThrow().plate();
    Bounds box = whole.bounds();
    Region cut =
        Overlay.intersection(
            Region.of(whole),
            Region.of(
                Outline.of(Loop.rectangle(new Bounds(low, box.minY() - 1, high, box.maxY() + 1)))));
    Outline plate = cut.pieces().get(0);
    List<Registration> lines = new ArrayList<>();
    double left = Math.min(start, end);
    double right = Math.max(start, end);
    line(lines, plate, Registration.Kind.END, left, "curve begins");
    line(lines, plate, Registration.Kind.END, right, "curve ends");
    line(lines, plate, Registration.Kind.STOP, (low + left) / 2, "stop");
    line(lines, plate, Registration.Kind.STOP, (high + right) / 2, "stop");
    return new SharedCurve(
        host.part().name(), uses, plate, lines, Families.TOLERANCE, sentences(uses));
  }

  /** The straight edge kept on one side: the run-out, or all there is between two curves. */
  private double straight(int which) {
    double runOut = host.settings().runOut();
    boolean atEnd = which == 0 || which == course.size();
    double there = course.straights()[which];
    return Math.min(runOut, atEnd ? there + runOut : there);
  }

  private void line(
      List<Registration> lines, Outline plate, Registration.Kind kind, double x, String label) {
    Crossing.atX(plate.outer(), x)
        .ifPresent(
            (Line at) ->
                lines.add(new Registration(host.part().name(), kind, at.start(), at.end(), label)));
  }

  private List<String> sentences(List<SharedCurve.Use> uses) {
    Map<String, List<SharedCurve.Use>> byPart = new LinkedHashMap<>();
    for (SharedCurve.Use use : uses) {
      byPart.computeIfAbsent(use.part(), name -> new ArrayList<>()).add(use);
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "One curve stands in "
            + String.join(", ", byPart.keySet())
            + ", "
            + uses.size()
            + " times in all.");
    byPart.forEach((name, places) -> sentences.add(name + ": " + places(places)));
    sentences.add(
        "Rout from stop line to stop line and lift the router clear there; join the places along"
            + " their straights with a straight edge.");
    return sentences;
  }

  private String places(List<SharedCurve.Use> places) {
    List<String> words = new ArrayList<>();
    Setting.Lay before = null;
    for (SharedCurve.Use use : places) {
      String lay = use.setting().lay().words();
      boolean same = use.setting().lay() == before;
      words.add(
          (same ? "" : lay + ", ")
              + Length.print(use.fromEnd(), units)
              + " and "
              + Length.print(use.fromBack(), units));
      before = use.setting().lay();
    }
    return "the curve begins, from the left end and from the back, "
        + String.join("; ", words)
        + ".";
  }
}
