package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bearingline.drawing.Item;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.routing.Groove;
import org.bearingline.routing.GrooveRun;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Hole;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Registration;

/**
 * What the drawing of a plate shows beside its edges: floors of grooves, holes to drill, what
 * registers it on both faces, and each operation's number.
 *
 * @param grooves their floors
 * @param grooveTitle which cutter makes them; empty without grooves
 * @param marks holes, pins, stops and centre lines
 * @param words and the places they speak of
 */
record PlateMarks(List<Item> grooves, String grooveTitle, List<Item> marks, List<Said> words) {

  static final PlateMarks NONE = new PlateMarks(List.of(), "", List.of(), List.of());

  /** Words about a place. */
  record Said(String text, Point at) {}

  PlateMarks {
    grooves = List.copyOf(grooves);
    marks = List.copyOf(marks);
    words = List.copyOf(words);
  }

  /**
   * For the plate that makes some of a part's operations.
   *
   * @param guides holes that are pricked through the plate
   */
  static PlateMarks of(
      WholeWork whole,
      List<WorkedOperation> here,
      List<Hole> guides,
      FaceOrder faces,
      Units units) {
    Gathering gathering = new Gathering(faces, units);
    here.forEach(gathering::operation);
    guides.forEach(gathering::hole);
    if (whole.worksFaceB()) {
      gathering.registration(whole.plan().faces().registration());
    }
    return gathering.marks();
  }

  /** These marks and more. */
  PlateMarks and(PlateMarks more) {
    List<Item> allMarks = new ArrayList<>(marks);
    allMarks.addAll(more.marks);
    List<Said> allWords = new ArrayList<>(words);
    allWords.addAll(more.words);
    return new PlateMarks(grooves, grooveTitle, allMarks, allWords);
  }

  private static final class Gathering {
    private final FaceOrder faces;
    private final Units units;
    private final List<Item> grooves = new ArrayList<>();
    private final Set<String> cutters = new LinkedHashSet<>();
    private final List<Item> marks = new ArrayList<>();
    private final List<Said> words = new ArrayList<>();

    Gathering(FaceOrder faces, Units units) {
      this.faces = faces;
      this.units = units;
    }

    PlateMarks marks() {
      String title = cutters.isEmpty() ? "" : "groove floor: " + String.join("; ", cutters);
      return new PlateMarks(grooves, title, marks, words);
    }

    void operation(WorkedOperation worked) {
      Operation operation = worked.operation();
      String text = worked.number() + " " + operation.name() + faces.label(operation);
      if (worked.planned().groove().isPresent()) {
        groove((EdgeGroove) operation, worked.planned().groove().get(), text);
      } else if (operation.target().isPresent()) {
        words.add(new Said(text, spot(operation.target().get().contour())));
      } else {
        words.add(new Said(text, operation.holes().get(0).at()));
      }
    }

    private void groove(EdgeGroove operation, Groove groove, String text) {
      for (GrooveRun run : groove.runs()) {
        grooves.add(new Item.Stroke(run.floor()));
      }
      SlotCutter cutter = operation.cutter();
      cutters.add(
          Length.print(cutter.cutter().diameter(), units)
              + " slot cutter on a "
              + Length.print(cutter.bearing().diameter(), units)
              + " bearing, "
              + Length.print(groove.depthWanted(), units)
              + " deep");
      if (!groove.runs().isEmpty()) {
        List<Primitive> floor = groove.runs().get(0).floor().primitives();
        words.add(new Said(text, floor.get(floor.size() / 2).middle()));
      }
      for (Groove.Shallow shallow : groove.shallow()) {
        words.add(new Said("shallow " + shallow.number(), shallow.at()));
      }
    }

    /** The middle of the longest routed piece of an edge, the highest of equals. */
    private static Point spot(Contour contour) {
      Primitive best = null;
      for (int i = 0; i < contour.loop().size(); i++) {
        Primitive piece = contour.loop().primitives().get(i);
        if (contour.kinds().get(i) == EdgeKind.ROUTED
            && (best == null || rank(piece) > rank(best))) {
          best = piece;
        }
      }
      return best == null ? contour.loop().primitives().get(0).middle() : best.middle();
    }

    private static double rank(Primitive piece) {
      return piece.length() + piece.middle().y() * 1e-6;
    }

    void hole(Hole hole) {
      marks.add(new Item.Drill(hole.at(), hole.diameter()));
    }

    void registration(Registration registration) {
      if (registration instanceof Registration.Pins pins) {
        for (Point centre : pins.centres()) {
          marks.add(new Item.Drill(centre, pins.diameter()));
          words.add(new Said("pin", centre));
        }
      } else if (registration instanceof Registration.Stops stops) {
        for (Path line : stops.lines()) {
          marks.add(new Item.Stroke(line));
          words.add(new Said("stop here", line.primitives().get(0).pointAt(0.2)));
        }
      } else {
        for (Mark.CentreLine line : ((Registration.Lines) registration).lines()) {
          marks.add(new Item.Stroke(Path.of(new Line(line.from(), line.to()))));
          words.add(new Said("centre line", line.from()));
        }
      }
    }
  }
}
