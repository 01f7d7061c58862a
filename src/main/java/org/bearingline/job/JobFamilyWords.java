package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.Registration;
import org.bearingline.routing.family.SharedCurve;

/** What a job says of parts that share a curve. */
final class JobFamilyWords {

  private JobFamilyWords() {}

  /** On the terminal. */
  static List<String> lines(JobFamilies found, List<String> files, Units units) {
    if (found.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("families:");
    sentences(found, units).forEach(sentence -> lines.add("  " + sentence));
    if (!files.isEmpty()) {
      lines.add("  " + String.join(", ", files));
    }
    return lines;
  }

  /** On the job's card, and after it the terminal. */
  static List<String> sentences(JobFamilies found, Units units) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < found.families().size(); i++) {
      Family family = found.families().get(i);
      String name = JobFamilies.name(i);
      sentences.add(
          names(family)
              + " share "
              + Length.printRough(family.sharedLength(), units)
              + " of curve"
              + (found.made()
                  ? ": one template, "
                      + name
                      + ", "
                      + size(family, units)
                      + ", makes them all in place of "
                      + family.members().size()
                      + " plates"
                      + compared(found.saved(family), units)
                      + "."
                  : ". One template, "
                      + size(family, units)
                      + ", would make them all in place of "
                      + family.members().size()
                      + " plates, with lines for each"
                      + compared(found.saved(family), units)
                      + "; for it write “families: yes” at the top of the job."));
    }
    for (int i = 0; i < found.curves().size(); i++) {
      sentences.add(curve(found, i, units));
    }
    sentences.addAll(found.apart());
    return sentences;
  }

  private static String curve(JobFamilies found, int index, Units units) {
    SharedCurve curve = found.curves().get(index);
    String size = size(curve.plate().bounds(), units);
    return curve.sentences().get(0)
        + (found.shortMade()
            ? " The short template "
                + JobFamilies.shortName(index)
                + ", "
                + size
                + ", makes it everywhere, one setting for each place."
            : " A short template of "
                + size
                + " would make it everywhere, one setting for each place; for it write “families:"
                + " short” at the top of the job.");
  }

  /** How much plate one template saves or takes beside those of the parts' own. */
  private static String compared(double saved, Units units) {
    String area =
        units == Units.INCH
            ? String.format(Locale.ROOT, "%.2f square feet", Math.abs(saved) / (304.8 * 304.8))
            : String.format(Locale.ROOT, "%.3f m²", Math.abs(saved) / 1e6);
    return saved >= 0
        ? ", and saves " + area + " of plate"
        : ", though it takes " + area + " more plate than they do together";
  }

  static String names(Family family) {
    return Words.list(family.members().stream().map(FamilyMember::part).toList());
  }

  static String size(Family family, Units units) {
    return size(family.plate().bounds(), units);
  }

  /** As the cut list has it, up to the next sixteenth or millimetre. */
  private static String size(Bounds box, Units units) {
    return atLeast(box.width(), units) + " × " + atLeast(box.height(), units);
  }

  private static String atLeast(double mm, Units units) {
    double step = units == Units.INCH ? 25.4 / 16 : 1;
    return Length.print(Math.ceil(mm / step - 1e-6) * step, units);
  }

  /** On the card of a part that a shared template serves. */
  static List<String> onCard(PlateWay.Shared shared) {
    List<String> lines = new ArrayList<>();
    List<String> others =
        shared.family().members().stream()
            .map(FamilyMember::part)
            .filter(name -> !name.equals(shared.member().part()))
            .toList();
    lines.add(
        "The edge comes from "
            + shared.name()
            + ", which serves "
            + Words.list(others)
            + " too: its sheets, drawing and card are "
            + shared.name()
            + ".*; this part has none of its own.");
    lines.add(shared.member().sentence());
    lines.addAll(how(shared.family()));
    if (shared.member().isTurnedOver()) {
      lines.add("Face B lies up on it: feed and grain here are told from that face.");
    }
    return lines;
  }

  /** What holds for every member. */
  static List<String> how(Family family) {
    List<String> lines = new ArrayList<>();
    boolean backs =
        family.registration().stream().anyMatch(line -> line.kind() == Registration.Kind.BACK);
    if (backs) {
      lines.add("Its back lies on the line marked back: fix a straight stop along it.");
    }
    if (family.members().stream().anyMatch(member -> member.settings().size() > 1)) {
      lines.add(
          "Where there is a stop line, lift the router clear at it: beyond it the template turns"
              + " away from the part's line.");
    }
    return lines;
  }
}
