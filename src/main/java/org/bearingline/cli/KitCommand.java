package org.bearingline.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bearingline.job.KitListing;
import org.bearingline.length.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the tools of a kit. */
@Command(
    name = "kit",
    mixinStandardHelpOptions = true,
    description = "List the bits, bearings, collars and blades of the usual kit or of your own.",
    footer = {"", "Examples:", "  bearingline kit", "  bearingline kit my-kit.yaml --units mm"})
final class KitCommand implements Callable<Integer> {

  @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "your kit file")
  private Path file;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    KitListing kit = KitListing.of(Optional.ofNullable(file), units.chosen().orElse(Units.INCH));
    PrintWriter out = spec.commandLine().getOut();
    out.println(kit.name());
    out.println();
    Table.print(spec, List.of("bit", "cutting length", "shank", "bearing", "at most"), kit.bits());
    out.println();
    Table.print(spec, List.of("follower", "outside", "inside"), kit.followers());
    out.println();
    Table.print(spec, List.of("saw blade", "tightest curve"), kit.blades());
    if (file == null) {
      out.println();
      Table.print(spec, List.of("paper", "width", "height"), kit.papers());
      out.println();
      Table.print(spec, List.of("figures", "source"), kit.sources());
    }
    return 0;
  }
}
