package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.StagingFolder;
import org.bearingline.export.report.Report;
import org.bearingline.export.report.ReportWriter;

/** Writes everything that making the templates of a source needs. */
public final class LayoutJob {

  private static final String REPORT = "report.json";

  private LayoutJob() {}

  /**
   * Works out every part and writes all files into a folder, all or none.
   *
   * @return lines for a person: what was written and what to know
   */
  public static List<String> run(String source, Wishes wishes, Path into) {
    List<String> lines = new ArrayList<>();
    List<Report.Part> parts = new ArrayList<>();
    try (StagingFolder folder = StagingFolder.into(into)) {
      for (PartOrder order : Source.orders(source, wishes)) {
        WorkedPart worked = order.placed(() -> WorkedPart.of(order));
        List<String> files = order.placed(() -> PartFiles.writeAll(worked, folder));
        parts.add(
            Reports.part(worked.result(), order.quantity(), files).with(WorkReports.of(worked)));
        lines.addAll(LayoutWords.lines(worked, files));
      }
      folder.write(REPORT, ReportWriter.write(new Report(parts)));
      folder.commit();
    }
    lines.add("written to " + into + ", with " + REPORT);
    return lines;
  }
}
