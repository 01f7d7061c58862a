package org.bearingline.job;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.bearingline.export.report.Report;
import org.bearingline.export.report.ReportWriter;
import org.bearingline.kit.Bit;
import org.bearingline.kit.SpeedTable;
import org.bearingline.outline.Outline;
import org.bearingline.part.Part;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Passes;
import org.bearingline.routing.Reach;
import org.bearingline.routing.RoughLine;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Station;

/** Puts figures into the report's records. */
final class Reports {

  private Reports() {}

  /** The JSON of {@code reach --json}: one entry for each part and bit. */
  static String reach(List<ReachJob.Row> rows) {
    List<Report.Part> parts = new ArrayList<>();
    for (ReachJob.Row row : rows) {
      parts.add(drawn(part(row), row.order()));
    }
    return new String(ReportWriter.write(new Report(parts)), StandardCharsets.UTF_8);
  }

  /** The same with what became of the drawing, where the part is drawn. */
  static Report.Part drawn(Report.Part part, PartOrder order) {
    return order.shape() instanceof DrawnDesign design
        ? part.drawnBy(DrawnWords.report(design))
        : part;
  }

  private static Report.Part part(ReachJob.Row row) {
    return entry(
        row.part(),
        row.order().quantity(),
        row.reach(),
        row.largest(),
        distinct(
            row.kit().get().bits().stream().filter(bit -> row.largest().allows(bit.diameter()))),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        row.reach().cautions(),
        List.of());
  }

  /** A bit of another length or shank reaches the same, so each diameter is told once. */
  private static List<Report.Bit> distinct(Stream<Bit> bits) {
    return bits.mapToDouble(Bit::diameter).distinct().mapToObj(Report.Bit::new).toList();
  }

  /** One part of a layout. */
  static Report.Part part(RoutingResult result, int quantity, List<String> files) {
    return entry(
        result.part(),
        quantity,
        result.reach(),
        result.largestCutter(),
        result.bits().stream()
            .mapToDouble(Bit::diameter)
            .distinct()
            .mapToObj(Report.Bit::new)
            .toList(),
        result.roughLine().map(Reports::roughLine),
        feed(result),
        result.passes().map(Passes::depths).orElse(List.of()),
        result.proof().map(proof -> new Report.Proof(proof.maxDeviation())),
        result.cautions(),
        files);
  }

  private static Report.Part entry(
      Part part,
      int quantity,
      Reach reach,
      LargestCutter largest,
      List<Report.Bit> bits,
      Optional<Report.RoughLine> roughLine,
      Optional<Report.Feed> feed,
      List<Double> passes,
      Optional<Report.Proof> proof,
      List<String> notes,
      List<String> files) {
    Outline outline = part.outline();
    return new Report.Part(
        part.name(),
        quantity,
        outline.bounds(),
        outline.area(),
        largest.smallestInsideRadius(),
        largest.narrowestNeck(),
        largest.diameter(),
        OptionalDouble.of(reach.cutter().diameter()),
        Optional.of(new Report.Follower(reach.follower().kind(), reach.follower().diameter())),
        OptionalDouble.of(reach.cutter().radius() - reach.follower().radius()),
        reach.leftovers().stream()
            .map(
                left ->
                    new Report.Leftover(
                        left.number(),
                        left.at(),
                        left.area(),
                        left.depth(),
                        OptionalDouble.of(left.insideRadius()),
                        left.kind().word()))
            .toList(),
        reach.overcuts().stream()
            .map(over -> new Report.Overcut(over.at(), over.area(), over.depth()))
            .toList(),
        bits,
        roughLine,
        feed,
        passes,
        proof,
        notes,
        files);
  }

  private static Report.RoughLine roughLine(RoughLine line) {
    return new Report.RoughLine(
        line.allowance(),
        line.blade().stream().mapToDouble(blade -> blade.smallestRadius()).findFirst(),
        line.length(),
        line.wasteArea(),
        line.bridged().stream().map(RoughLine.Bridge::at).toList());
  }

  private static Optional<Report.Feed> feed(RoutingResult result) {
    if (result.feed().isEmpty()) {
      return Optional.empty();
    }
    OptionalInt speed = SpeedTable.ceiling(result.settings().cutter().diameter());
    Station station = result.settings().station();
    return Optional.of(
        new Report.Feed(Words.router(station), FeedWords.of(result.part(), station), speed));
  }
}
