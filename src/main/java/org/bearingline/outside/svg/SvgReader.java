package org.bearingline.outside.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Tally;
import org.bearingline.outside.svg.SvgLength.Unit;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads the outlines of an SVG drawing. */
public final class SvgReader {

  private static final double MM_PER_PX = 25.4 / SvgLength.PX_PER_INCH;

  private SvgReader() {}

  /**
   * Everything that can be seen and is a line, y upwards; in mm where the root element has a real
   * unit (mm, cm, in, pt or pc) or the settings give another, else in the drawing's own units.
   *
   * @param file as the user named it, for messages
   * @param bytes the whole file, uncompressed
   * @throws Problem where the file is no SVG, damaged, too large, or shows no line
   */
  public static Sketch read(String file, byte[] bytes, ReadingSettings settings) {
    return walked(file, bytes, settings).sketch();
  }

  /**
   * The groups with a label or an id that show a line: what may be asked for as a layer. Empty
   * where nothing can be seen.
   *
   * @throws Problem where the file cannot be read
   */
  public static List<DrawnLayer> layers(String file, byte[] bytes) {
    return walked(file, bytes, ReadingSettings.USUAL).walk().layers();
  }

  /** What was met, before it is asked whether that is enough. */
  private record Walked(
      String file, ReadingSettings settings, SvgWalk walk, Canvas canvas, Tally ignored) {

    Sketch sketch() {
      if (walk.figures().isEmpty()) {
        throw empty(file, settings.layer(), walk, ignored);
      }
      return new Sketch(
          file,
          walk.figures(),
          canvas.sized(),
          OptionalDouble.empty(),
          ignored.phrases(),
          Optional.of(canvas.map().inverse()));
    }
  }

  private static Walked walked(String file, byte[] bytes, ReadingSettings settings) {
    SvgFile.Content content = SvgFile.read(file, bytes);
    SvgElement root = content.root();
    Tally ignored = new Tally();
    if (content.sheetsOutside() > 0) {
      ignored.add(StyleSheetReader.OUTSIDE, StyleSheetReader.OUTSIDE_MANY, content.sheetsOutside());
    }
    Map<String, SvgElement> byId = new HashMap<>();
    List<SvgElement> sheets = new ArrayList<>();
    Ignored.count(root, byId, sheets, ignored);
    Canvas canvas = canvas(root, settings.unit());
    SvgWalk walk =
        new SvgWalk(
            byId, StyleRules.of(sheets, ignored), canvas.page(root), settings.layer(), ignored);
    walk.root(root, canvas.map(), canvas.viewport());
    return new Walked(file, settings, walk, canvas, ignored);
  }

  /**
   * How the outermost coordinates become the sketch's.
   *
   * @param map with y turned up
   * @param viewport in the root's user units
   * @param sized whether the map gives mm
   */
  private record Canvas(Affine map, Viewport viewport, boolean sized) {

    /** What the frame shows, in the sketch's coordinates; empty where there is no frame. */
    Optional<Bounds> page(SvgElement root) {
      double x = ViewBox.of(root).map(ViewBox::x).orElse(0.0);
      double y = ViewBox.of(root).map(ViewBox::y).orElse(0.0);
      if (Double.isNaN(viewport.width() + viewport.height())) {
        return Optional.empty();
      }
      Bounds near = Bounds.of(map.apply(x, y));
      return Optional.of(
          near.union(Bounds.of(map.apply(x + viewport.width(), y + viewport.height()))));
    }
  }

  private static Canvas canvas(SvgElement root, OptionalDouble unit) {
    Optional<ViewBox> box = ViewBox.of(root);
    if (box.filter(ViewBox::isEmpty).isPresent()) {
      throw root.problem(
          "the viewBox of this drawing has no area, so nothing of it shows; correct or remove it");
    }
    // Who says what a unit of the drawing is outdoes the frame that it is shown in.
    boolean isTold = unit.isPresent() && box.isPresent();
    Optional<SvgLength> width = isTold ? Optional.empty() : side(root, "width");
    Optional<SvgLength> height = isTold ? Optional.empty() : side(root, "height");
    boolean isReal = isReal(width) || isReal(height);
    double viewWidth = size(width, box.map(ViewBox::width));
    double viewHeight = size(height, box.map(ViewBox::height));
    if (isReal && box.isPresent()) {
      // One real side gives the other by the box's proportions.
      double aspect = box.get().height() / box.get().width();
      viewWidth = isReal(width) ? viewWidth : viewHeight / aspect;
      viewHeight = isReal(height) ? viewHeight : viewWidth * aspect;
    }
    boolean hasSize = viewWidth > 0 && viewHeight > 0;
    Affine inner =
        box.isPresent() && hasSize ? box.get().into(viewWidth, viewHeight, root) : Affine.IDENTITY;
    Viewport viewport =
        box.map(view -> new Viewport(view.width(), view.height()))
            .orElse(hasSize ? new Viewport(viewWidth, viewHeight) : Viewport.UNKNOWN);
    double scale = unit.orElse(isReal ? MM_PER_PX : 1);
    return new Canvas(
        Affine.scaling(scale, -scale).of(inner), viewport, isReal || unit.isPresent());
  }

  private static Optional<SvgLength> side(SvgElement root, String attribute) {
    Optional<SvgLength> side = root.attribute(attribute).flatMap(SvgLength::find);
    side.ifPresent(length -> length.requireNear(root, attribute));
    return side;
  }

  private static boolean isReal(Optional<SvgLength> length) {
    return length.filter(one -> one.unit().isReal() && one.px() > 0).isPresent();
  }

  /** In px; a size that is none, or is measured by the window or by text, is the box's. */
  private static double size(Optional<SvgLength> given, Optional<Double> box) {
    return given
        .filter(one -> one.unit() != Unit.PERCENT && one.px() > 0)
        .map(SvgLength::px)
        .or(() -> box)
        .orElse(Double.NaN);
  }

  private static Problem empty(String file, Optional<String> layer, SvgWalk walk, Tally ignored) {
    if (layer.isPresent() && !walk.sawLayer()) {
      return new Problem(
          Place.option("--layer"),
          file + " has no group that shows with the id or label “" + layer.get() + "”");
    }
    List<String> left = ignored.phrases();
    return new Problem(
        Place.file(file),
        "the drawing shows no line that could be an edge"
            + (left.isEmpty() ? "" : ", only " + String.join(", ", left))
            + "; draw the part as a path or shape, or turn texts into paths");
  }
}
