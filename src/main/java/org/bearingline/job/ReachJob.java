package org.bearingline.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Kit;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
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

  /**
   * A bit of the kit that cannot make a part at all.
   *
   * @param why the sentence that refuses it
   */
  record Barred(Part part, Cutter cutter, String why) {}

  private final List<Row> rows;
  private final List<Barred> barred;
  private final boolean bitsWereAsked;
  private final Units units;

  private ReachJob(List<Row> rows, List<Barred> barred, boolean bitsWereAsked, Units units) {
    this.rows = rows;
    this.barred = barred;
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
    List<Barred> barred = new ArrayList<>();
    Source.Asked asked = Source.asked(source, wishes, progress);
    for (PartOrder order : asked.orders()) {
      order.placed(
          () -> {
            work(order, rows, barred);
            return rows;
          });
    }
    return new ReachJob(
        rows,
        barred,
        !wishes.bits().isEmpty(),
        Settings.units(asked.job().map(job -> wishes.over(job.general())).orElse(wishes)));
  }

  private static void work(PartOrder order, List<Row> rows, List<Barred> barred) {
    Supplier<Kit> kit = new KitOnDemand(order.wishes());
    Part part = order.shape().part().named(order.name());
    LargestCutter largest = LargestCutter.of(part);
    int before = rows.size();
    Problem last = null;
    for (Cutter cutter : Tools.cutters(order.wishes(), kit)) {
      try {
        Reach reach = Reach.of(part, cutter, Tools.follower(order.wishes(), cutter, kit));
        rows.add(new Row(order, part, reach, largest, kit));
      } catch (Problem refused) {
        if (!order.wishes().bits().isEmpty()) {
          throw refused;
        }
        barred.add(new Barred(part, cutter, refused.spoken()));
        last = refused;
      }
    }
    if (rows.size() == before && last != null) {
      throw last;
    }
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
    List<String> lines = ReachWords.lines(rows, units);
    for (Barred one : barred) {
      lines.add(
          "  "
              + (several() ? one.part().name() + ": " : "")
              + Length.print(one.cutter().diameter(), units)
              + " bit: "
              + one.why()
              + ".");
    }
    return lines;
  }

  private boolean several() {
    return rows.stream().map(row -> row.part().name()).distinct().count() > 1;
  }

  /** The figures as JSON, in the form of {@code report.json}. */
  public String json() {
    return Reports.reach(rows);
  }
}
