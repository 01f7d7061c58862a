package org.bearingline.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Reach;

/** What bits can and cannot reach of the parts of a source. */
public final class ReachJob {

  /**
   * One part with one bit.
   *
   * @param order what is made
   * @param part its shape, measured
   * @param reach what the bit makes and leaves
   * @param largest the fattest cutter that leaves nothing
   * @param kit whose tools were looked at
   */
  record Row(PartOrder order, Part part, Reach reach, LargestCutter largest, Supplier<Kit> kit) {}

  private final List<Row> rows;
  private final boolean bitsWereAsked;
  private final Units units;

  private ReachJob(List<Row> rows, boolean bitsWereAsked, Units units) {
    this.rows = rows;
    this.bitsWereAsked = bitsWereAsked;
    this.units = units;
  }

  /** Works out every part of {@code source} with every bit asked for, or every bit of the kit. */
  public static ReachJob of(String source, Wishes wishes) {
    return of(source, wishes, Source.SILENT);
  }

  /** The same, told meanwhile what takes long. */
  public static ReachJob of(String source, Wishes wishes, Consumer<String> progress) {
    List<Row> rows = new ArrayList<>();
    for (PartOrder order : Source.asked(source, wishes, progress).orders()) {
      rows.addAll(order.placed(() -> rows(order)));
    }
    return new ReachJob(rows, !wishes.bits().isEmpty(), wishes.units().orElse(Units.INCH));
  }

  private static List<Row> rows(PartOrder order) {
    List<Row> rows = new ArrayList<>();
    Supplier<Kit> kit = new KitOnDemand(order.wishes());
    Part part = order.shape().part().named(order.name());
    LargestCutter largest = LargestCutter.of(part);
    for (Cutter cutter : Tools.cutters(order.wishes(), kit)) {
      Reach reach = Reach.of(part, cutter, Tools.follower(order.wishes(), cutter, kit));
      rows.add(new Row(order, part, reach, largest, kit));
    }
    return rows;
  }

  /**
   * Whether the parts can be made: every bit that was asked for leaves nothing, or, where none was
   * named, each part has a bit in the kit that leaves nothing.
   */
  public boolean isComplete() {
    if (bitsWereAsked) {
      return rows.stream().allMatch(row -> row.reach().isComplete());
    }
    Map<String, Boolean> done = new HashMap<>();
    for (Row row : rows) {
      done.merge(row.part().name(), row.reach().isComplete(), Boolean::logicalOr);
    }
    return !done.containsValue(false);
  }

  /** Lines for a person. */
  public List<String> lines() {
    return ReachWords.lines(rows, units);
  }

  /** The figures as JSON, in the form of {@code report.json}. */
  public String json() {
    return Reports.reach(rows);
  }
}
