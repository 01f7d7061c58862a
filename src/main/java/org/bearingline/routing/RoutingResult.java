package org.bearingline.routing;

import java.util.List;
import java.util.Optional;
import org.bearingline.kit.Bit;
import org.bearingline.part.Part;

/**
 * Everything routing needs of one part.
 *
 * @param part the part
 * @param settings what the maker chose
 * @param templates the plates, in the order they are used; empty where nothing is routed
 * @param cutterCentre the centre's paths along routed edges, run-out included
 * @param reach what the cutter makes and leaves
 * @param largestCutter the fattest cutter that leaves nothing
 * @param bits which bits of the kit leave nothing
 * @param roughLine the saw line; empty where no outer edge is routed and nothing is cut through
 * @param proof how true the templates are; empty where nothing is routed
 * @param passes depths, where a thickness or depth is known
 * @param feed arrows along routed edges
 * @param cautions sentences for the card, the weightiest first
 */
public record RoutingResult(
    Part part,
    RoutingSettings settings,
    List<Template> templates,
    List<CutterRun> cutterCentre,
    Reach reach,
    LargestCutter largestCutter,
    List<Bit> bits,
    Optional<RoughLine> roughLine,
    Optional<Proof> proof,
    Optional<Passes> passes,
    List<FeedArrow> feed,
    List<String> cautions) {

  public RoutingResult {
    templates = List.copyOf(templates);
    cutterCentre = List.copyOf(cutterCentre);
    bits = List.copyOf(bits);
    feed = List.copyOf(feed);
    cautions = List.copyOf(cautions);
  }

  /** The same with other arrows. */
  public RoutingResult withFeed(List<FeedArrow> arrows) {
    return with(templates, passes, arrows);
  }

  /** The same in other passes. */
  public RoutingResult withPasses(Passes others) {
    return with(templates, Optional.of(others), feed);
  }

  /** The same with other plates. */
  public RoutingResult withTemplates(List<Template> others) {
    return with(others, passes, feed);
  }

  private RoutingResult with(
      List<Template> plates, Optional<Passes> depths, List<FeedArrow> arrows) {
    return new RoutingResult(
        part,
        settings,
        plates,
        cutterCentre,
        reach,
        largestCutter,
        bits,
        roughLine,
        proof,
        depths,
        arrows,
        cautions);
  }
}
