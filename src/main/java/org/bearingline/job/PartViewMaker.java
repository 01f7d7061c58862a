package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.Leftover;
import org.bearingline.routing.Overcut;
import org.bearingline.routing.RoutingResult;
import org.bearingline.shape.Design;
import org.bearingline.shape.Measure;
import org.bearingline.shape.MeasuredShape;

/** Puts together what a page shows of one part. */
final class PartViewMaker {

  private final WorkedPart worked;
  private final Units units;

  PartViewMaker(WorkedPart worked) {
    this.worked = worked;
    this.units = Settings.units(worked.order().wishes());
  }

  /**
   * @param shape name of its shape
   * @param set names of the measures that the maker set
   * @param number of the template
   * @param enlargement of the lettering; empty to fit a screen
   */
  PartView view(
      String shape,
      Set<String> set,
      int number,
      OptionalDouble enlargement,
      List<String> warnings) {
    List<Plate> plates = Plate.of(worked);
    Plate plate = chosen(plates, number);
    ScreenDrawing drawing = ScreenDrawing.of(drawing(plate, enlargement), units);
    RoutingResult result = plate.result();
    LayerWords layers = new LayerWords(plate, units);
    return new PartView(
        worked.order().name(),
        plate.title(),
        result.part().about(),
        worked.order().quantity(),
        shape,
        drawing.view(),
        size(worked.result().part().outline(), layers.size()),
        grain(),
        measures(set),
        tool(),
        plates.stream().map(one -> new PartView.PlateView(number(one), one.title())).toList(),
        drawing.layers().stream()
            .map(
                layer ->
                    new PartView.LayerView(
                        layer.id(),
                        layer.title(),
                        layer.role(),
                        layers.of(layer.id()),
                        layer.figures()))
            .toList(),
        result.reach().leftovers().stream().map(this::leftover).toList(),
        result.reach().overcuts().stream().map(this::overcut).toList(),
        words(plates),
        worked.result().cautions(),
        ReachWords.largest(worked.result().largestCutter(), units),
        worked
            .result()
            .proof()
            .map(proof -> LayoutWords.proof(proof.maxDeviation(), units))
            .orElse(null),
        warnings);
  }

  /** The template of that number. */
  static Plate chosen(List<Plate> plates, int number) {
    return plates.stream()
        .filter(plate -> number(plate) == number)
        .findFirst()
        .orElseThrow(
            () -> new Problem(Place.nowhere(), "this part has no template " + number + "; take 1"));
  }

  private static int number(Plate plate) {
    return plate.template().map(template -> template.number()).orElse(1);
  }

  private Double grain() {
    OptionalDouble degrees = worked.order().stock().grain().degrees();
    return degrees.isPresent() ? degrees.getAsDouble() : null;
  }

  private Drawing drawing(Plate plate, OptionalDouble enlargement) {
    return enlargement.isPresent()
        ? plate.screen(units, enlargement.getAsDouble())
        : plate.screen(units);
  }

  private static PartView.Size size(Outline outline, String words) {
    ScreenDrawing.Box box = ScreenDrawing.Box.of(outline.bounds());
    return new PartView.Size(box.x(), box.y(), box.width(), box.height(), words);
  }

  private List<MeasureView> measures(Set<String> set) {
    Design design =
        worked.order().shape() instanceof FramedDesign framed
            ? framed.shape()
            : worked.order().shape();
    if (!(design instanceof MeasuredShape shape)) {
      return List.of();
    }
    Map<String, Double> values = shape.values();
    List<MeasureView> views = new ArrayList<>();
    for (Measure measure : shape.measures()) {
      String name = measure.name();
      views.add(
          MeasureView.of(
              measure,
              shape.settings().get(name),
              values.getOrDefault(name, 0.0),
              set.contains(name)));
    }
    return views;
  }

  private PartView.ToolView tool() {
    Cutter cutter = worked.result().settings().cutter();
    Follower follower = worked.result().settings().follower();
    return new PartView.ToolView(
        Words.tool(worked.result().settings(), units),
        cutter.diameter(),
        Length.print(cutter.diameter(), units),
        follower.kind(),
        follower.diameter(),
        worked.order().wishes().bits().isEmpty());
  }

  private List<WordsView> words(List<Plate> plates) {
    List<WordsView> words = new ArrayList<>();
    Cards.table(worked, units).map(WordsView::of).ifPresent(words::add);
    Cards.sections(worked, plates, units).stream().map(WordsView::of).forEach(words::add);
    return words;
  }

  private PartView.LeftoverView leftover(Leftover left) {
    Point at = left.at();
    return new PartView.LeftoverView(
        left.number(),
        at.x(),
        -at.y(),
        ScreenDrawing.pathData(left.piece()),
        left.kind().word(),
        left.edge(),
        Words.small(left.depth(), units),
        left.depth(),
        left.area(),
        left.insideRadius() == 0 ? "sharp" : Length.print(left.insideRadius(), units),
        ReachWords.leftover(left, units),
        advice(left));
  }

  /** What gets the wood out: a thinner bit where the kit has one that fits, else the hand. */
  private String advice(Leftover left) {
    if (left.insideRadius() == 0) {
      return "a sharp inside corner stays with every bit: pare it by hand";
    }
    double fits = 0;
    for (Bit bit : worked.kit().bits()) {
      if (bit.diameter() <= 2 * left.insideRadius() + 1e-9) {
        fits = Math.max(fits, bit.diameter());
      }
    }
    return fits == 0
        ? "no bit of " + worked.kit().name() + " is thin enough: pare it by hand"
        : "pare it by hand, or take the " + Length.print(fits, units) + " bit";
  }

  private PartView.OvercutView overcut(Overcut over) {
    return new PartView.OvercutView(
        over.at().x(),
        -over.at().y(),
        ScreenDrawing.pathData(over.piece()),
        over.edge(),
        over.depth(),
        over.area(),
        "the bit takes off up to " + Words.small(over.depth(), units) + " of the part here");
  }
}
