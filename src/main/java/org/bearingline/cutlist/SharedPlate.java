package org.bearingline.cutlist;

import java.util.Objects;
import org.bearingline.outline.Bounds;

/**
 * A template's plate that serves several parts.
 *
 * @param name of the template
 * @param box round it, mm
 */
public record SharedPlate(String name, Bounds box) {

  public SharedPlate {
    Objects.requireNonNull(name);
    Objects.requireNonNull(box);
  }
}
