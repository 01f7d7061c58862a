package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bearingline.export.report.Report;
import org.bearingline.export.report.Work;
import org.bearingline.part.Mark;
import org.bearingline.routing.family.HalfTemplate;
import org.bearingline.routing.grain.BackingBlock;
import org.bearingline.routing.grain.FeedPlan;
import org.bearingline.routing.grain.GrainClass;
import org.bearingline.routing.grain.GrainShares;
import org.bearingline.routing.grain.ShortGrain;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.PlannedTemplate;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.routing.setup.GrooveSetup;
import org.bearingline.routing.setup.Setup;
import org.bearingline.routing.setup.SetupPass;

/** Puts what is done to a part into the report's records. */
final class WorkReports {

  private WorkReports() {}

  static Work of(WorkedPart worked) {
    return of(worked, Optional.empty(), List.of());
  }

  /**
   * The same of one piece of a pair.
   *
   * @param other the other piece
   * @param files those of the other piece
   */
  static Work of(WorkedPart worked, Optional<WorkedPart> other, List<String> files) {
    Optional<WholeWork> whole = worked.whole();
    List<Work.Operation> operations = new ArrayList<>();
    List<Work.Template> templates = new ArrayList<>();
    whole.ifPresent(
        work -> {
          FaceOrder faces = new FaceOrder(worked.grain());
          work.operations().forEach(one -> operations.add(operation(one, faces)));
          work.plan().templates().forEach(one -> templates.add(template(one)));
        });
    return new Work(
        operations,
        templates,
        whole.map(work -> work.plan().faces().sentences()).orElse(List.of()),
        whole.map(WholeWork::meetings).orElse(List.of()),
        grain(worked),
        worked.order().shape() instanceof PanelDesign design
            ? Optional.of(PanelReports.of(design.panel()))
            : Optional.empty(),
        plate(worked),
        other.map(piece -> otherPiece(worked, piece, files)));
  }

  private static Optional<Work.Grain> grain(WorkedPart worked) {
    return worked
        .grain()
        .map(grain -> grain(grain, worked.order().stock().grain().degrees().getAsDouble()));
  }

  private static Optional<Work.Plate> plate(WorkedPart worked) {
    if (worked.way() instanceof PlateWay.Half way) {
      HalfTemplate half = way.half();
      return Optional.of(
          new Work.Plate(
              "half",
              worked.order().name(),
              Optional.of(half.plate().bounds()),
              List.of(half.axisFrom(), half.axisTo()),
              OptionalDouble.of(half.pastCentre())));
    }
    if (worked.way() instanceof PlateWay.Short way) {
      return Optional.of(
          new Work.Plate(
              "short",
              String.join(" ", way.names()),
              Optional.empty(),
              List.of(),
              OptionalDouble.empty()));
    }
    return worked.way() instanceof PlateWay.Shared shared
        ? Optional.of(
            new Work.Plate(
                "shared", shared.name(), Optional.empty(), List.of(), OptionalDouble.empty()))
        : Optional.empty();
  }

  private static Work.OtherPiece otherPiece(
      WorkedPart drawn, WorkedPart piece, List<String> files) {
    Mark.CentreLine axis = drawn.plan().orElseThrow().faces().axis();
    return new Work.OtherPiece(
        piece.hand().orElseThrow(),
        piece.order().name(),
        List.of(axis.from(), axis.to()),
        Face.B.name(),
        grain(piece),
        files);
  }

  private static Work.Operation operation(WorkedOperation one, FaceOrder faces) {
    Optional<Tooling> tool = one.operation().tooling();
    List<Double> passes =
        one.setup()
            .map(setup -> setup.passes().stream().map(SetupPass::depth).toList())
            .or(
                () ->
                    one.groove().map(g -> g.bites().stream().map(GrooveSetup.Bite::into).toList()))
            .orElse(List.of());
    List<Double> spacers =
        one.setup()
            .map(setup -> setup.passes().stream().map(SetupPass::spacer).toList())
            .or(
                () ->
                    one.groove()
                        .map(g -> g.bites().stream().map(GrooveSetup.Bite::spacer).toList()))
            .orElse(List.of());
    OptionalInt ceiling =
        one.setup()
            .map(Setup::speedCeiling)
            .or(() -> one.groove().map(GrooveSetup::speedCeiling))
            .orElse(OptionalInt.empty());
    return new Work.Operation(
        one.number(),
        one.operation().name(),
        one.operation().word(),
        one.operation().face().name(),
        tool.isPresent() ? faces.of(one.operation()).stream().map(Face::name).toList() : List.of(),
        tool.map(t -> Words.router(one.operation().station())),
        one.operation().faceUp().name(),
        one.operation().target().map(target -> FeedWords.round(target, one.operation().station())),
        one.planned().template(),
        one.operation().depth(),
        tool.isPresent()
            ? OptionalDouble.of(tool.get().cutter().diameter())
            : OptionalDouble.empty(),
        tool.map(t -> new Report.Follower(t.follower().kind(), t.follower().diameter())),
        passes,
        spacers,
        ceiling,
        one.setup().map(setup -> setup.template().least()).orElse(OptionalDouble.empty()));
  }

  private static Work.Template template(PlannedTemplate one) {
    return new Work.Template(
        one.number(),
        one.services().stream().map(service -> service.operation().name()).toList(),
        one.eitherSideUp(),
        one.mirroredPrint());
  }

  private static Work.Grain grain(GrainWork grain, double degrees) {
    GrainShares shares = grain.shares();
    return new Work.Grain(
        degrees,
        shares.share(GrainClass.ALONG),
        shares.share(GrainClass.CLEAN),
        shares.share(GrainClass.TEARS),
        shares.share(GrainClass.END_GRAIN),
        grain.plan().map(FeedPlan::turnsWork).orElse(false),
        grain.plan().map(FeedPlan::blocks).orElse(List.of()).stream()
            .map(BackingBlock::at)
            .toList(),
        grain.shortGrain().stream().map(ShortGrain::at).toList());
  }
}
