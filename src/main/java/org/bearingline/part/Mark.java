package org.bearingline.part;

import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;

/** A line or point that the maker transfers from the template to the work. */
public sealed interface Mark {

  String label();

  Mark transformed(Similarity similarity);

  /** A centre line, for setting out and for turning the template over. */
  record CentreLine(Point from, Point to, String label) implements Mark {
    @Override
    public CentreLine transformed(Similarity s) {
      return new CentreLine(s.apply(from), s.apply(to), label);
    }
  }

  /** A line where a tenon's shoulder or another part's edge falls. */
  record ShoulderLine(Point from, Point to, String label) implements Mark {
    @Override
    public ShoulderLine transformed(Similarity s) {
      return new ShoulderLine(s.apply(from), s.apply(to), label);
    }
  }

  /**
   * A hole to drill.
   *
   * @param at its centre
   * @param diameter mm, more than 0
   */
  record DrillCentre(Point at, double diameter, String label) implements Mark {
    @Override
    public DrillCentre transformed(Similarity s) {
      return new DrillCentre(s.apply(at), diameter * s.factor(), label);
    }
  }
}
