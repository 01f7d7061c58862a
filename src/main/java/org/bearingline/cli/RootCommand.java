package org.bearingline.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The name by itself: shows what there is. */
@Command(
    name = "bearingline",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    description = "Full-size routing templates from a shape, a bit and what it follows.",
    footer = {
      "",
      "Examples:",
      "  bearingline layout cloud-lift-rail --bit 1/2in --into out",
      "  bearingline reach cloud-lift-rail --set radius=1/2in --bit 1-1/4in",
      "",
      "Lengths: 3/4in, 1-1/2in, 6', 0.75in, 19mm, 2.5cm.",
    })
final class RootCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return 0;
  }
}
