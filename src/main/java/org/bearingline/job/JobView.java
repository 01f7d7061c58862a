package org.bearingline.job;

import java.util.List;

/**
 * A whole job.
 *
 * @param job its name
 * @param parts those listed, then its panels
 * @param files every file that a layout writes
 * @param words what a layout says
 * @param problem what keeps the whole from being made; null where nothing does
 */
public record JobView(
    String job, List<PartLine> parts, List<String> files, List<String> words, ProblemView problem) {

  /** One part of the job; where it cannot be made it has a problem and no files. */
  public record PartLine(
      String name,
      int quantity,
      String shape,
      boolean panel,
      List<String> files,
      ProblemView problem) {}
}
