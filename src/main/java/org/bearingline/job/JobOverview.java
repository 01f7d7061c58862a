package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks over a whole job: what each part makes, and what is wrong in which. */
final class JobOverview {

  private final JobInHand hand;
  private final JobFile job;

  private final List<JobView.PartLine> lines = new ArrayList<>();
  private final List<String> files = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final List<WorkedPart> made = new ArrayList<>();
  private ProblemView problem;

  JobOverview(JobInHand hand, JobFile job) {
    this.hand = hand;
    this.job = job;
  }

  JobView view() {
    hand.parts().all().forEach(this::part);
    if (problem == null) {
      try {
        whole();
      } catch (Refused refused) {
        problem = refused.view();
      }
    }
    return new JobView(job.name(), lines, files, words, problem);
  }

  private void part(String name, boolean panel) {
    String shape = hand.parts().shape(name);
    try {
      made.add(hand.told(name, () -> hand.byItself(name)));
      WorkedPart found = hand.told(name, () -> hand.together(name));
      List<String> written = written(name, found);
      files.addAll(written);
      int quantity = found.order().quantity();
      lines.add(new JobView.PartLine(name, quantity, shape, panel, written, null));
    } catch (Refused refused) {
      problem = problem == null ? refused.view() : problem;
      lines.add(new JobView.PartLine(name, 1, shape, panel, List.of(), refused.view()));
    }
  }

  private List<String> written(String name, WorkedPart found) {
    List<String> names = new ArrayList<>(PartFiles.names(found));
    words.addAll(LayoutWords.lines(found, names));
    Optional<WorkedPart> other = hand.told(name, () -> OtherPiece.of(found));
    if (other.isPresent()) {
      List<String> more = PartFiles.names(other.get());
      words.addAll(LayoutWords.otherPiece(other.get(), more));
      names.addAll(more);
    }
    return names;
  }

  private void whole() {
    WorkedJob work = hand.told(null, () -> WorkedJob.of(made, Optional.of(job), JobInHand.NOTHING));
    List<String> shared =
        FamilyFiles.all(work).stream().flatMap(List::stream).map(PartFiles.PartFile::name).toList();
    files.addAll(shared);
    words.addAll(JobFamilyWords.lines(work.families(), shared, work.units()));
    words.addAll(hand.told(null, () -> LayoutJob.cutWords(work, job)));
    files.addAll(List.of(LayoutJob.CARD, LayoutJob.REPORT));
  }
}
