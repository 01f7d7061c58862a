package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;

/** Tells on standard error what takes long. */
final class Progress {

  private Progress() {}

  static Consumer<String> on(CommandSpec spec) {
    PrintWriter err = spec.commandLine().getErr();
    return told -> {
      err.println("bearingline: " + told);
      err.flush();
    };
  }
}
