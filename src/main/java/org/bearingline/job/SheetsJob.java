package org.bearingline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.StagingFolder;

/** Writes only the full-size sheets of a source. */
public final class SheetsJob {

  private SheetsJob() {}

  /** Writes the sheets of every part into a folder, all or none; returns lines for a person. */
  public static List<String> run(String source, Wishes wishes, Path into) {
    List<String> lines = new ArrayList<>();
    try (StagingFolder folder = StagingFolder.into(into)) {
      for (PartOrder order : Source.orders(source, wishes)) {
        WorkedPart worked = order.placed(() -> WorkedPart.of(order));
        List<String> files = order.placed(() -> PartFiles.writeSheets(worked, folder));
        lines.add(order.name() + ": " + String.join(", ", files));
      }
      folder.commit();
    }
    lines.add("written to " + into);
    return lines;
  }
}
