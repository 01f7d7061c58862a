package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.bearingline.export.FileSink;
import org.bearingline.export.StagingFolder;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.export.report.Report;
import org.bearingline.export.report.ReportWriter;
import org.bearingline.length.Units;

/** Writes everything that making the templates of a source needs. */
public final class LayoutJob {

  static final String REPORT = "report.json";

  static final String CARD = "job-card.pdf";

  private LayoutJob() {}

  /**
   * Works out every part and writes all files into a folder, all or none.
   *
   * @return lines for a person: what was written and what to know
   */
  public static List<String> run(String source, Wishes wishes, Path into) {
    return run(source, wishes, into, Source.SILENT);
  }

  /** The same, told meanwhile what takes long. */
  public static List<String> run(
      String source, Wishes wishes, Path into, Consumer<String> progress) {
    List<String> lines;
    try (StagingFolder folder = StagingFolder.into(into)) {
      Source.Asked asked = Source.asked(source, wishes, progress);
      asked.drawings().forEach(folder::spare);
      lines = write(asked, wishes, folder);
      folder.commit();
    }
    lines.add("written to " + into + ", with " + REPORT);
    return lines;
  }

  /** Works out every part and writes all files; returns lines for a person. */
  static List<String> write(Source.Asked asked, Wishes wishes, FileSink folder) {
    List<String> lines = new ArrayList<>();
    List<Report.Part> parts = new ArrayList<>();
    WorkedJob work = WorkedJob.of(asked, wishes);
    for (WorkedPart worked : work.parts()) {
      parts.add(part(worked, folder, lines));
    }
    List<List<String>> shared = FamilyFiles.writeAll(work, folder);
    lines.addAll(
        JobFamilyWords.lines(
            work.families(), shared.stream().flatMap(List::stream).toList(), work.units()));
    Optional<JobCuts> cuts = asked.job().map(job -> cuts(work, job, wishes, folder, lines));
    folder.write(
        REPORT,
        ReportWriter.write(
            new Report(
                parts,
                asked.job().map(job -> FamilyReports.of(work.families(), shared)),
                cuts.map(CutReports::of))));
    return lines;
  }

  /** What is said of the cut list alone. */
  static List<String> cutWords(WorkedJob work, JobFile job) {
    return CutWords.lines(JobCuts.of(work, job), CARD, work.units());
  }

  /** Writes one part, and the other piece of its pair. */
  private static Report.Part part(WorkedPart worked, FileSink folder, List<String> lines) {
    PartOrder order = worked.order();
    List<String> files = order.placed(() -> PartFiles.writeAll(worked, folder));
    lines.addAll(LayoutWords.lines(worked, files));
    Optional<WorkedPart> other = order.placed(() -> OtherPiece.of(worked));
    List<String> more =
        other.map(piece -> order.placed(() -> PartFiles.writeAll(piece, folder))).orElse(List.of());
    other.ifPresent(piece -> lines.addAll(LayoutWords.otherPiece(piece, more)));
    return Reports.drawn(
        Reports.part(worked.result(), order.quantity(), files)
            .with(WorkReports.of(worked, other, more)),
        order);
  }

  private static JobCuts cuts(
      WorkedJob work, JobFile job, Wishes wishes, FileSink folder, List<String> lines) {
    Wishes whole = wishes.over(job.general());
    Units units = work.units();
    JobCuts cuts = JobCuts.of(work, job);
    List<String> families = JobFamilyWords.sentences(work.families(), units);
    folder.write(
        CARD,
        CardPdf.write(JobCard.card(cuts, families, units, Settings.paper(whole).paper()), units));
    lines.addAll(CutWords.lines(cuts, CARD, units));
    return cuts;
  }
}
