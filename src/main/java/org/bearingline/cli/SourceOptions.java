package org.bearingline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is to be made. */
final class SourceOptions {

  @Parameters(
      index = "0",
      paramLabel = "SOURCE",
      description =
          "a shape's name (see: bearingline shapes), a shape file, a drawing (.svg, .dxf) or a job"
              + " file")
  String source;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "give a measure of the shape another value, as in --set rise=3/4in")
  List<String> settings = new ArrayList<>();

  @Option(
      names = "--kit",
      paramLabel = "FILE",
      description = "the bits, bearings, collars and blades you own (default: a small usual kit)")
  Path kit;

  @Mixin DrawingOptions drawing;

  /** Each measure set, by name, as written. */
  Map<String, String> measures() {
    Map<String, String> measures = new LinkedHashMap<>();
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      if (equals < 1) {
        throw wrong("“" + setting + "” sets no measure; write NAME=VALUE, as in rise=3/4in");
      }
      String name = setting.substring(0, equals).strip();
      if (measures.put(name, setting.substring(equals + 1)) != null) {
        throw wrong(name + " is set twice; give it once");
      }
    }
    return measures;
  }

  private static Problem wrong(String sentence) {
    return new Problem(Place.option("--set"), sentence);
  }
}
