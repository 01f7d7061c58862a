package org.bearingline.routing.grain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How much of the routed edge is in each class.
 *
 * @param lengths mm of each class, all four present
 */
public record GrainShares(Map<GrainClass, Double> lengths) {

  public GrainShares {
    lengths = Map.copyOf(lengths);
    if (lengths.size() != GrainClass.values().length) {
      throw new IllegalArgumentException("every class of grain has a length, if only 0");
    }
  }

  static GrainShares of(List<GrainStretch> stretches) {
    Map<GrainClass, Double> lengths = new EnumMap<>(GrainClass.class);
    for (GrainClass grain : GrainClass.values()) {
      lengths.put(grain, 0.0);
    }
    for (GrainStretch stretch : stretches) {
      lengths.merge(stretch.grain(), stretch.length(), Double::sum);
    }
    return new GrainShares(lengths);
  }

  /** mm of routed edge of that class. */
  public double length(GrainClass grain) {
    return lengths.get(grain);
  }

  /** mm of routed edge in all. */
  public double total() {
    double sum = 0;
    for (GrainClass grain : GrainClass.values()) {
      sum += length(grain);
    }
    return sum;
  }

  /** The share of a class, 0 to 1; 0 where nothing is routed. */
  public double share(GrainClass grain) {
    double total = total();
    return total == 0 ? 0 : length(grain) / total;
  }
}
