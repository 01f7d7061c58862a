package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Units;

/**
 * All parts of a source, worked out.
 *
 * @param parts in the order of the job
 * @param families which of them share a curve; none for a single shape
 * @param units of what is said of the whole
 */
record WorkedJob(List<WorkedPart> parts, JobFamilies families, Units units) {

  WorkedJob {
    parts = List.copyOf(parts);
  }

  static WorkedJob of(Source.Asked asked, Wishes wishes) {
    List<WorkedPart> alone = new ArrayList<>();
    for (PartOrder order : asked.orders()) {
      alone.add(order.placed(() -> WorkedPart.of(order)));
    }
    return of(alone, asked.job(), wishes);
  }

  /** The same of parts that are worked out already, each for itself. */
  static WorkedJob of(List<WorkedPart> alone, Optional<JobFile> file, Wishes wishes) {
    Units units = Settings.units(file.map(job -> wishes.over(job.general())).orElse(wishes));
    JobFamilies families =
        file.map(job -> JobFamilies.of(alone, job, units)).orElse(JobFamilies.NONE);
    return new WorkedJob(alone.stream().map(families::served).toList(), families, units);
  }
}
