package org.bearingline.routing.setup;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What an operation asks of the template's thickness; mm.
 *
 * @param least the thinnest that keeps the follower on the template at every pass; empty where the
 *     cutting length or the tube's length would have to be known
 * @param given as chosen; empty where not chosen yet
 * @param serves whether the given one is thick enough; true where either is not known
 */
public record TemplateThickness(OptionalDouble least, OptionalDouble given, boolean serves) {

  public TemplateThickness {
    Objects.requireNonNull(least);
    Objects.requireNonNull(given);
  }
}
