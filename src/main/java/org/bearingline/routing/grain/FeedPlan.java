package org.bearingline.routing.grain;

import java.util.List;
import java.util.Objects;
import org.bearingline.length.Units;

/**
 * In which order and from which face the edges of a part are routed: the end grain first, then what
 * is cut clean from the first face, then, after turning the work over, what would have torn.
 * Turning reverses the travel along an edge, so that g·n changes its sign there; only end grain is
 * bad from both faces. An edge that does not go through the wood is worked from its own face alone:
 * what tears there comes last, in light passes. Where so little would have torn that it is hardly
 * worth turning the work over, that too is routed from the first face.
 *
 * @param first the edges as read from the first face, without those it does not reach
 * @param turned the same with the work turned over
 * @param steps what to do, in order; empty where nothing is routed
 * @param badFromBothFaces what no face cuts clean: end grain, and what tears on edges that do not
 *     go through; in travel from the face it is worked from
 * @param sentences for the card: the shares of each class, then what the plan asks for
 */
public record FeedPlan(
    GrainReading first,
    GrainReading turned,
    List<FeedStep> steps,
    List<GrainStretch> badFromBothFaces,
    List<String> sentences) {

  public FeedPlan {
    Objects.requireNonNull(first);
    Objects.requireNonNull(turned);
    steps = List.copyOf(steps);
    badFromBothFaces = List.copyOf(badFromBothFaces);
    sentences = List.copyOf(sentences);
  }

  /**
   * The plan for a router that comes first as {@code wanted} says. Where that face would cut
   * nothing clean and the other would, the work begins from the other, and a sentence says so.
   */
  public static FeedPlan of(
      List<GrainEdge> edges, GrainSettings settings, Approach wanted, Units units) {
    return new FeedPlanner(edges, settings, units).plan(wanted);
  }

  /** Whether the work has to be turned over. */
  public boolean turnsWork() {
    return steps.stream().anyMatch(FeedStep::turnsWork);
  }

  /** The backing blocks of all steps. */
  public List<BackingBlock> blocks() {
    return steps.stream().flatMap(step -> step.blocks().stream()).toList();
  }
}
