package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.kit.Follower;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/** What a family says to the maker. */
final class FamilyWords {

  private final RoutingResult host;
  private final Units units;

  FamilyWords(RoutingResult host, Units units) {
    this.host = host;
    this.units = units;
  }

  List<String> shared(Template template, Outline plate, List<FamilyBuilder.Guest> all) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        names(all)
            + " share a curve (within "
            + thousandths(Math.max(0.001, deviation(all)))
            + "): make one template, that of "
            + host.part().name()
            + ", and draw the lines of each on it.");
    double longer = plate.bounds().width() - template.plate().bounds().width();
    double deeper = plate.bounds().height() - template.plate().bounds().height();
    if (longer > Families.TOLERANCE || deeper > Families.TOLERANCE) {
      sentences.add(
          "For all of them the plate is "
              + (longer > Families.TOLERANCE ? length(longer) + " longer" : "")
              + (longer > Families.TOLERANCE && deeper > Families.TOLERANCE ? " and " : "")
              + (deeper > Families.TOLERANCE ? length(deeper) + " deeper" : "")
              + " than "
              + host.part().name()
              + " alone needs.");
    }
    return sentences;
  }

  /** Rounded up, so that no more is promised than holds. */
  private String thousandths(double mm) {
    return units == Units.MM
        ? String.format(Locale.ROOT, "%.3f mm", Math.ceil(mm * 1000 - 1e-6) / 1000)
        : String.format(Locale.ROOT, "%.4f in", Math.ceil(mm / 25.4 * 10000 - 1e-6) / 10000);
  }

  private static double deviation(List<FamilyBuilder.Guest> all) {
    return all.stream().mapToDouble(guest -> guest.match().deviation()).max().orElse(0);
  }

  private static String names(List<FamilyBuilder.Guest> all) {
    List<String> names = all.stream().map(guest -> guest.result().part().name()).toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** How one part is laid on the template. */
  String of(FamilyBuilder.Guest guest, List<Setting> settings) {
    String name = guest.result().part().name();
    Setting first = settings.get(0);
    String lay = first.lay() == Setting.Lay.AS_DRAWN ? "" : ", " + first.lay().words();
    if (settings.size() == 1) {
      return name + ": one setting" + lay + ", its ends on the lines “" + name + ": end”.";
    }
    StringBuilder words =
        new StringBuilder(name + ": " + settings.size() + " settings" + lay + ". ");
    words.append("Lay it to the lines “" + name + " 1” and rout as far as the stop line");
    for (Setting setting : settings.subList(1, settings.size())) {
      double step = setting.slide() - settings.get(setting.number() - 2).slide();
      words.append(
          "; then slide it "
              + length(Math.abs(step))
              + (step > 0 ? " to the right" : " to the left")
              + " to the lines “"
              + name
              + " "
              + setting.number()
              + "” and rout the next stretch from its stop line");
    }
    words.append(".");
    if (settings.size() == 2 && isSymmetric(guest.result().part().contour())) {
      words.append(
          " Or stay at “" + name + " 1” and turn it over end for end, for its halves are alike.");
    }
    return words.toString();
  }

  private static boolean isSymmetric(Contour contour) {
    Similarity mirror = Setting.Lay.TURNED_END_FOR_END.turn();
    Course course = Course.of(contour).orElseThrow();
    double ends = course.straights()[0] - course.straights()[course.size()];
    return Math.abs(ends) <= Families.TOLERANCE
        && CurveMatch.in(course, contour.transformed(mirror).counterClockwise(), Families.TOLERANCE)
            .filter(match -> match.stretches().size() == 1)
            .isPresent();
  }

  List<String> cautions(List<FamilyBuilder.Guest> all) {
    List<String> sentences = new ArrayList<>();
    if (all.stream().anyMatch(guest -> guest.match().stretches().size() > 1)) {
      sentences.add(
          "Stop at the stop line and lift the router clear: beyond it the template turns away from"
              + " the part's line, and the bit would follow it into the part.");
    }
    return sentences;
  }

  /** Why two parts of one curve have a template each. */
  static String apart(RoutingResult first, RoutingResult other, Units units) {
    double line = Families.template(first).orElseThrow().offset();
    double wanted = 2 * (other.settings().cutter().radius() - line);
    return other.part().name()
        + " has the curve of "
        + first.part().name()
        + ", but the two cannot share a template: "
        + edge(first, units)
        + ", "
        + edge(other, units)
        + "."
        + (wanted > 0
            ? " With a follower of "
                + Length.print(wanted, units)
                + " for "
                + other.part().name()
                + " one template would serve both."
            : "");
  }

  /** Where a part's bit and follower want the template's edge. */
  private static String edge(RoutingResult result, Units units) {
    double offset = Families.template(result).orElseThrow().offset();
    Follower follower = result.settings().follower();
    String where =
        Math.abs(offset) <= Families.SAME_LINE
            ? "on the line"
            : Length.print(Math.abs(offset), units)
                + (offset < 0 ? " inside the line" : " outside the line");
    return "the "
        + Length.print(result.settings().cutter().diameter(), units)
        + " bit of "
        + result.part().name()
        + " with its "
        + Length.print(follower.diameter(), units)
        + " "
        + follower.kind()
        + " wants the edge "
        + where;
  }

  private String length(double mm) {
    return Length.print(mm, units);
  }
}
