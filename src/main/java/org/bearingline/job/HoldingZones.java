package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.bearingline.length.Units;
import org.bearingline.outline.Path;
import org.bearingline.routing.CutterRun;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;
import org.bearingline.routing.setup.ClampSettings;
import org.bearingline.routing.setup.ClampZones;

/**
 * Where clamps and tape may stand on one plate while a router in the hands passes; worked out when
 * first asked for, and then kept for every drawing. At the table nothing stands: the work moves.
 */
final class HoldingZones implements Supplier<Optional<ClampZones>> {

  private final Optional<Template> template;
  private final List<Path> paths = new ArrayList<>();
  private final ClampSettings settings;
  private final Units units;
  private Optional<ClampZones> zones;

  /**
   * For the runs of the bit along the edges of a plate.
   *
   * @param atTable names of the edges that are worked at a table
   */
  HoldingZones(
      Optional<Template> template, RoutingResult result, Set<String> atTable, Wishes wishes) {
    this.template = template;
    this.settings = Settings.clamps(wishes);
    this.units = Settings.units(wishes);
    for (CutterRun run : result.cutterCentre()) {
      boolean here = template.map(t -> t.serves().contains(run.edge())).orElse(false);
      if (here && !atTable.contains(run.edge())) {
        paths.add(run.path());
      }
    }
  }

  /** For a part that names no operations. */
  static HoldingZones plain(WorkedPart worked, Optional<Template> template) {
    RoutingResult result = worked.result();
    boolean table = result.settings().station() == Station.TABLE;
    Set<String> edges =
        table
            ? result.cutterCentre().stream().map(CutterRun::edge).collect(Collectors.toSet())
            : Set.of();
    return new HoldingZones(template, result, edges, worked.order().wishes());
  }

  @Override
  public synchronized Optional<ClampZones> get() {
    if (zones == null) {
      zones =
          template
              .filter(plate -> !paths.isEmpty())
              .map(plate -> ClampZones.of(plate.plate(), paths, settings, units));
    }
    return zones;
  }
}
