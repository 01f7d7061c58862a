package org.bearingline.oracle;

import org.bearingline.outline.Region;

/**
 * A region to work on and a radius to do it with.
 *
 * @param name the family it comes from
 * @param region a valid region
 * @param radius mm, more than 0
 */
public record Case(String name, Region region, double radius) {

  Case with(Region other) {
    return new Case(name, other, radius);
  }

  /** Java code, so that a failure can be pasted into a test. */
  @Override
  public String toString() {
    return name + ", radius " + radius + "\n" + JavaCode.of(region);
  }
}
