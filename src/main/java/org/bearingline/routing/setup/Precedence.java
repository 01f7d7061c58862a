package org.bearingline.routing.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.facts.FactRow;
import org.bearingline.facts.FactTable;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.routing.Station;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.InlayPlug;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Tooling;

/**
 * The usual order of operations, from its table: what lies inside before the outside edge, an ledge
 * before its opening, an edge before the groove whose bearing runs on it, a pocket before its plug.
 */
public final class Precedence {

  private final FactTable table = FactTable.read(Precedence.class, "precedence.tsv");
  private final List<Operation> operations;
  private final Set<String> reasons = new LinkedHashSet<>();

  private Precedence(List<Operation> operations) {
    this.operations = List.copyOf(operations);
  }

  /** The operations with what each has to wait for, in the given order. */
  public static List<OrderStep> steps(List<Operation> operations, Units units) {
    Precedence precedence = new Precedence(operations);
    List<OrderStep> steps = new ArrayList<>();
    for (Operation operation : operations) {
      steps.add(precedence.step(operation, units));
    }
    return steps;
  }

  /** Why one operation waits for another, each reason once, as sentences. */
  public static List<String> reasons(List<Operation> operations) {
    Precedence precedence = new Precedence(operations);
    for (Operation operation : operations) {
      precedence.before(operation);
    }
    return precedence.reasons.stream()
        .map(reason -> Character.toUpperCase(reason.charAt(0)) + reason.substring(1) + ".")
        .toList();
  }

  private OrderStep step(Operation operation, Units units) {
    Optional<Tooling> tool = operation.tooling();
    Optional<String> bit =
        tool.map(t -> Length.print(t.cutter().diameter(), units) + bitWord(operation));
    Optional<String> follower =
        tool.map(t -> Length.print(t.follower().diameter(), units) + " " + t.follower().kind());
    return new OrderStep(operation.name(), bit, follower, operation.faceUp(), before(operation));
  }

  private static String bitWord(Operation operation) {
    // A bit in the table's router is set up apart from one in the hands.
    return (operation instanceof EdgeGroove ? " slot cutter" : " bit")
        + (operation.station() == Station.TABLE ? " at the table" : "");
  }

  private Set<String> before(Operation later) {
    Set<String> names = new HashSet<>();
    for (FactRow row : table.rows()) {
      if (!row.text("later").equals(later.word())) {
        continue;
      }
      for (Operation earlier : operations) {
        if (row.text("earlier").equals(earlier.word()) && concerns(row, earlier, later)) {
          names.add(earlier.name());
          reasons.add(row.text("reason"));
        }
      }
    }
    return names;
  }

  private static boolean concerns(FactRow row, Operation earlier, Operation later) {
    if (later instanceof EdgeGroove groove && groove.rides() == EdgeGroove.Rides.TEMPLATE) {
      return false;
    }
    if (later instanceof InlayPlug plug) {
      return plug.pocket().equals(earlier.name());
    }
    if (row.text("related").equals("no")) {
      return true;
    }
    return earlier.target().isPresent()
        && later.target().isPresent()
        && earlier.target().get().of().equals(later.target().get().of());
  }
}
