package org.bearingline.job;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What the maker says of a drawn outline; empty where nothing was said. Lengths in mm.
 *
 * @param width of the whole drawing
 * @param height of the whole drawing
 * @param unit that one unit of the drawing stands for
 * @param tolerance how far the clean line may lie from the drawn one
 * @param gap over which loose ends are joined
 * @param drillUpTo largest diameter of a round opening that is drilled and not routed
 * @param layer the one layer to take
 * @param outline which of several separate outlines is the part, from 1, the largest
 * @param symmetric {@code left-right} or {@code top-bottom}, as written
 * @param unite whether filled shapes that lie over each other become one
 * @param sawnEdges sides of the part that the saw makes, as written
 */
public record DrawnWishes(
    OptionalDouble width,
    OptionalDouble height,
    OptionalDouble unit,
    OptionalDouble tolerance,
    OptionalDouble gap,
    OptionalDouble drillUpTo,
    Optional<String> layer,
    OptionalInt outline,
    Optional<String> symmetric,
    boolean unite,
    List<String> sawnEdges) {

  /** Nothing said. */
  public static final DrawnWishes NONE =
      new DrawnWishes(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          false,
          List.of());

  public DrawnWishes {
    Objects.requireNonNull(layer);
    Objects.requireNonNull(outline);
    Objects.requireNonNull(symmetric);
    sawnEdges = List.copyOf(sawnEdges);
  }

  /**
   * mm of a unit as written: {@code mm}, {@code in}, a length such as {@code 0.1mm}, or the small
   * units of CSS, {@code px} of which 96 and {@code pt} of which 72 are an inch.
   */
  public static double unitOf(String text) {
    String stripped = text.strip();
    if (stripped.equalsIgnoreCase("px") || stripped.equalsIgnoreCase("pt")) {
      return 25.4 / (stripped.equalsIgnoreCase("px") ? 96 : 72);
    }
    boolean isWord = !stripped.isEmpty() && Character.isLetter(stripped.charAt(0));
    double mm;
    try {
      mm = Length.parse(isWord ? "1" + stripped : stripped);
    } catch (Problem unread) {
      throw new Problem(
          Place.option("--drawn-in"),
          "“"
              + stripped
              + "” is no unit; write mm, cm, m, in, ft, px (96 to the inch) or pt (72 to the inch)",
          unread);
    }
    if (!(mm > 0)) {
      throw new Problem(Place.option("--drawn-in"), "one unit of a drawing is more than 0");
    }
    return mm;
  }

  /** The number of an outline as written, from 1. */
  public static int outlineOf(String text) {
    try {
      int number = Integer.parseInt(text.strip());
      if (number >= 1) {
        return number;
      }
    } catch (NumberFormatException notWhole) {
      // Refused below, like a number out of range.
    }
    throw new Problem(
        Place.option("--outline"),
        "“"
            + text.strip()
            + "” is no number of an outline; write 1 for the largest, 2 for the next");
  }

  /** The same, with no outline chosen. */
  DrawnWishes ofAllOutlines() {
    return new DrawnWishes(
        width,
        height,
        unit,
        tolerance,
        gap,
        drillUpTo,
        layer,
        OptionalInt.empty(),
        symmetric,
        unite,
        sawnEdges);
  }

  /** Sides as written, such as {@code bottom,left}. */
  public static List<String> sidesOf(String text) {
    if (text.isEmpty()) {
      return List.of();
    }
    return Arrays.stream(text.split(",")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  /** These wishes, and where they are silent the more general ones. */
  DrawnWishes over(DrawnWishes general) {
    return new DrawnWishes(
        first(width, general.width),
        first(height, general.height),
        first(unit, general.unit),
        first(tolerance, general.tolerance),
        first(gap, general.gap),
        first(drillUpTo, general.drillUpTo),
        layer.or(() -> general.layer),
        outline.isPresent() ? outline : general.outline,
        symmetric.or(() -> general.symmetric),
        unite || general.unite,
        sawnEdges.isEmpty() ? general.sawnEdges : sawnEdges);
  }

  private static OptionalDouble first(OptionalDouble own, OptionalDouble general) {
    return own.isPresent() ? own : general;
  }

  /**
   * The option of a wish that only a drawing can meet and no picture; empty where none was said.
   */
  Optional<String> ofDrawingOnly() {
    if (unit.isPresent()) {
      return Optional.of("--drawn-in");
    }
    if (layer.isPresent()) {
      return Optional.of("--layer");
    }
    return outline.isPresent()
        ? Optional.of("--outline")
        : Optional.of("--unite").filter(option -> unite);
  }

  /** The option or field of something that was said; empty where nothing was. */
  Optional<String> saidFirst() {
    Map<String, Boolean> said = new LinkedHashMap<>();
    said.put("width", width.isPresent());
    said.put("height", height.isPresent());
    said.put("drawn-in", unit.isPresent());
    said.put("tolerance", tolerance.isPresent());
    said.put("gap", gap.isPresent());
    said.put("drill-up-to", drillUpTo.isPresent());
    said.put("layer", layer.isPresent());
    said.put("outline", outline.isPresent());
    said.put("symmetric", symmetric.isPresent());
    said.put("unite", unite);
    said.put("sawn-edges", !sawnEdges.isEmpty());
    for (Map.Entry<String, Boolean> one : said.entrySet()) {
      if (one.getValue()) {
        return Optional.of(one.getKey());
      }
    }
    return Optional.empty();
  }
}
