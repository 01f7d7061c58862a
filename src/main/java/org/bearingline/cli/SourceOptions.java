package org.bearingline.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is to be made. */
final class SourceOptions {

  @Parameters(
      index = "0",
      paramLabel = "SOURCE",
      description = "a shape's name (see: bearingline shapes), a shape file or a job file")
  String source;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "give a measure of the shape another value, as in --set rise=3/4in")
  Map<String, String> measures = new LinkedHashMap<>();

  @Option(
      names = "--kit",
      paramLabel = "FILE",
      description = "the bits, bearings, collars and blades you own (default: a small usual kit)")
  Path kit;
}
