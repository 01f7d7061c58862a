package org.bearingline.cli;

import java.util.concurrent.Callable;
import org.bearingline.job.KeepJob;
import org.bearingline.length.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps a drawing as a shape file. */
@Command(
    name = "keep",
    mixinStandardHelpOptions = true,
    description =
        "Clean a drawing, or trace a photo or scan of a template, and keep it as a shape file of lines and arcs, with a preview that shows"
            + " what was drawn, what became of it and what is wrong. The kept shape can be laid out"
            + " in another length: curves stay, straights stretch.",
    footer = {
      "",
      "Examples:",
      "  bearingline keep bracket.svg --width 12in --into out",
      "  bearingline keep rail.jpg --dpi 300 --symmetric left-right --into out",
      "  bearingline layout out/bracket.yaml --set length=14in --into out",
    })
final class KeepCommand implements Callable<Integer> {

  @Parameters(
      index = "0",
      paramLabel = "SOURCE",
      description = "a drawing (.svg, .dxf), or a photo or scan of a template (.png, .jpg, .tif)")
  private String source;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "DIR",
      description = "folder to write into; it is made where there is none")
  private String into;

  @Mixin private DrawingOptions drawing;

  @Mixin private PictureOptions picture;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    KeepJob.run(
            source,
            drawing.wishes(),
            picture.wishes(),
            units.chosen().orElse(Units.INCH),
            IntoFolder.of(into),
            Progress.on(spec))
        .forEach(spec.commandLine().getOut()::println);
    return 0;
  }
}
