package org.bearingline.outside.svg;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bearingline.outside.Tally;

/** Looks through a whole drawing once: finds ids and style sheets, counts what is not read. */
final class Ignored {

  /** Read, or hold nothing that could be seen. */
  private static final Set<String> SILENT =
      Set.of(
          "svg",
          "g",
          "a",
          "switch",
          "use",
          "symbol",
          "defs",
          "style",
          "title",
          "desc",
          "metadata",
          "view",
          "");

  /** Words for one and for many, where the element's own name is no word of a maker. */
  private static final Map<String, List<String>> WORDS =
      Map.ofEntries(
          Map.entry("text", List.of("text", "texts")),
          Map.entry("image", List.of("image", "images")),
          Map.entry("clipPath", List.of("clip", "clips")),
          Map.entry("mask", List.of("mask", "masks")),
          Map.entry("filter", List.of("filter", "filters")),
          Map.entry("linearGradient", List.of("gradient", "gradients")),
          Map.entry("radialGradient", List.of("gradient", "gradients")),
          Map.entry("pattern", List.of("pattern", "patterns")),
          Map.entry("marker", List.of("marker", "markers")),
          Map.entry("script", List.of("script", "scripts")),
          Map.entry("foreignObject", List.of("piece of a page", "pieces of pages")),
          Map.entry("animate", List.of("animation", "animations")),
          Map.entry("animateColor", List.of("animation", "animations")),
          Map.entry("animateMotion", List.of("animation", "animations")),
          Map.entry("animateTransform", List.of("animation", "animations")),
          Map.entry("set", List.of("animation", "animations")),
          Map.entry("font", List.of("font", "fonts")));

  private Ignored() {}

  static void count(
      SvgElement element, Map<String, SvgElement> byId, List<SvgElement> sheets, Tally ignored) {
    element.id().ifPresent(id -> byId.putIfAbsent(id, element));
    if (element.isA("style")) {
      sheets.add(element);
    }
    for (SvgElement child : element.children()) {
      if (isRead(child)) {
        count(child, byId, sheets, ignored);
      } else {
        // Copies may be taken of what lies in a clip or pattern, too.
        nameInside(child, byId);
        List<String> words =
            WORDS.getOrDefault(
                child.name(),
                List.of("element “" + child.name() + "”", "elements “" + child.name() + "”"));
        ignored.add(words.get(0), words.get(1));
      }
    }
  }

  private static void nameInside(SvgElement element, Map<String, SvgElement> byId) {
    element.id().ifPresent(id -> byId.putIfAbsent(id, element));
    element.children().forEach(child -> nameInside(child, byId));
  }

  private static boolean isRead(SvgElement element) {
    return SILENT.contains(element.name()) || ShapeStrokes.SHAPES.contains(element.name());
  }
}
