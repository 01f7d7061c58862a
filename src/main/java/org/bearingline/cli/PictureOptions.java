package org.bearingline.cli;

import java.util.Optional;
import org.bearingline.job.PictureWishes;
import picocli.CommandLine.Option;

/** What is known of a photo or scan. */
final class PictureOptions {

  @Option(
      names = "--dpi",
      paramLabel = "DPI",
      description = "of a flatbed scan: its pixels to the inch (default: what the file says)")
  String dpi;

  @Option(
      names = "--marks-apart",
      paramLabel = "LENGTHS",
      description =
          "of a picture with the corner marks cut apart: from cross to cross, A to B and B to C as"
              + " in 600mm,300mm, or more as in A-B=600mm,B-C=300mm,A-C=671mm")
  String marksApart;

  @Option(
      names = "--speck",
      paramLabel = "DIAMETER",
      description = "of a picture: what is smaller is dust, grain or a pin hole (default: 2mm)")
  String speck;

  @Option(
      names = "--face-above",
      paramLabel = "LENGTH",
      description = "of a photo: how far the template's face lies above the marks")
  String faceAbove;

  @Option(
      names = "--camera-above",
      paramLabel = "LENGTH",
      description = "of a photo: how far the lens was above the marks; with --face-above")
  String cameraAbove;

  PictureWishes wishes() {
    return new PictureWishes(
        Optional.ofNullable(dpi),
        Optional.ofNullable(marksApart),
        OptionText.length("--speck", speck),
        OptionText.length("--face-above", faceAbove),
        OptionText.length("--camera-above", cameraAbove));
  }
}
