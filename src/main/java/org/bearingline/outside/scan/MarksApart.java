package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What a maker measured between the crosses of loose corner marks. Two distances are enough, since
 * each mark shows its own square; more make it surer.
 *
 * @param distances two to six, each pair of marks at most once
 */
public record MarksApart(List<Distance> distances) {

  static final Place OPTION = Place.option("--marks-apart");

  /**
   * @param from one mark
   * @param to another
   * @param mm 20 to 20,000
   */
  public record Distance(MarkLetter from, MarkLetter to, double mm) {
    public Distance {
      if (from == to) {
        throw new Problem(OPTION, "a distance is between two marks, such as A-B=600mm");
      }
      if (!(mm >= 20 && mm <= 20_000)) {
        throw new Problem(OPTION, "marks are 20 mm to 20 m apart, cross to cross");
      }
    }
  }

  public MarksApart {
    distances = List.copyOf(distances);
    if (distances.size() < 2) {
      throw new Problem(
          OPTION,
          "give two distances or more, such as 600mm,300mm for A to B and B to C, or"
              + " A-B=600mm,B-C=300mm,A-C=671mm");
    }
    List<Set<MarkLetter>> pairs = new ArrayList<>();
    for (Distance distance : distances) {
      Set<MarkLetter> pair = EnumSet.of(distance.from, distance.to);
      if (pairs.contains(pair)) {
        throw new Problem(
            OPTION,
            "the distance from "
                + distance.from
                + " to "
                + distance.to
                + " is given twice; give each once");
      }
      pairs.add(pair);
    }
  }

  /** A to B and B to C, mm. */
  public static MarksApart rectangle(double across, double along) {
    return new MarksApart(
        List.of(
            new Distance(MarkLetter.A, MarkLetter.B, across),
            new Distance(MarkLetter.B, MarkLetter.C, along)));
  }
}
