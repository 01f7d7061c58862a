package org.bearingline.kit;

import java.nio.file.Path;
import java.util.Comparator;
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
    bits = sorted(bits, Comparator.comparingDouble(Bit::diameter));
    bearings = sorted(bearings, Comparator.comparingDouble(Follower.Bearing::diameter));
    collars = sorted(collars, Comparator.comparingDouble(Follower.Collar::diameter));
    blades = sorted(blades, Comparator.comparingDouble(SawBlade::width));
  }

  /** The small kit that comes with the program: sizes met in every shop. */
  public static Kit usual() {
    return UsualKit.read();
  }

  /** The kit in a YAML file; fails with a Problem that names line and column. */
  public static Kit read(Path file) {
    return KitFile.read(file);
  }

  /** The kit in a text; the name of its file stands in messages. */
  public static Kit read(String fileName, String text) {
    return KitFile.read(fileName, text);
  }

  /**
   * The follower with what the kit knows of it: a collar of which nothing was given takes it from
   * the kit's collar of the same outside diameter.
   */
  public Follower known(Follower follower) {
    if (follower instanceof Follower.Collar collar
        && collar.insideDiameter().isEmpty()
        && collar.tube().isEmpty()) {
      for (Follower.Collar owned : collars) {
        if (Math.abs(owned.diameter() - collar.diameter()) < SAME) {
          return owned;
        }
      }
    }
    return follower;
  }

  /** Two sizes nearer than this are one size written in different units; mm. */
  private static final double SAME = 0.01;

  private static <T> List<T> sorted(List<T> tools, Comparator<T> order) {
    return tools.stream().sorted(order).toList();
  }
}
