package org.bearingline.cli;

import java.util.concurrent.Callable;
import org.bearingline.job.LayoutJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the templates of a source with all that belongs to them. */
@Command(
    name = "layout",
    mixinStandardHelpOptions = true,
    description =
        "Write the template of each part as SVG, DXF and full-size sheets, with a card for the shop"
            + " wall, a preview and a report.",
    footer = {
      "",
      "Examples:",
      "  bearingline layout cloud-lift-rail --bit 1/2in --into out",
      "  bearingline layout drop-in-plate --bit 3/8in --collar 5/8in --into out",
    })
final class LayoutCommand implements Callable<Integer> {

  @Mixin private TemplateOptions options;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    LayoutJob.run(
            options.source.source, Requests.layout(options), options.into(), Progress.on(spec))
        .forEach(spec.commandLine().getOut()::println);
    return 0;
  }
}
