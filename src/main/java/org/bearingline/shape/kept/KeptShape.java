package org.bearingline.shape.kept;

import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Cavity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;

/**
 * Writes a part as a shape file: steps of lines and arcs that give its outline back within a
 * millionth of a millimetre, with the measures {@code length} along x and {@code width} along y
 * where straights can give way. Curves stay as they are; a part alike on both sides grows so.
 */
public final class KeptShape {

  /** A longer arc, in degrees, is said by a third point: by ends and radius it would be coarse. */
  private static final double LONGEST_BY_RADIUS = 150;

  /** mm that must be left of a straight. */
  private static final double LEFT = 1;

  private final Part part;
  private final Straights along;
  private final Straights across;
  private final StringBuilder text = new StringBuilder();

  private KeptShape(Part part) {
    this.part = part;
    along = Straights.of(part, true);
    across = Straights.of(part, false);
  }

  /**
   * The file's text.
   *
   * @param part its name is the file's; lower left corner anywhere
   * @param remarks lines of comment at the head
   */
  public static String yaml(Part part, List<String> remarks) {
    KeptShape shape = new KeptShape(part);
    remarks.forEach(remark -> shape.line("# " + remark));
    shape.head();
    shape.outline();
    shape.openings();
    shape.marks();
    return shape.text.toString();
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  private void head() {
    line("name: " + part.name());
    line("about: " + quoted(part.about()));
    line("units: mm");
    if (along.canStretch() || across.canStretch()) {
      line("");
      line("measures:");
      measure(along, "length", "length over all, along x; curves stay, straights stretch");
      measure(across, "width", "width over all, along y; curves stay, straights stretch");
      line("");
      line("derived:");
      derived(along, "longer", "length");
      derived(across, "wider", "width");
      line("");
      line("conditions:");
      condition(along, "length");
      condition(across, "width");
    }
    line("");
  }

  private void measure(Straights straights, String name, String about) {
    if (straights.canStretch()) {
      double size = straights.size();
      double least = Math.max(1, Math.floor(size / 4));
      double most = Math.ceil(Math.max(3 * size, size + 1000) / 10) * 10;
      line(
          "  %s: {default: %s, from: %s, to: %s, about: %s}"
              .formatted(
                  name,
                  Millimetres.of(size),
                  Millimetres.of(Math.min(least, size)),
                  Millimetres.of(most),
                  quoted(about)));
    }
  }

  private void derived(Straights straights, String name, String measure) {
    if (straights.canStretch()) {
      line("  %s: %s - %s".formatted(name, measure, Millimetres.of(straights.size())));
    }
  }

  private void condition(Straights straights, String measure) {
    if (straights.canStretch()) {
      // Up to the next hundredth, so that the sentence names a figure that does.
      double least = straights.size() - straights.room() + LEFT * straights.cuts().size();
      String words = Millimetres.of(Math.ceil(least * 100 - 1e-6) / 100);
      line("  - must: %s >= %s".formatted(measure, words));
      line(
          "    else: "
              + quoted(
                  "the straights that give way would vanish; make %s %s or more"
                      .formatted(measure, words.replace("mm", " mm"))));
    }
  }

  private void outline() {
    line("outline:");
    steps(part.contour(), "  ");
  }

  private void steps(Contour contour, String indent) {
    Loop loop = contour.loop();
    line(indent + "- start: " + point(loop.primitives().get(0).start()));
    for (int i = 0; i < loop.size(); i++) {
      Primitive piece = loop.primitives().get(i);
      String sawn = contour.kinds().get(i) == EdgeKind.SAWN ? ", edge: sawn" : "";
      if (piece instanceof Arc arc) {
        arc(arc, indent);
      } else {
        line(indent + "- line: {to: " + point(piece.end()) + sawn + "}");
      }
    }
  }

  private void arc(Arc arc, String indent) {
    if (Math.abs(arc.sweep()) > LONGEST_BY_RADIUS) {
      int parts = Math.abs(arc.sweep()) > 2 * LONGEST_BY_RADIUS ? 2 : 1;
      for (int i = 0; i < parts; i++) {
        Arc half = arc.part((double) i / parts, (i + 1.0) / parts);
        line(
            indent
                + "- arc: {to: %s, through: %s}"
                    .formatted(point(half.end()), point(half.middle())));
      }
      return;
    }
    if (arc.radius() >= Length.LARGEST) {
      // Nearly straight: no such radius is read, but how far the arc stands off its chord is.
      double half = Math.sin(Math.toRadians(arc.sweep()) / 4);
      line(
          indent
              + "- arc: {to: %s, rise: %s, turn: %s}"
                  .formatted(
                      point(arc.end()),
                      Millimetres.of(2 * arc.radius() * half * half),
                      arc.sweep() > 0 ? "left" : "right"));
      return;
    }
    line(
        indent
            + "- arc: {to: %s, radius: %s, turn: %s}"
                .formatted(
                    point(arc.end()),
                    Millimetres.of(arc.radius()),
                    arc.sweep() > 0 ? "left" : "right"));
  }

  private void openings() {
    if (part.cavities().isEmpty()) {
      return;
    }
    line("");
    line("openings:");
    for (Cavity cavity : part.cavities()) {
      line("  - through: " + cavity.name());
      Loop loop = cavity.contour().loop();
      if (loop.size() == 1 && loop.primitives().get(0) instanceof Arc circle) {
        line(
            "    circle: {centre: %s, diameter: %s}"
                .formatted(point(circle.center()), Millimetres.of(2 * circle.radius())));
      } else {
        line("    steps:");
        steps(cavity.contour().counterClockwise(), "      ");
      }
    }
  }

  private void marks() {
    List<Mark.DrillCentre> holes =
        part.marks().stream()
            .filter(Mark.DrillCentre.class::isInstance)
            .map(Mark.DrillCentre.class::cast)
            .toList();
    if (!holes.isEmpty()) {
      line("");
      line("marks:");
      for (Mark.DrillCentre hole : holes) {
        line(
            "  - drill: {at: %s, diameter: %s, label: %s}"
                .formatted(point(hole.at()), Millimetres.of(hole.diameter()), hole.label()));
      }
    }
  }

  private String point(Point p) {
    return "["
        + coordinate(p.x(), along, "longer")
        + ", "
        + coordinate(p.y(), across, "wider")
        + "]";
  }

  private static String coordinate(double at, Straights straights, String growth) {
    String here = Millimetres.of(at);
    if (!straights.canStretch()) {
      return here;
    }
    double share = straights.share(at);
    if (share == 0) {
      return here;
    }
    return share == 1 ? here + " + " + growth : here + " + " + growth + " / 2";
  }

  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
