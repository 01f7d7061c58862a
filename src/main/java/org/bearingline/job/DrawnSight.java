package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.export.svg.ScreenDrawing;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.CleaningReport;
import org.bearingline.outside.clean.DrawnPaths;
import org.bearingline.outside.clean.Fault;
import org.bearingline.problem.Problem;

/** Shows a part's drawing as it was drawn, with the places that the report of cleaning names. */
final class DrawnSight {

  /** Faults that get a number; more would cover the drawing. */
  private static final int MOST_FAULTS = 40;

  /** Closed gaps that are shown, the largest first. */
  private static final int MOST_GAPS = 20;

  /** mm that only computing moves. */
  private static final double UNMOVED = 1e-6;

  /** Share of the drawing, and mm, that are looked at round a fault. */
  private static final double FAULT_SHARE = 1 / 40.0;

  private static final double FAULT_REACH = 3;

  private static final List<String> UNITS = List.of("mm", "cm", "in", "px", "pt");

  private final Units units;
  private final List<DrawnLayer> layers;
  private final List<DrawnView.PlaceView> places = new ArrayList<>();

  private DrawnSight(Units units, List<DrawnLayer> layers) {
    this.units = units;
    this.layers = layers;
  }

  /** Of a drawing that a part was made of. */
  static DrawnView sound(DrawnDesign design, List<DrawnLayer> layers, Units units) {
    Bounds box = design.cleaned().outlines().get(0).bounds();
    return new DrawnSight(units, layers)
        .cleaned(
            design.cleaned(),
            Similarity.translation(-box.minX(), -box.minY()),
            DrawnWords.section(design, units).lines());
  }

  /**
   * Of a drawing that no part can be made of.
   *
   * @throws Problem where its file cannot be read or shows no line
   */
  static DrawnView refused(
      WrittenFile file, DrawnWishes wishes, List<DrawnLayer> layers, Units units) {
    DrawnSight sight = new DrawnSight(units, layers);
    try {
      CleanedOutline cleaned = cleaned(file, wishes);
      List<String> words = cleaned.report().notes();
      return sight.cleaned(cleaned, Similarity.identity(), words);
    } catch (Problem refused) {
      // Told by whoever asked for the part; here the drawing is shown as its file has it.
      return sight.bare(file, wishes);
    }
  }

  // Where the outline asked for cannot be taken, all of them are shown to choose from.
  private static CleanedOutline cleaned(WrittenFile file, DrawnWishes wishes) {
    try {
      return Drawings.cleaned(file, wishes, told -> {});
    } catch (Problem refused) {
      if (wishes.outline().isEmpty()) {
        throw refused;
      }
      return Drawings.cleaned(file, wishes.ofAllOutlines(), told -> {});
    }
  }

  private DrawnView bare(WrittenFile file, DrawnWishes wishes) {
    Optional<String> layer =
        wishes.layer().filter(name -> layers.stream().anyMatch(one -> one.name().equals(name)));
    Sketch sketch = Drawings.sketch(file, new ReadingSettings(layer, wishes.unit()));
    List<Path> drawn = DrawnPaths.of(sketch);
    Bounds box = box(drawn);
    return view(false, box, drawn, List.of(), 0, List.of(), false, unitsOf(file, sketch, layer));
  }

  private List<DrawnView.UnitView> unitsOf(
      WrittenFile file, Sketch sketch, Optional<String> layer) {
    List<DrawnView.UnitView> choices = new ArrayList<>();
    if (sketch.sized()) {
      return choices;
    }
    for (String unit : UNITS) {
      OptionalDouble mm = OptionalDouble.of(DrawnWishes.unitOf(unit));
      Bounds box = box(DrawnPaths.of(Drawings.sketch(file, new ReadingSettings(layer, mm))));
      choices.add(
          new DrawnView.UnitView(
              unit, Length.print(box.width(), units) + " × " + Length.print(box.height(), units)));
    }
    return choices;
  }

  private DrawnView cleaned(CleanedOutline cleaned, Similarity placed, List<String> words) {
    CleaningReport report = cleaned.report();
    List<Path> drawn =
        DrawnPaths.fine(cleaned.drawn()).stream().map(path -> path.transformed(placed)).toList();
    Bounds box = box(drawn);
    boolean isSound = report.faults().isEmpty();
    boolean one = isSound && cleaned.outlines().size() == 1;
    if (!isSound) {
      faults(cleaned, placed, Math.max(FAULT_REACH, size(box) * FAULT_SHARE));
    } else if (!one) {
      outlines(cleaned, placed);
    }
    gaps(cleaned, placed);
    if (one && report.largestMove() > UNMOVED) {
      String far = DrawnWords.thousandths(report.largestMove(), units);
      Point at = report.largestMoveAt();
      place("move", placed.apply(at), moved(far), 8 * report.largestMove());
    }
    List<Path> clean = new ArrayList<>(cleaned.open());
    for (Outline outline : cleaned.outlines()) {
      outline.loops().forEach(loop -> clean.add(Path.of(loop)));
    }
    return view(
        one,
        box,
        drawn,
        clean.stream().map(path -> path.transformed(placed)).toList(),
        Math.max(0, (isSound ? cleaned.outlines().size() : report.faults().size()) - MOST_FAULTS),
        words,
        cleaned.canUnite(),
        List.of());
  }

  private static String moved(String far) {
    return "here the clean line lies furthest from the drawn one, by " + far;
  }

  private void faults(CleanedOutline cleaned, Similarity placed, double reach) {
    for (Fault fault : cleaned.report().faults().stream().limit(MOST_FAULTS).toList()) {
      place("fault", placed.apply(fault.at()), fault.sentence(cleaned.drawn()), reach);
    }
  }

  private void outlines(CleanedOutline cleaned, Similarity placed) {
    for (Outline outline : cleaned.outlines().stream().limit(MOST_FAULTS).toList()) {
      Bounds box = outline.bounds();
      place(
          "outline",
          placed.apply(RoomyPlace.in(outline)),
          "an outline of "
              + Words.small(box.width(), units)
              + " × "
              + Words.small(box.height(), units)
              + " round "
              + cleaned.drawn().place(box.center()),
          size(box));
    }
  }

  private void gaps(CleanedOutline cleaned, Similarity placed) {
    CleaningReport report = cleaned.report();
    double largest = report.gaps().largest();
    List<Point> all = report.gaps().places().stream().limit(MOST_GAPS).toList();
    for (int i = 0; i < all.size(); i++) {
      String size =
          all.size() == 1
              ? ", of " + DrawnWords.thousandths(largest, units)
              : i == 0 ? ", the largest, of " + DrawnWords.thousandths(largest, units) : "";
      place(
          "gap",
          placed.apply(all.get(i)),
          "a gap was closed at " + cleaned.drawn().place(all.get(i)) + size,
          Math.max(0.2, 8 * largest));
    }
  }

  private void place(String kind, Point at, String words, double reach) {
    places.add(new DrawnView.PlaceView(places.size() + 1, kind, at.x(), -at.y(), words, reach));
  }

  private DrawnView view(
      boolean sound,
      Bounds box,
      List<Path> drawn,
      List<Path> clean,
      int more,
      List<String> words,
      boolean unites,
      List<DrawnView.UnitView> choices) {
    return new DrawnView(
        sound,
        ScreenDrawing.Box.of(box),
        ScreenDrawing.pathData(drawn),
        ScreenDrawing.pathData(clean),
        List.copyOf(places),
        more,
        words,
        layers,
        unites,
        choices);
  }

  private static double size(Bounds box) {
    return Math.max(box.width(), box.height());
  }

  private static Bounds box(List<Path> paths) {
    return paths.stream().map(Path::bounds).reduce(Bounds::union).orElseThrow();
  }
}
