package org.bearingline.outside.svg;

import static org.bearingline.outside.svg.SvgLength.Of.HEIGHT;
import static org.bearingline.outside.svg.SvgLength.Of.WIDTH;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.outline.Bounds;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.outside.DrawnLayer;
import org.bearingline.outside.Figure;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.Tally;
import org.bearingline.problem.Place;

/** Walks over all that a drawing shows, copies too, and draws its shapes. */
final class SvgWalk {

  private final Map<String, SvgElement> byId;
  private final StyleRules rules;
  private final Optional<String> layer;
  private final Tally ignored;
  private final DrawingLimits limits = new DrawingLimits();
  private final Optional<Bounds> page;
  private final List<Figure> figures = new ArrayList<>();

  /** The white rectangle behind all else; null where there is none. */
  private Figure background;

  /** The elements that are being copied, so that none is copied into itself. */
  private final Set<SvgElement> copying = new HashSet<>();

  private boolean sawLayer;

  /** The names of the groups that the walk is in. */
  private final Deque<String> groups = new ArrayDeque<>();

  private final DrawnLayer.Count drawnOn = new DrawnLayer.Count();

  /**
   * @param page what the drawing's frame shows, in the sketch's coordinates; empty where it has
   *     none
   */
  SvgWalk(
      Map<String, SvgElement> byId,
      StyleRules rules,
      Optional<Bounds> page,
      Optional<String> layer,
      Tally ignored) {
    this.byId = byId;
    this.rules = rules;
    this.page = page;
    this.layer = layer;
    this.ignored = ignored;
  }

  /**
   * What holds at one place of the walk.
   *
   * @param map to the sketch
   * @param viewport what percentages are of
   * @param style handed down
   * @param isChosen whether it lies on the layer asked for
   * @param depth how many elements it lies in, copies counted
   */
  private record Setting(Affine map, Viewport viewport, Style style, boolean isChosen, int depth) {

    Setting mapped(Affine inner, Viewport inside, Place place) {
      return new Setting(DrawingLimits.near(map.of(inner), place), inside, style, isChosen, depth);
    }
  }

  /** All that was drawn; a page's background only where there is nothing else. */
  List<Figure> figures() {
    return figures.isEmpty() && background != null ? List.of(background) : figures;
  }

  /** Whether the layer asked for was met. */
  boolean sawLayer() {
    return sawLayer;
  }

  /** The named groups that show a line, each with all that lies in it, in the order of the walk. */
  List<DrawnLayer> layers() {
    return drawnOn.layers();
  }

  /** Walks over the whole drawing. */
  void root(SvgElement root, Affine map, Viewport viewport) {
    Setting setting = new Setting(map, viewport, Style.INITIAL, layer.isEmpty(), 0);
    entered(root, setting).ifPresent(inside -> children(root, inside));
    if (background != null && !figures.isEmpty()) {
      ignored.add("white background as large as the page", "white backgrounds");
    }
  }

  private void children(SvgElement element, Setting inside) {
    for (SvgElement child : element.children()) {
      walk(child, inside);
    }
  }

  /** The setting inside an element, its style and transform worked in; empty where it is absent. */
  private Optional<Setting> entered(SvgElement element, Setting outside) {
    count(element);
    if (outside.depth() > DrawingLimits.DEEPEST) {
      throw element.problem("copies of copies lie too deep in each other here; ungroup them");
    }
    Map<String, String> declared = rules.declared(element, limits, isCopying());
    if (Style.isAbsent(declared)) {
      ignored.add("hidden element", "hidden elements");
      return Optional.empty();
    }
    if (outside.depth() > 0) {
      StyleRules.requireUnshaped(element, declared);
    }
    return Optional.of(
        new Setting(
            DrawingLimits.near(outside.map().of(Transforms.of(element)), element.place()),
            outside.viewport(),
            outside.style().with(declared),
            outside.isChosen() || isLayer(element),
            outside.depth() + 1));
  }

  private void count(SvgElement element) {
    limits.addElement(element.place());
    if (isCopying()) {
      limits.addLetters(element.letters(), element.place());
    }
  }

  private boolean isCopying() {
    return !copying.isEmpty();
  }

  private boolean isLayer(SvgElement element) {
    boolean isIt =
        layer.isPresent()
            && element.isA("g")
            && (layer.equals(element.id()) || layer.equals(element.attribute("label")));
    sawLayer |= isIt;
    return isIt;
  }

  private void walk(SvgElement element, Setting outside) {
    switch (element.name()) {
      case "g", "a" -> entered(element, outside).ifPresent(inside -> group(element, inside));
      case "svg" ->
          entered(element, outside)
              .ifPresent(
                  inside ->
                      viewport(
                          element, element, inside, whole(inside, true), whole(inside, false)));
      case "switch" ->
          entered(element, outside)
              .ifPresent(inside -> firstThatHolds(element).ifPresent(child -> walk(child, inside)));
      case "use" -> entered(element, outside).ifPresent(inside -> copy(element, inside));
      default -> {
        if (ShapeStrokes.SHAPES.contains(element.name())) {
          entered(element, outside).ifPresent(inside -> shape(element, inside));
        } else {
          count(element);
        }
      }
    }
  }

  private Optional<SvgElement> firstThatHolds(SvgElement element) {
    for (SvgElement child : element.children()) {
      count(child);
      if (Conditions.hold(child)) {
        return Optional.of(child);
      }
    }
    return Optional.empty();
  }

  private void group(SvgElement element, Setting inside) {
    Optional<String> name =
        element.isA("g")
            ? element.attribute("label").filter(label -> !label.isEmpty()).or(element::id)
            : Optional.empty();
    name.ifPresent(groups::addLast);
    children(element, inside);
    name.ifPresent(one -> groups.removeLast());
  }

  private static double whole(Setting setting, boolean across) {
    return across ? setting.viewport().width() : setting.viewport().height();
  }

  /** An inner drawing in its own frame; {@code sized} says where the frame's size is written. */
  private void viewport(
      SvgElement inner, SvgElement sized, Setting setting, double width, double height) {
    double x = inner.isA("svg") ? SvgLength.readOr0(inner, "x", WIDTH, setting.viewport()) : 0;
    double y = inner.isA("svg") ? SvgLength.readOr0(inner, "y", HEIGHT, setting.viewport()) : 0;
    double across =
        SvgLength.read(sized, "width", WIDTH, setting.viewport())
            .or(() -> SvgLength.read(inner, "width", WIDTH, setting.viewport()))
            .orElse(width);
    double up =
        SvgLength.read(sized, "height", HEIGHT, setting.viewport())
            .or(() -> SvgLength.read(inner, "height", HEIGHT, setting.viewport()))
            .orElse(height);
    Affine place = Affine.translation(x, y);
    Optional<ViewBox> box = ViewBox.of(inner);
    if (across <= 0 || up <= 0 || box.filter(ViewBox::isEmpty).isPresent()) {
      ignored.add("drawing in a frame without area", "drawings in frames without area");
      return;
    }
    if (box.isEmpty()) {
      children(inner, setting.mapped(place, new Viewport(across, up), inner.place()));
      return;
    }
    if (Double.isNaN(across + up)) {
      throw inner.problem(
          "the size of this " + inner.name() + " follows from nothing; give it width and height");
    }
    children(
        inner,
        setting.mapped(
            place.of(box.get().into(across, up, inner)),
            new Viewport(box.get().width(), box.get().height()),
            inner.place()));
  }

  private void copy(SvgElement use, Setting setting) {
    String reference = use.attribute("href").orElse("");
    if (reference.isEmpty()) {
      return;
    }
    if (!reference.startsWith("#")) {
      throw use.problem(
          "this use takes its lines from outside the file, which is never read; copy them into the"
              + " drawing");
    }
    SvgElement original = byId.get(reference.substring(1));
    if (original == null) {
      ignored.add("copy of nothing", "copies of nothing");
      return;
    }
    if (!copying.add(original)) {
      throw use.problem("this use copies what it lies in, without end; remove it");
    }
    double x = SvgLength.readOr0(use, "x", WIDTH, setting.viewport());
    double y = SvgLength.readOr0(use, "y", HEIGHT, setting.viewport());
    Setting moved = setting.mapped(Affine.translation(x, y), setting.viewport(), use.place());
    if (original.isA("symbol") || original.isA("svg")) {
      entered(original, moved)
          .ifPresent(
              inside -> viewport(original, use, inside, whole(inside, true), whole(inside, false)));
    } else {
      walk(original, moved);
    }
    copying.remove(original);
  }

  private void shape(SvgElement element, Setting setting) {
    if (!setting.isChosen()) {
      ignored.add("shape on another layer", "shapes on other layers");
      return;
    }
    if (!setting.style().isVisible()) {
      ignored.add("hidden element", "hidden elements");
      return;
    }
    if (!setting.style().isPainted()) {
      ignored.add("shape without fill and stroke", "shapes without fill and stroke");
      return;
    }
    boolean isOnlyFilled = setting.style().isFilled() && !setting.style().isStroked();
    List<Stroke> strokes =
        ShapeStrokes.of(element, setting.viewport(), setting.map(), isOnlyFilled, limits);
    if (strokes.isEmpty()) {
      return;
    }
    Figure figure =
        new Figure(strokes, setting.style().loops(), setting.style().isArea(), element.source());
    boolean isBehindAll = figures.isEmpty() && background == null;
    if (isBehindAll && PageBackground.isOne(element, setting.style(), strokes, page)) {
      background = figure;
    } else {
      figures.add(figure);
      groups.forEach(drawnOn::add);
    }
  }
}
