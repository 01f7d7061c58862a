package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Hole;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.routing.setup.GrooveSetup;
import org.bearingline.routing.setup.Setup;
import org.bearingline.routing.setup.SetupPass;

/** The operations of a part as a table, in working order. */
final class OperationTable {

  /** A spacer less tall than this, in mm, is none. */
  private static final double NO_SPACER = 1e-6;

  /** More passes than this are said as so many even ones. */
  private static final int MOST_LISTED = 3;

  private final FaceOrder faces;
  private final Units units;

  private OperationTable(FaceOrder faces, Units units) {
    this.faces = faces;
    this.units = units;
  }

  static Card.Section of(WholeWork whole, FaceOrder faces, Units units) {
    OperationTable table = new OperationTable(faces, units);
    boolean templates = whole.plan().templates().size() > 1;
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.headings(templates));
    for (WorkedOperation worked : whole.operations()) {
      rows.add(table.row(worked, templates));
    }
    return Card.Section.table("Order of work", rows);
  }

  private List<String> headings(boolean templates) {
    List<String> headings = new ArrayList<>(List.of("no.", "what", "face", "bit and follower"));
    if (templates) {
      headings.add("template");
    }
    headings.addAll(List.of("depth of each pass", "spacers"));
    return headings;
  }

  private List<String> row(WorkedOperation worked, boolean templates) {
    Operation operation = worked.operation();
    List<String> row = new ArrayList<>();
    row.add(String.valueOf(worked.number()));
    row.add(what(operation));
    row.add(faces.column(operation));
    row.add(tool(operation, units));
    if (templates) {
      row.add(
          worked.planned().template().isPresent()
              ? String.valueOf(worked.planned().template().getAsInt())
              : "–");
    }
    row.add(depths(worked));
    row.add(spacers(worked));
    return row;
  }

  /** The name, with the trade's word where the name does not say it. */
  static String what(Operation operation) {
    String name = operation.name();
    return name.contains(operation.word()) ? name : name + " (" + operation.word() + ")";
  }

  static String tool(Operation operation, Units units) {
    if (operation instanceof EdgeGroove groove) {
      return Length.print(groove.cutter().cutter().diameter(), units)
          + " slot cutter on a "
          + Length.print(groove.cutter().bearing().diameter(), units)
          + " bearing";
    }
    if (operation.tooling().isPresent()) {
      Tooling tooling = operation.tooling().get();
      return Words.tool(tooling.cutter(), tooling.follower(), units);
    }
    return drills(operation.holes(), units);
  }

  private static String drills(List<Hole> holes, Units units) {
    TreeMap<Double, Integer> counts = new TreeMap<>();
    holes.forEach(hole -> counts.merge(hole.diameter(), 1, Integer::sum));
    List<String> said = new ArrayList<>();
    counts
        .descendingMap()
        .forEach(
            (diameter, count) ->
                said.add(
                    count + (count == 1 ? " hole " : " holes ") + Length.print(diameter, units)));
    return "drill " + String.join(", ", said);
  }

  private String depths(WorkedOperation worked) {
    if (worked.setup().isPresent()) {
      Setup setup = worked.setup().get();
      String said = depths(setup.passes().stream().map(SetupPass::depth).toList());
      return setup.request().through() ? said + ", through" : said;
    }
    if (worked.groove().isPresent()) {
      GrooveSetup groove = worked.groove().get();
      List<String> bites =
          groove.bites().stream().map(bite -> Length.print(bite.into(), units)).toList();
      return String.join(", ", bites) + " into the edge";
    }
    OptionalDouble depth = worked.operation().depth();
    return depth.isPresent() ? Length.print(depth.getAsDouble(), units) : "through";
  }

  /** One by one, or many even ones in few words. */
  private String depths(List<Double> depths) {
    int count = depths.size();
    double last = depths.get(count - 1);
    if (count > MOST_LISTED && isEven(depths, 0)) {
      return count + " × " + Length.print(depths.get(0), units) + " = " + Length.print(last, units);
    }
    if (count > MOST_LISTED && isEven(depths.subList(1, count), depths.get(0))) {
      return Length.print(depths.get(0), units)
          + ", then "
          + (count - 1)
          + " × "
          + Length.print(depths.get(1) - depths.get(0), units)
          + " = "
          + Length.print(last, units);
    }
    return String.join(", ", depths.stream().map(mm -> Length.print(mm, units)).toList());
  }

  private static boolean isEven(List<Double> values, double before) {
    double step = values.get(0) - before;
    for (int i = 1; i < values.size(); i++) {
      if (Math.abs(values.get(i) - values.get(i - 1) - step) > NO_SPACER) {
        return false;
      }
    }
    return true;
  }

  private String spacers(WorkedOperation worked) {
    if (worked.setup().isPresent()) {
      return heights(worked.setup().get().passes().stream().map(SetupPass::spacer).toList());
    }
    if (worked.groove().isPresent()) {
      return heights(worked.groove().get().bites().stream().map(GrooveSetup.Bite::spacer).toList());
    }
    return "–";
  }

  /** None at all where there is one pass only. */
  private String heights(List<Double> spacers) {
    if (spacers.stream().allMatch(mm -> mm < NO_SPACER)) {
      return "–";
    }
    if (spacers.size() > MOST_LISTED && isEven(spacers, 2 * spacers.get(0) - spacers.get(1))) {
      return Length.print(spacers.get(0), units)
          + " down to 0, by "
          + Length.print(spacers.get(0) - spacers.get(1), units);
    }
    return String.join(
        ", ", spacers.stream().map(mm -> mm < NO_SPACER ? "0" : Length.print(mm, units)).toList());
  }
}
