package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.cutlist.Blank;
import org.bearingline.cutlist.CutList;
import org.bearingline.cutlist.LeftOut;
import org.bearingline.cutlist.Ordered;
import org.bearingline.cutlist.Packing;
import org.bearingline.cutlist.PackingResult;
import org.bearingline.cutlist.Purpose;
import org.bearingline.cutlist.SharedPlate;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.bearingline.wood.Species;
import org.bearingline.wood.SpeciesTable;

/**
 * What a job is sawn out of.
 *
 * @param name of the job
 * @param list every blank
 * @param packing onto the maker's boards; empty where none are listed
 * @param notes on blanks that no list of boards was given for
 */
record JobCuts(String name, CutList list, Optional<PackingResult> packing, List<String> notes) {

  /**
   * The cut list of worked parts, laid out on the job's offcuts.
   *
   * @throws Problem where the offcuts listed do not hold every blank
   */
  static JobCuts of(WorkedJob work, JobFile job) {
    Units units = work.units();
    CutList list =
        CutList.of(work.parts().stream().map(JobCuts::ordered).toList(), shared(work), units);
    OffcutFile offcuts = OffcutFile.read(job);
    List<String> notes = new ArrayList<>();
    List<Blank> blanks = new ArrayList<>();
    for (Purpose purpose : Purpose.values()) {
      List<Blank> here = purpose == Purpose.PART ? list.parts() : list.templates();
      if (offcuts.boards().stream().anyMatch(board -> board.purpose() == purpose)) {
        blanks.addAll(here);
      } else if (!offcuts.boards().isEmpty() && !here.isEmpty()) {
        notes.add(
            purpose == Purpose.PART
                ? "No board for the parts is listed, so only the templates are laid out."
                : "No sheet for the templates is listed, so only the parts are laid out.");
      }
    }
    if (blanks.isEmpty()) {
      return new JobCuts(job.name(), list, Optional.empty(), notes);
    }
    PackingResult packing = Packing.pack(blanks, offcuts.boards(), offcuts.rules(), units);
    if (!packing.isComplete()) {
      throw tooSmall(packing.leftOut(), job);
    }
    return new JobCuts(job.name(), list, Optional.of(packing), notes);
  }

  private static Problem tooSmall(List<LeftOut> leftOut, JobFile job) {
    List<String> reasons =
        leftOut.stream().map(LeftOut::reason).map(JobCuts::withoutFullStop).toList();
    return job.top()
        .field("offcuts")
        .problem("not everything can be cut from these: " + String.join("; ", reasons));
  }

  private static String withoutFullStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** The plates that serve several parts. */
  private static List<SharedPlate> shared(WorkedJob work) {
    List<SharedPlate> plates = new ArrayList<>();
    JobFamilies found = work.families();
    for (int i = 0; found.made() && i < found.families().size(); i++) {
      plates.add(new SharedPlate(JobFamilies.name(i), found.families().get(i).plate().bounds()));
    }
    for (int i = 0; found.shortMade() && i < found.curves().size(); i++) {
      plates.add(new SharedPlate(JobFamilies.shortName(i), found.curves().get(i).plate().bounds()));
    }
    return plates;
  }

  private static Ordered ordered(WorkedPart worked) {
    StockWishes stock = worked.order().stock();
    boolean sheet =
        stock.species().stream().flatMap(JobCuts::known).anyMatch(species -> !species.solid());
    return new Ordered(
        worked.result().withTemplates(JobFamilies.ownPlates(worked)),
        worked.order().quantity(),
        stock.grain().degrees().orElse(0),
        stock.grain().degrees().isPresent() && !sheet,
        stock.species(),
        Optional.empty(),
        stock.templateThickness());
  }

  private static Stream<Species> known(String name) {
    return SpeciesTable.all().stream()
        .filter(species -> species.name().equalsIgnoreCase(name.strip()));
  }
}
