package org.bearingline.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Units;

/**
 * What the maker asked for, in a command's options, a job file or one of its parts; empty where
 * nothing was said. All lengths in mm.
 *
 * @param measures measures by name, as written
 * @param bits cutter diameters; {@code layout} takes one, {@code reach} any number
 * @param bearing follower diameter, when it is a bearing of another size than the bit
 * @param collar follower diameter, when it is a collar on the router's base
 * @param kit the maker's kit file
 * @param thickness of the stock
 * @param allowance least distance of the saw line from the part
 * @param sawBlade width of the blade
 * @param runOut how far the template goes on past the ends of the work
 * @param deepestPass the maker's own limit for the depth of a pass
 * @param router where the router is, as written
 * @param routerBase diameter of its base
 * @param kerf width of the cut that makes the template, for the DXF only
 * @param paper a paper's name
 * @param margin what the printer leaves white at every side of the paper
 * @param printed what the two 100 mm bars of an earlier print measured, as written
 * @param units that figures are shown in
 * @param drawn of a drawn outline
 */
public record Wishes(
    Map<String, String> measures,
    List<Double> bits,
    OptionalDouble bearing,
    OptionalDouble collar,
    Optional<WrittenFile> kit,
    OptionalDouble thickness,
    OptionalDouble allowance,
    OptionalDouble sawBlade,
    OptionalDouble runOut,
    OptionalDouble deepestPass,
    Optional<String> router,
    OptionalDouble routerBase,
    OptionalDouble kerf,
    Optional<String> paper,
    OptionalDouble margin,
    Optional<String> printed,
    Optional<Units> units,
    DrawnWishes drawn) {

  /** Nothing said. */
  public static final Wishes NONE =
      new Wishes(
          Map.of(),
          List.of(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          DrawnWishes.NONE);

  public Wishes {
    measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    bits = List.copyOf(bits);
  }

  /** These wishes, and where they are silent the more general ones. */
  public Wishes over(Wishes general) {
    Map<String, String> merged = new LinkedHashMap<>(general.measures);
    merged.putAll(measures);
    // A bit named here brings its own follower: the general one was meant for another bit.
    boolean ownTool = !bits.isEmpty() || bearing.isPresent() || collar.isPresent();
    return new Wishes(
        merged,
        bits.isEmpty() ? general.bits : bits,
        ownTool ? bearing : general.bearing,
        ownTool ? collar : general.collar,
        kit.or(() -> general.kit),
        first(thickness, general.thickness),
        first(allowance, general.allowance),
        first(sawBlade, general.sawBlade),
        first(runOut, general.runOut),
        first(deepestPass, general.deepestPass),
        router.or(() -> general.router),
        first(routerBase, general.routerBase),
        first(kerf, general.kerf),
        paper.or(() -> general.paper),
        first(margin, general.margin),
        printed.or(() -> general.printed),
        units.or(() -> general.units),
        drawn.over(general.drawn));
  }

  private static OptionalDouble first(OptionalDouble own, OptionalDouble general) {
    return own.isPresent() ? own : general;
  }
}
