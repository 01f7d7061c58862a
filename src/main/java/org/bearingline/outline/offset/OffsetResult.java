package org.bearingline.outline.offset;

import java.util.Optional;
import org.bearingline.outline.Region;

/**
 * An offset or closing with what is known of its truth.
 *
 * @param region the pieces; may be empty
 * @param tolerance mm the checks held to: about 1e-6 for the exact way, more after the fall-back
 * @param caution what the maker must be told, empty for the exact way
 */
public record OffsetResult(Region region, double tolerance, Optional<String> caution) {

  public boolean isExact() {
    return caution.isEmpty();
  }
}
