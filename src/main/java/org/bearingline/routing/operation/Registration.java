package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Mark;

/** What locates a template on face A and on face B alike. */
public sealed interface Registration {

  /** What to do, for the maker. */
  List<String> sentences();

  /** The same on the part's mirror image. */
  Registration mirrored(Similarity mirror);

  /**
   * Two holes drilled square through template and work, for pins.
   *
   * @param centres two points as seen from face A
   * @param diameter mm
   */
  record Pins(List<Point> centres, double diameter, List<String> sentences)
      implements Registration {
    public Pins {
      centres = List.copyOf(centres);
      sentences = List.copyOf(sentences);
    }

    @Override
    public Pins mirrored(Similarity mirror) {
      return new Pins(centres.stream().map(mirror::apply).toList(), diameter, sentences);
    }
  }

  /**
   * Sawn edges against which stops on the template bear.
   *
   * @param lines the sawn edges
   */
  record Stops(List<Path> lines, List<String> sentences) implements Registration {
    public Stops {
      lines = List.copyOf(lines);
      sentences = List.copyOf(sentences);
    }

    @Override
    public Stops mirrored(Similarity mirror) {
      // A mirrored edge is travelled the other way, and the left one is now the right one.
      List<Line> sides = new ArrayList<>();
      for (Path line : lines) {
        Primitive image = line.primitives().get(0).transformed(mirror);
        sides.add(new Line(image.end(), image.start()));
      }
      return new Stops(
          sides.stream().map(side -> Path.of(side)).toList(), Registering.stopSentences(sides));
    }
  }

  /**
   * Centre lines drawn on both faces and on the template.
   *
   * @param lines one or two
   */
  record Lines(List<Mark.CentreLine> lines, List<String> sentences) implements Registration {
    public Lines {
      lines = List.copyOf(lines);
      sentences = List.copyOf(sentences);
    }

    @Override
    public Lines mirrored(Similarity mirror) {
      return new Lines(lines.stream().map(line -> line.transformed(mirror)).toList(), sentences);
    }
  }
}
