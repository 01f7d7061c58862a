package org.bearingline.cli;

import java.io.PrintWriter;
import java.io.Writer;

/**
 * Runs the usual commands once, so that the build can write the classes they load into a class-data
 * archive. Not a command of its own.
 */
public final class Rehearsal {

  private Rehearsal() {}

  /**
   * @param args {@code files} for the commands that write files or {@code answers} for those that
   *     only answer, and one folder for what is written
   */
  public static void main(String[] args) {
    if (args[0].equals("files")) {
      run("layout", "cloud-lift-rail", "--into", args[1]);
      run("layout", "drop-in-plate", "--bit", "3/8in", "--collar", "5/8in", "--into", args[1]);
      return;
    }
    run("reach", "cloud-lift-rail", "--set", "radius=1/2in", "--bit", "1-1/4in");
    run("reach", "cloud-lift-rail", "--json");
    run("shapes");
    run("kit");
  }

  private static void run(String... args) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Main.getReady(args[0]);
    Main.run(args, nowhere, nowhere);
  }
}
