package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bearingline.length.Units;

/**
 * Every routed edge of a part, cut where the fibres meet it in another way.
 *
 * @param settings direction of the fibres and limits
 * @param approach from which side the router comes
 * @param stretches edge by edge, each in the order of travel
 * @param shares how much is in each class
 */
public record GrainReading(
    GrainSettings settings, Approach approach, List<GrainStretch> stretches, GrainShares shares) {

  public GrainReading {
    Objects.requireNonNull(settings);
    Objects.requireNonNull(approach);
    stretches = List.copyOf(stretches);
    Objects.requireNonNull(shares);
  }

  /** Reads the edges; those that are sawn all round give no stretch. */
  public static GrainReading of(List<GrainEdge> edges, GrainSettings settings, Approach approach) {
    List<GrainStretch> stretches = new ArrayList<>();
    for (GrainEdge edge : edges) {
      stretches.addAll(EdgeReader.read(edge, settings, approach));
    }
    return new GrainReading(settings, approach, stretches, GrainShares.of(stretches));
  }

  /** What a maker should know of edges that do not go through; none where nothing is routed. */
  public List<String> blindSentences(Units units) {
    return stretches.isEmpty() ? List.of() : new FeedWords(shares, units).blind(approach);
  }
}
