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
   * @param args one folder for what the commands write
   */
  public static void main(String[] args) {
    String into = args[0];
    run("layout", "cloud-lift-rail", "--into", into);
    run("layout", "drop-in-plate", "--bit", "3/8in", "--collar", "5/8in", "--into", into);
    run("reach", "cloud-lift-rail", "--set", "radius=1/2in", "--bit", "1-1/4in");
    run("reach", "cloud-lift-rail", "--json");
    run("shapes");
    run("kit");
  }

  private static void run(String... args) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Main.run(args, nowhere, nowhere);
  }
}
