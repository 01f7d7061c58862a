package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.bearingline.job.GettingReady;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.web.Browser;
import org.bearingline.web.PageServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the page on which a part is laid out by looking at it. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    description =
        "Open a page in the browser that shows the template change as the measures change. It is"
            + " served on this machine alone; Ctrl-C ends it.",
    footer = {"", "Examples:", "  bearingline page", "  bearingline page --port 8642 --no-open"})
final class PageCommand implements Callable<Integer> {

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "port to listen on, so that bookmarks stay good (default: a free one)")
  private String port;

  @Option(names = "--no-open", description = "print the address only, open no browser")
  private boolean noOpen;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    try (PageServer server = PageServer.start(port(), defect -> tell(err, defect))) {
      Runtime.getRuntime().addShutdownHook(new Thread(server::close));
      out.println(server.address());
      out.println("Ctrl-C ends it.");
      out.flush();
      GettingReady.toShow();
      if (!noOpen && !Browser.open(server.address())) {
        out.println("No browser could be opened; copy the address into one.");
        out.flush();
      }
      server.join();
    }
    return 0;
  }

  private int port() {
    if (port == null) {
      return 0;
    }
    if (!port.matches("[1-9][0-9]{0,4}")) {
      throw new Problem(
          Place.option("--port"), "“" + port + "” is no port; give a number from 1 to 65535");
    }
    return Integer.parseInt(port);
  }

  private static void tell(PrintWriter err, Throwable defect) {
    synchronized (err) {
      err.println("bearingline: a defect in the program, please report it with what you did:");
      defect.printStackTrace(err);
      err.flush();
    }
  }
}
