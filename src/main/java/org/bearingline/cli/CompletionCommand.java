package org.bearingline.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a completion script for bash and zsh. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = "Print a script that completes commands and options in bash or zsh.",
    footer = {
      "",
      "Examples:",
      "  source <(bearingline completion)",
      "  bearingline completion > ~/.bearingline-completion",
    })
final class CompletionCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(AutoComplete.bash("bearingline", CommandTree.whole()));
    return 0;
  }
}
