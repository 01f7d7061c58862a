package org.bearingline.cli;

import java.util.concurrent.Callable;
import org.bearingline.job.SheetsJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the full-size sheets alone. */
@Command(
    name = "sheets",
    mixinStandardHelpOptions = true,
    description = "Write only the full-size sheets, for another paper or a corrected print.",
    footer = {
      "",
      "Examples:",
      "  bearingline sheets cloud-lift-rail --paper A3 --into out",
      "  bearingline sheets cloud-lift-rail --printed 99.4,99.8 --into out",
    })
final class SheetsCommand implements Callable<Integer> {

  @Mixin private TemplateOptions options;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    SheetsJob.run(
            options.source.source, Requests.layout(options), options.into(), Progress.on(spec))
        .forEach(spec.commandLine().getOut()::println);
    return 0;
  }
}
