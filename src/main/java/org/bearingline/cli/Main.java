package org.bearingline.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.bearingline.job.GettingReady;

/** The program's door: runs one command and ends with its exit status. */
public final class Main {

  private Main() {}

  public static void main(String[] args) {
    getReady(args.length == 0 ? "" : args[0]);
    // Written straight to the descriptors: the platform's charset must not spoil ″ or °.
    PrintWriter out = writer(FileDescriptor.out);
    PrintWriter err = writer(FileDescriptor.err);
    int status = run(args, out, err);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** Begins on a second core what a command will want soon. */
  static void getReady(String command) {
    // What libraries log goes nowhere, for a command says itself what matters; and where the log is
    // named, it is not looked for in every jar.
    System.setProperty(
        "org.apache.commons.logging.LogFactory", "org.apache.commons.logging.impl.LogFactoryImpl");
    System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
    switch (command) {
      case "layout" -> {
        GettingReady.toPaint();
        GettingReady.toReach();
      }
      case "reach", "sheets" -> GettingReady.toReach();
      default -> {
        // The rest is quick by itself.
      }
    }
  }

  /**
   * Runs one command in this process.
   *
   * @return 0 done, 1 done but something cannot be reached ({@code reach} only), 2 the input is
   *     wrong
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return CommandTree.run(args, out, err);
  }

  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
