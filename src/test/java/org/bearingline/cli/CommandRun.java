package org.bearingline.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One command run in this process.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record CommandRun(int status, String out, String err) {

  static CommandRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    return new CommandRun(status, out.toString(), err.toString());
  }
}
