package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.routing.operation.PlannedTemplate;

/** What a layout says on the terminal of a part's operations. */
final class WholeWords {

  private WholeWords() {}

  static List<String> lines(WholeWork whole, FaceOrder faces, Units units) {
    List<String> lines = new ArrayList<>();
    for (WorkedOperation one : whole.operations()) {
      lines.addAll(lines(one, faces, units));
    }
    whole.meetings().forEach(sentence -> lines.add("  Look again: " + sentence));
    for (PlannedTemplate planned : whole.plan().templates()) {
      List<String> makes =
          planned.services().stream().map(service -> service.operation().name()).toList();
      lines.add("  template " + planned.number() + " makes " + Words.list(makes) + ".");
    }
    whole.plan().sentences().forEach(sentence -> lines.add("  " + sentence));
    whole.plan().faces().sentences().forEach(sentence -> lines.add("  " + sentence));
    for (String name : whole.left()) {
      lines.add(
          "  No operation makes the shape's opening “"
              + name
              + "”; name it among the operations if it is to be routed.");
    }
    return lines;
  }

  private static List<String> lines(WorkedOperation one, FaceOrder faces, Units units) {
    String head =
        "  "
            + one.number()
            + " "
            + OperationTable.what(one.operation())
            + ", "
            + faces.words(one.operation());
    List<String> reach =
        one.planned()
            .routing()
            .map(result -> ReachWords.lines(result.reach(), units))
            .orElse(List.of());
    List<String> lines = new ArrayList<>();
    lines.add(
        head
            + ": "
            + (reach.isEmpty()
                ? OperationTable.tool(one.operation(), units) + "."
                : reach.get(0).strip()));
    reach.stream().skip(1).forEach(lines::add);
    return lines;
  }
}
