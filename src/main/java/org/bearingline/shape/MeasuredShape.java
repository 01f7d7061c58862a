package org.bearingline.shape;

import java.util.Map;
import org.bearingline.part.Part;

/** A shape whose measures are known and whose conditions hold. */
public final class MeasuredShape {

  MeasuredShape() {}

  /** The finished piece; what cannot be drawn is a Problem with its place in the shape file. */
  public Part part() {
    throw new UnsupportedOperationException();
  }

  /** Each measure that is no choice, in the file's order: mm, degrees, or a number. */
  public Map<String, Double> values() {
    throw new UnsupportedOperationException();
  }

  /** Each measure as written, by the maker where set, else in the shape file; for the card. */
  public Map<String, String> settings() {
    throw new UnsupportedOperationException();
  }
}
