package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.kit.Pairing;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.InlayFit;
import org.bearingline.routing.operation.InlayPlug;
import org.bearingline.routing.operation.InlayPocket;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.Tooling;

/** Reads an inlay: a pocket and the plug that fills it, from one opening with two collars. */
final class InlayReader {

  private InlayReader() {}

  static List<Operation> read(OperationFields f, String name) {
    f.allowFigureAnd(
        Set.of("bit", "cutting-length", "tube"),
        "inlay",
        "cavity",
        "depth",
        "thickness",
        "pocket-collar",
        "plug-collar",
        "plug-bit");
    Target target = f.opening(name);
    Cutter cutter = new Cutter(f.bit("bit"));
    Cutter plugCutter = f.has("plug-bit") ? new Cutter(f.bit("plug-bit")) : cutter;
    Pair collars = collars(f, cutter, plugCutter);
    double depth = f.length("depth");
    Head pocket = f.head(name + "-pocket", Face.A);
    Head plug = new Head(name + "-plug", pocket.face(), pocket.place(), pocket.handling());
    return List.of(
        new InlayPocket(
            pocket,
            new Tooling(cutter, f.optionalLength("cutting-length"), collars.pocket()),
            target,
            depth),
        new InlayPlug(
            plug,
            new Tooling(plugCutter, collars.plug()),
            target,
            pocket.name(),
            f.optionalLength("thickness").orElse(depth)));
  }

  private record Pair(Follower pocket, Follower plug) {}

  private static Pair collars(OperationFields f, Cutter cutter, Cutter plugCutter) {
    OperationTools tools = f.tools();
    Optional<Follower> pocket = given(f, "pocket-collar", cutter);
    Optional<Follower> plug = given(f, "plug-collar", plugCutter);
    if (pocket.isPresent() && plug.isPresent()) {
      return new Pair(pocket.get(), plug.get());
    }
    for (Follower.Collar large : tools.kit().collars()) {
      for (Follower.Collar small : tools.kit().collars()) {
        Pair pair = new Pair(pocket.orElse(large), plug.orElse(small));
        if (fits(cutter, plugCutter, pair)) {
          return pair;
        }
      }
    }
    throw f.problem(refusal(tools.kit(), cutter, plugCutter, pocket, plug));
  }

  private static Optional<Follower> given(OperationFields f, String field, Cutter cutter) {
    return f.has(field) ? Optional.of(f.tools().collar(f, field, cutter)) : Optional.empty();
  }

  private static boolean fits(Cutter cutter, Cutter plugCutter, Pair pair) {
    try {
      Pairing.check(cutter, pair.pocket());
      Pairing.check(plugCutter, pair.plug());
    } catch (Problem tooNarrow) {
      return false;
    }
    return InlayFit.of(new Tooling(cutter, pair.pocket()), new Tooling(plugCutter, pair.plug()))
        .fits();
  }

  private static String refusal(
      Kit kit,
      Cutter cutter,
      Cutter plugCutter,
      Optional<Follower> pocket,
      Optional<Follower> plug) {
    double apart = cutter.diameter() + plugCutter.diameter();
    String rule = "the pocket's collar must be " + Words.both(apart) + " wider than the plug's";
    if (plug.isPresent()) {
      return rule
          + ", so "
          + Words.both(plug.get().diameter() + apart)
          + ", which "
          + kit.name()
          + " does not have; name it as pocket-collar";
    }
    if (pocket.isPresent()) {
      return rule
          + ", so the plug's is "
          + Words.both(pocket.get().diameter() - apart)
          + ", which "
          + kit.name()
          + " does not have or the bit does not pass; name other collars";
    }
    return rule
        + ", and "
        + kit.name()
        + " has no such two that let the bit through; name pocket-collar and plug-collar";
  }
}
