package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.bearingline.job.ReachJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says what bits can and cannot reach. */
@Command(
    name = "reach",
    mixinStandardHelpOptions = true,
    description = "Say which places of a part a bit cannot reach, before any wood is cut.",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:every bit asked for leaves nothing",
      "1:something cannot be reached",
      "2:the input is wrong"
    },
    footer = {
      "",
      "Examples:",
      "  bearingline reach cloud-lift-rail --bit 3/4in",
      "  bearingline reach cloud-lift-rail --set radius=1/2in --bit 1-1/4in --json",
    })
final class ReachCommand implements Callable<Integer> {

  @Mixin private SourceOptions source;

  @Mixin private FollowerOptions follower;

  @Mixin private UnitsOption units;

  @Option(
      names = "--bit",
      paramLabel = "DIAMETER",
      description = "cutting diameter; may be given again (default: every bit of the kit)")
  private List<String> bits = new ArrayList<>();

  @Option(names = "--json", description = "print the figures as JSON, lengths in mm")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    ReachJob job =
        ReachJob.of(
            source.source, Requests.reach(source, bits, follower, units), Progress.on(spec));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(job.json());
    } else {
      job.lines().forEach(out::println);
    }
    return job.isComplete() ? 0 : 1;
  }
}
