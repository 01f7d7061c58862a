package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.bearingline.export.StagingFolder;

/** Writes only the full-size sheets of a source. */
public final class SheetsJob {

  private SheetsJob() {}

  /** Writes the sheets of every part into a folder, all or none; returns lines for a person. */
  public static List<String> run(String source, Wishes wishes, Path into) {
    return run(source, wishes, into, Source.SILENT);
  }

  /** The same, told meanwhile what takes long. */
  public static List<String> run(
      String source, Wishes wishes, Path into, Consumer<String> progress) {
    List<String> lines = new ArrayList<>();
    try (StagingFolder folder = StagingFolder.into(into)) {
      Source.Asked asked = Source.asked(source, wishes, progress);
      asked.drawings().forEach(folder::spare);
      WorkedJob work = WorkedJob.of(asked, wishes);
      for (WorkedPart worked : work.parts()) {
        PartOrder order = worked.order();
        List<String> files = order.placed(() -> PartFiles.writeSheets(worked, folder));
        lines.add(
            order.name()
                + ": "
                + (files.isEmpty() ? "from a shared template" : String.join(", ", files)));
        if (order.shape() instanceof DrawnDesign design) {
          lines.addAll(DrawnWords.lines(design, Settings.units(order.wishes())));
        }
      }
      FamilyFiles.writeSheets(work, folder)
          .forEach(files -> lines.add("shared template: " + String.join(", ", files)));
      folder.commit();
    }
    lines.add("written to " + into);
    return lines;
  }
}
