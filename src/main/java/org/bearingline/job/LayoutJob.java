package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    List<String> lines;
    try (StagingFolder folder = StagingFolder.into(into)) {
      lines = write(Source.asked(source, wishes), wishes, folder);
      folder.commit();
    }
    lines.add("written to " + into + ", with " + REPORT);
    return lines;
  }

  /** Works out every part and writes all files; returns lines for a person. */
  static List<String> write(Source.Asked asked, Wishes wishes, FileSink folder) {
    List<String> lines = new ArrayList<>();
    List<Report.Part> parts = new ArrayList<>();
    List<WorkedPart> all = new ArrayList<>();
    for (PartOrder order : asked.orders()) {
      WorkedPart worked = order.placed(() -> WorkedPart.of(order));
      all.add(worked);
      List<String> files = order.placed(() -> PartFiles.writeAll(worked, folder));
      parts.add(
          Reports.part(worked.result(), order.quantity(), files).with(WorkReports.of(worked)));
      lines.addAll(LayoutWords.lines(worked, files));
    }
    Optional<JobCuts> cuts = asked.job().map(job -> cuts(all, job, wishes, folder, lines));
    folder.write(REPORT, ReportWriter.write(new Report(parts, cuts.map(CutReports::of))));
    return lines;
  }

  /** What is said of the cut list alone. */
  static List<String> cutWords(List<WorkedPart> all, JobFile job, Wishes wishes) {
    Units units = Settings.units(wishes.over(job.general()));
    return CutWords.lines(JobCuts.of(all, job, units), CARD, units);
  }

  private static JobCuts cuts(
      List<WorkedPart> all, JobFile job, Wishes wishes, FileSink folder, List<String> lines) {
    Wishes whole = wishes.over(job.general());
    Units units = Settings.units(whole);
    JobCuts cuts = JobCuts.of(all, job, units);
    folder.write(
        CARD, CardPdf.write(JobCard.card(cuts, units, Settings.paper(whole).paper()), units));
    lines.addAll(CutWords.lines(cuts, CARD, units));
    return cuts;
  }
}
