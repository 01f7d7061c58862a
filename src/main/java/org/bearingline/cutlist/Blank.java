package org.bearingline.cutlist;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A rectangle to be sawn out, from which a part or a template is made.
 *
 * @param name of what is made from it
 * @param purpose part or template
 * @param length mm, more than 0; along the fibres where grain matters
 * @param width mm, more than 0
 * @param thickness mm when worked; empty where not known
 * @param material such as a species; empty where any will do
 * @param quantity how many, 1 or more
 * @param mayTurn whether it may lie across the board: false where the grain must run along it
 */
public record Blank(
    String name,
    Purpose purpose,
    double length,
    double width,
    OptionalDouble thickness,
    Optional<String> material,
    int quantity,
    boolean mayTurn) {

  public Blank {
    Objects.requireNonNull(name);
    Objects.requireNonNull(purpose);
    Objects.requireNonNull(material);
    Sizes.check("length", length);
    Sizes.check("width", width);
    thickness.ifPresent(mm -> Sizes.check("thickness", mm));
    Sizes.checkCount(quantity);
  }

  /** Area of one, mm². */
  public double area() {
    return length * width;
  }
}
