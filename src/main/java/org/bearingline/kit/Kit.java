package org.bearingline.kit;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * The tools a maker owns.
 *
 * @param name how the kit is called in sentences, such as "the usual kit" or the file's name
 * @param bits by growing diameter
 * @param bearings by growing diameter
 * @param collars by growing diameter
 * @param blades by growing width
 */
public record Kit(
    String name,
    List<Bit> bits,
    List<Follower.Bearing> bearings,
    List<Follower.Collar> collars,
    List<SawBlade> blades) {

  public Kit {
    Objects.requireNonNull(name);
    bits = List.copyOf(bits);
    bearings = List.copyOf(bearings);
    collars = List.copyOf(collars);
    blades = List.copyOf(blades);
  }

  /** The small kit that comes with the program: sizes met in every shop. */
  public static Kit usual() {
    throw new UnsupportedOperationException();
  }

  /** The kit in a YAML file; fails with a Problem that names line and column. */
  public static Kit read(Path file) {
    throw new UnsupportedOperationException();
  }
}
