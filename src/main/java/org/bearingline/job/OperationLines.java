package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedOperation;
import org.bearingline.routing.operation.PlannedTemplate;

/** What a plan of operations says on the terminal. */
final class OperationLines {

  private OperationLines() {}

  static List<String> of(OperationPlan plan, Units units) {
    List<String> lines = new ArrayList<>();
    for (PlannedOperation planned : plan.operations()) {
      lines.addAll(of(planned, units));
    }
    for (PlannedTemplate template : plan.templates()) {
      for (String sentence : template.sentences()) {
        lines.add("  template " + template.number() + ": " + sentence);
      }
    }
    plan.sentences().forEach(sentence -> lines.add("  " + sentence));
    plan.faces().sentences().forEach(sentence -> lines.add("  " + sentence));
    return lines;
  }

  private static List<String> of(PlannedOperation planned, Units units) {
    List<String> lines = new ArrayList<>();
    String head =
        "  "
            + planned.operation().name()
            + " ("
            + planned.operation().word()
            + ", "
            + planned.operation().face().words()
            + (planned.template().isPresent() ? ", template " + planned.template().getAsInt() : "")
            + ")";
    List<String> reach =
        planned.routing().map(result -> ReachWords.lines(result.reach(), units)).orElse(List.of());
    lines.add(reach.isEmpty() ? head : head + ": " + reach.get(0).strip());
    reach.stream().skip(1).forEach(lines::add);
    planned.sentences().forEach(sentence -> lines.add("    " + sentence));
    return lines;
  }
}
