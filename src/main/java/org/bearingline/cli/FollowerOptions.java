package org.bearingline.cli;

import picocli.CommandLine.Option;

/** What rides the template, where it is not a bearing of the bit's own size. */
final class FollowerOptions {

  @Option(
      names = "--bearing",
      paramLabel = "DIAMETER",
      description = "bearing on the bit, where it is not as wide as the bit")
  String bearing;

  @Option(
      names = "--collar",
      paramLabel = "DIAMETER",
      description = "outside diameter of the guide collar on the router's base")
  String collar;
}
