package org.bearingline.routing.operation;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.part.EdgeKind;

/** What to know of one operation at the bench. */
final class OperationWords {

  private OperationWords() {}

  static List<String> of(Operation operation, Units units) {
    List<String> sentences = new ArrayList<>();
    if (operation instanceof EdgeGroove groove && groove.rides() == EdgeGroove.Rides.WORK) {
      boolean jointed = groove.edge().contour().isAll(EdgeKind.SAWN);
      sentences.add(
          "Needs no template: the bearing rides the finished edge of the work, which must be "
              + (jointed ? "jointed straight" : "routed")
              + " first.");
    }
    if (operation instanceof ThroughOpening) {
      sentences.add("Drill and saw inside the line first, then rout to it along the template.");
    }
    if (operation instanceof Mortise mortise) {
      sentences.add(slot("mortise", mortise.length(), mortise.width(), mortise.tool(), units));
    }
    if (operation instanceof StoppedSlot slot) {
      sentences.add(slot("slot", slot.length(), slot.width(), slot.tool(), units));
    }
    if (operation instanceof InlayPlug plug) {
      sentences.add(
          "Cut it from the inlay stock with the smaller collar in the opening that made "
              + plug.pocket()
              + ", with the same side of the template up; the plug is what stays inside.");
    }
    if (operation instanceof Drilled) {
      sentences.add("Prick the centres through the template and drill square to the face.");
    }
    return sentences;
  }

  private static String slot(String what, double length, double width, Tooling tool, Units units) {
    double grown = 2 * tool.wider();
    String size = Length.print(length + grown, units) + " × " + Length.print(width + grown, units);
    if (Math.abs(grown) < 1e-6) {
      return "The opening of the template is as large as the " + what + ": " + size + ".";
    }
    return "The opening of the template is "
        + size
        + ", "
        + Length.print(Math.abs(grown) / 2, units)
        + (grown > 0 ? " outside the " : " inside the ")
        + what
        + " all round.";
  }
}
