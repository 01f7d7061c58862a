package org.bearingline.cli;

import picocli.CommandLine.Option;

/** How the template and the saw line are laid out. */
final class LayoutOptions {

  @Option(
      names = "--thickness",
      paramLabel = "LENGTH",
      description = "thickness of the stock, for the depths of the passes (default: 3/4in)")
  String thickness;

  @Option(
      names = "--allowance",
      paramLabel = "LENGTH",
      description = "waste that the saw leaves outside the part (default: 1/16in)")
  String allowance;

  @Option(
      names = "--saw-blade",
      paramLabel = "WIDTH",
      description =
          "width of the band-saw blade; it decides how tight the saw turns (default: 1/4in)")
  String sawBlade;

  @Option(
      names = "--run-out",
      paramLabel = "LENGTH",
      description = "how far the template goes on past the ends of the work (default: 1-1/2in)")
  String runOut;

  @Option(
      names = "--router",
      paramLabel = "WHERE",
      description = "hand or table: where the router is; it decides the feed (default: hand)")
  String router;

  @Option(
      names = "--router-base",
      paramLabel = "DIAMETER",
      description = "of the router's base, which clamps must keep clear of (default: 6in)")
  String routerBase;

  @Option(
      names = "--deepest-pass",
      paramLabel = "LENGTH",
      description =
          "the most that a pass takes (default: 1/8in, no more than half the bit's diameter)")
  String deepestPass;

  @Option(
      names = "--kerf",
      paramLabel = "LENGTH",
      description =
          "width that the laser or cutter burns away; the DXF's template line moves half of it into"
              + " the waste (default: 0)")
  String kerf;
}
