package org.bearingline.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Bit;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.outline.Outline;
import org.bearingline.part.Cavity;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;

/** Works out everything that pattern routing a part needs. */
public final class Routing {

  private Routing() {}

  /**
   * The whole of it.
   *
   * @throws org.bearingline.problem.Problem where the tools cannot work the part: a collar no wider
   *     than its bit, a bit wider than an opening, a template of which nothing is left or that
   *     falls apart
   */
  public static RoutingResult workOut(Part part, RoutingSettings wanted, Kit kit) {
    RoutingSettings settings = wanted.withFollower(kit.known(wanted.follower()));
    List<String> cautions = new ArrayList<>(Pairing.check(settings.cutter(), settings.follower()));
    List<RoutedEdge> edges = RoutedEdge.all(part, settings.runOut(), settings.margin());
    Reach reach = Reach.of(edges, settings.cutter(), settings.follower());
    cautions.addAll(reach.cautions());
    cautions.addAll(OvercutSentence.of(reach, settings.units()));
    TemplateConstruction.Built built = TemplateConstruction.build(part, edges, settings);
    LargestCutter largest = LargestCutter.of(part);
    cautions.addAll(Cautions.of(part, settings, kit));
    List<FeedArrow> feed = new ArrayList<>();
    for (CutterRun run : built.cutterCentre()) {
      feed.addAll(Feed.along(run.path(), run.edge()));
    }
    return new RoutingResult(
        part,
        settings,
        built.templates(),
        built.cutterCentre(),
        reach,
        largest,
        fitting(kit, largest),
        RoughLineMaker.of(part, settings),
        proof(part, built.templates(), settings, reach),
        passes(part, settings),
        feed,
        cautions);
  }

  private static List<Bit> fitting(Kit kit, LargestCutter largest) {
    List<Bit> bits = new ArrayList<>();
    for (Bit bit : kit.bits()) {
      if (largest.allows(bit.diameter())) {
        bits.add(bit);
      }
    }
    return bits;
  }

  private static Optional<Proof> proof(
      Part part, List<Template> templates, RoutingSettings settings, Reach reach) {
    if (templates.isEmpty()) {
      return Optional.empty();
    }
    List<Outline> named = new ArrayList<>();
    for (Leftover leftover : reach.leftovers()) {
      named.add(leftover.piece());
    }
    for (Overcut overcut : reach.overcuts()) {
      named.add(overcut.piece());
    }
    return Optional.of(Proof.of(part, templates, settings.cutter(), settings.follower(), named));
  }

  /** Through the stock where something goes through it, else down to the deepest cavity. */
  private static Optional<Passes> passes(Part part, RoutingSettings settings) {
    OptionalDouble depth = goesThrough(part) ? settings.thickness() : OptionalDouble.empty();
    if (depth.isEmpty()) {
      for (Cavity cavity : part.cavities()) {
        if (cavity.depth().isPresent() && cavity.depth().getAsDouble() > depth.orElse(0)) {
          depth = cavity.depth();
        }
      }
    }
    return depth.isPresent()
        ? Optional.of(Passes.through(depth.getAsDouble(), settings.cutter(), settings.units()))
        : Optional.empty();
  }

  private static boolean goesThrough(Part part) {
    if (part.contour().kinds().contains(EdgeKind.ROUTED)) {
      return true;
    }
    for (Cavity cavity : part.cavities()) {
      if (cavity.kind() == Cavity.Kind.THROUGH) {
        return true;
      }
    }
    return false;
  }
}
