package org.bearingline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.job.DrawnWishes;
import picocli.CommandLine.Option;

/** How a drawing becomes a part, and with {@code keep} a picture. */
final class DrawingOptions {

  @Option(
      names = "--width",
      paramLabel = "LENGTH",
      description = "of a drawing or picture: its whole width; alone it keeps the proportions")
  String width;

  @Option(
      names = "--height",
      paramLabel = "LENGTH",
      description = "of a drawing or picture: its whole height; alone it keeps the proportions")
  String height;

  @Option(
      names = "--drawn-in",
      paramLabel = "UNIT",
      description =
          "of a drawing: what one unit of it is, as in mm, in, px or pt (default: its own word)")
  String unit;

  @Option(
      names = "--tolerance",
      paramLabel = "LENGTH",
      description =
          "how far the clean line may lie from the drawn one (default: 0.02mm), or from the one"
              + " traced in a picture (default: 0.1mm)")
  String tolerance;

  @Option(
      names = "--gap",
      paramLabel = "LENGTH",
      description = "of a drawing: over which loose ends are joined (default: 0.1mm)")
  String gap;

  @Option(
      names = "--drill-up-to",
      paramLabel = "DIAMETER",
      description =
          "of a drawing or picture: round openings up to this are drilled (default: 1/2in)")
  String drillUpTo;

  @Option(
      names = "--layer",
      paramLabel = "NAME",
      description = "of a drawing: take this layer or group alone")
  String layer;

  @Option(
      names = "--outline",
      paramLabel = "N",
      description =
          "of a drawing with separate outlines: take this one alone, 1 being the largest;"
              + " --width and --height are still those of the whole drawing")
  String outline;

  @Option(
      names = "--symmetric",
      paramLabel = "HOW",
      description =
          "of a drawing or picture: make it its own mirror image, left-right or top-bottom")
  String symmetric;

  @Option(
      names = "--unite",
      description =
          "of a drawing: make one outline of filled shapes that lie over or against each other")
  boolean unite;

  @Option(
      names = "--sawn-edges",
      paramLabel = "SIDES",
      description =
          "of a drawing or picture: straight edges on these sides are sawn, not routed, as in"
              + " bottom,left")
  List<String> sawnEdges = new ArrayList<>();

  DrawnWishes wishes() {
    return new DrawnWishes(
        OptionText.length("--width", width),
        OptionText.length("--height", height),
        unit == null ? OptionalDouble.empty() : OptionalDouble.of(DrawnWishes.unitOf(unit)),
        OptionText.length("--tolerance", tolerance),
        OptionText.length("--gap", gap),
        OptionText.length("--drill-up-to", drillUpTo),
        Optional.ofNullable(layer),
        outline == null ? OptionalInt.empty() : OptionalInt.of(DrawnWishes.outlineOf(outline)),
        Optional.ofNullable(symmetric),
        unite,
        DrawnWishes.sidesOf(String.join(",", sawnEdges)));
  }
}
