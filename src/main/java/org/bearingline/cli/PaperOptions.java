package org.bearingline.cli;

import picocli.CommandLine.Option;

/** What the sheets are printed on. */
final class PaperOptions {

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description =
          "A4, A3, A2, A1, A0, Letter, Legal, Tabloid, ANSI-C, ANSI-D, ANSI-E, 11inx17in,"
              + " roll:24in (default: Letter, or A4 with --units mm)")
  String paper;

  @Option(
      names = "--margin",
      paramLabel = "LENGTH",
      description =
          "what the printer leaves white at every side of the paper (default: 1/4in, and 1/2in at"
              + " the foot)")
  String margin;

  @Option(
      names = "--printed",
      paramLabel = "X,Y",
      description =
          "what the two 100 mm bars of an earlier print measured, as in 99.4,99.8; the next print"
              + " is corrected")
  String printed;
}
