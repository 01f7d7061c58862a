package org.bearingline.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bearingline.job.CornerMarksJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the page of corner marks. */
@Command(
    name = "corner-marks",
    mixinStandardHelpOptions = true,
    description = "Write a page of corner marks that tell the true size of a template in a photo.",
    footer = {
      "",
      "Examples:",
      "  bearingline corner-marks --paper A4 --into out",
      "  bearingline corner-marks --paper Letter --printed 99.4,99.8 --into out",
    })
final class CornerMarksCommand implements Callable<Integer> {

  @Mixin private PaperOptions paper;

  @Option(
      names = "--into",
      paramLabel = "DIR",
      required = true,
      description = "the folder to write into; made where missing")
  private Path into;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String name = paper.paper == null ? "Letter" : paper.paper;
    CornerMarksJob.run(name, Optional.ofNullable(paper.printed), into)
        .forEach(spec.commandLine().getOut()::println);
    return 0;
  }
}
