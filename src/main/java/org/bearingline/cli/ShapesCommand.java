package org.bearingline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.bearingline.job.ShapeListing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the shapes, or the measures of one. */
@Command(
    name = "shapes",
    mixinStandardHelpOptions = true,
    description = "List the shapes, or the measures that one of them takes.",
    footer = {"", "Examples:", "  bearingline shapes", "  bearingline shapes cloud-lift-rail"})
final class ShapesCommand implements Callable<Integer> {

  @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "one shape's name")
  private String name;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (name == null) {
      Table.print(spec, List.of("shape", "what it is"), ShapeListing.all());
      return 0;
    }
    spec.commandLine().getOut().println(ShapeListing.about(name));
    Table.print(
        spec, List.of("measure", "default", "range", "what it is"), ShapeListing.measures(name));
    return 0;
  }
}
