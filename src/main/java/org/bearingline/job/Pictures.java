package org.bearingline.job;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.scan.PictureFile;
import org.bearingline.outside.scan.Scan;
import org.bearingline.outside.scan.ScanReader;
import org.bearingline.outside.scan.ScanSettings;
import org.bearingline.outside.scan.Upright;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Reads a photo or scan of a template, sets it upright and cleans it. */
final class Pictures {

  /** A straight edge shorter than this share of the whole edge says nothing of what is upright. */
  private static final double TELLING = 0.08;

  private Pictures() {}

  /**
   * @param cleaned the template's edge as lines and arcs, and as traced
   * @param lines for a person: what was done and what to mind
   */
  record Kept(CleanedOutline cleaned, List<String> lines) {}

  static Kept cleaned(
      String source, PictureWishes picture, DrawnWishes drawn, Consumer<String> progress) {
    return cleaned(source, PictureFile.read(path(source)), picture, drawn, progress);
  }

  /** The same of a picture whose bytes are at hand; its name stands in messages. */
  static Kept cleaned(
      String name,
      byte[] content,
      PictureWishes picture,
      DrawnWishes drawn,
      Consumer<String> progress) {
    double tolerance = drawn.tolerance().orElse(ScanSettings.DEFAULT_TOLERANCE);
    DrawnWishes wishes = within(tolerance, drawn);
    Scan scan = ScanReader.read(name, content, picture.settings().withTolerance(tolerance));
    List<String> lines = new ArrayList<>();
    scan.notes().forEach(note -> lines.add("  " + note));
    scan.warnings().forEach(warning -> lines.add("  mind: " + warning));
    Sketch sketch = scan.sketch();
    OptionalDouble turn =
        turn(Drawings.cleaned(sketch, within(tolerance, DrawnWishes.NONE), told -> {}));
    if (turn.isPresent()) {
      sketch = Upright.turned(sketch, turn.getAsDouble());
      if (Math.abs(turn.getAsDouble()) >= 0.05) {
        lines.add(
            "  turned by %.1f°, so that its longest straight edge lies level or upright"
                .formatted(turn.getAsDouble()));
      }
    }
    return new Kept(Drawings.cleaned(sketch, wishes, progress), lines);
  }

  /** The turn that lays the longest straight of the outside level or upright. */
  private static OptionalDouble turn(CleanedOutline traced) {
    if (traced.outlines().isEmpty()) {
      return OptionalDouble.empty();
    }
    Loop outside = traced.outlines().get(0).outer();
    Optional<Line> longest =
        outside.primitives().stream()
            .filter(Line.class::isInstance)
            .map(Line.class::cast)
            .max(Comparator.comparingDouble(Line::length));
    return longest.isEmpty() || longest.get().length() < TELLING * outside.length()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Upright.turn(longest.get().tangentAt(0)));
  }

  private static DrawnWishes within(double tolerance, DrawnWishes wishes) {
    return new DrawnWishes(
        wishes.width(),
        wishes.height(),
        wishes.unit(),
        OptionalDouble.of(tolerance),
        wishes.gap(),
        wishes.drillUpTo(),
        wishes.layer(),
        wishes.outline(),
        wishes.symmetric(),
        wishes.unite(),
        wishes.sawnEdges());
  }

  private static Path path(String source) {
    try {
      return Path.of(source);
    } catch (InvalidPathException impossible) {
      throw new Problem(
          Place.nowhere(), "“" + source + "” cannot be the name of a file", impossible);
    }
  }
}
