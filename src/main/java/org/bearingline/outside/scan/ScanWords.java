package org.bearingline.outside.scan;

import static org.bearingline.outside.scan.ScanReader.digits;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/** What is told of a scan: notes of what was done, and warnings. */
final class ScanWords {

  /** mm by which marks may miss before it is worth a warning. */
  private static final double CORNERS_MISS = 0.15;

  private static final double RULE_MISS = 0.6;

  /** Light of template and ground that differs by less than this factor leaves a weak edge. */
  private static final double WEAK_CONTRAST = 1.6;

  /** Blur in pixels past which a picture is called blurred. */
  private static final double BLURRED = 2.5;

  /** Share of the blur by which an edge's place may be off where light is not quite even. */
  private static final double BLUR_SHARE = 0.15;

  /** Holes up to this diameter may be those of screws, mm. */
  private static final double SCREW = 8;

  private final List<String> notes = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();

  List<String> notes() {
    return notes;
  }

  List<String> warnings() {
    return warnings;
  }

  void decoded(ImageDecoder.Decoded decoded) {
    GreyImage grey = decoded.grey();
    String channel =
        decoded.channel().equals("light")
            ? ""
            : ", read in its " + decoded.channel() + ", where the template shows best";
    notes.add("picture of " + grey.width() + " × " + grey.height() + " pixels" + channel);
    if (decoded.facts().holdsMore()) {
      notes.add("the file holds several pictures; the first was taken");
    }
  }

  void dpiOfFile(ImageFacts facts) {
    double x = facts.dpiX().getAsDouble();
    double y = facts.dpiY().getAsDouble();
    String both = Math.abs(x - y) < 0.5 ? digits(0, x) : digits(0, x) + " × " + digits(0, y);
    notes.add("size by " + both + " dpi, as the file says; give --dpi if it was scanned otherwise");
  }

  void marks(MarksFit.Found found, ScanSettings settings) {
    notes.add(
        "size and squareness by the four corner marks, which agree within "
            + digits(2, found.cornerMiss())
            + " mm");
    if (found.bend() >= 0.05) {
      notes.add(
          "the lens moves places by up to "
              + digits(1, found.bend())
              + " mm at the marks; that was taken out");
    }
    if (found.cornerMiss() > CORNERS_MISS) {
      warnings.add(
          "the corner marks miss each other by "
              + digits(2, found.cornerMiss())
              + " mm: the paper is not flat, or the lens bends more than can be taken out; lay"
              + " everything flat and photograph from farther away");
    }
    if (found.distanceMiss() > RULE_MISS) {
      warnings.add(
          "the measured distances contradict the marks by "
              + digits(1, found.distanceMiss())
              + " mm; measure from cross to cross again");
    }
    if (settings.raised().isPresent()) {
      notes.add(
          "reduced to the height of the marks: the face lies "
              + digits(1, settings.raised().get().above())
              + " mm above them");
    }
  }

  /** What the distances between loose marks are good for. */
  void hope(MarksTrust.Hope hope, ScanSettings settings) {
    notes.add(
        "by these distances, each read to a quarter of a millimetre, the template is true to about "
            + digits(2, hope.error())
            + " mm from end to end");
    if (hope.error() <= settings.tolerance()) {
      return;
    }
    warnings.add(
        "the distances measured carry "
            + digits(2, hope.error())
            + " mm, not "
            + digits(2, settings.tolerance())
            + " mm"
            + (hope.next().isEmpty()
                ? "; lay smaller templates on the whole sheet"
                : "; measure "
                    + String.join(", ", hope.next())
                    + " as well, which makes it "
                    + digits(2, hope.then())
                    + " mm"));
  }

  void contrast(Lighting lighting) {
    if (lighting.contrast() < WEAK_CONTRAST) {
      warnings.add(
          "template and ground are nearly alike in lightness; a ground of another lightness gives a"
              + " truer edge");
    }
  }

  void template(TracedLoop outside, int openings, double pixel) {
    notes.add(
        "a template about "
            + size(outside, pixel)
            + " as it lies in the picture, "
            + (openings == 0
                ? "without openings"
                : openings == 1 ? "with one opening" : "with " + openings + " openings"));
    if (outside.atRim()) {
      warnings.add(
          "the template reaches the end of what the picture or the marks show, so a part of its"
              + " edge is not its own");
    }
  }

  /** Holes for screws are the template's and not the part's. */
  void smallHoles(List<TracedLoop> openings, double pixel) {
    double widest =
        openings.stream()
            .mapToDouble(hole -> 2 * pixel * Math.sqrt(-hole.area() / Math.PI))
            .filter(across -> across <= SCREW)
            .max()
            .orElse(0);
    if (widest > 0) {
      notes.add(
          "if its holes up to "
              + digits(1, widest)
              + " mm are for screws that held the template, and not the part's, leave them out with"
              + " --speck "
              + digits(0, Math.ceil(widest + 0.5))
              + "mm");
    }
  }

  private static String size(TracedLoop piece, double pixel) {
    double[] box = piece.box();
    return digits(0, (box[2] - box[0]) * pixel)
        + " × "
        + digits(0, (box[3] - box[1]) * pixel)
        + " mm";
  }

  /** A piece's size and where it lies. */
  static String size(TracedLoop piece, Mapping mapping) {
    double[] box = piece.box();
    return size(piece, mapping.pixelAt((box[0] + box[2]) / 2, (box[1] + box[3]) / 2));
  }

  void lid() {
    warnings.add(
        "the rim of the picture is dark on one side and light on another, as a scanner's lid makes"
            + " it; what is whole was taken for the template");
  }

  void leftOut(TracedLoop piece, Mapping mapping) {
    warnings.add(
        "a second piece of " + size(piece, mapping) + " lies beside the template and was left out");
  }

  void stranger(GreyImage image, Point at) {
    String height =
        at.y() < image.height() / 3.0 ? "upper" : at.y() > image.height() / 1.5 ? "lower" : "";
    String side =
        at.x() < image.width() / 3.0 ? "left" : at.x() > image.width() / 1.5 ? "right" : "";
    String where = (height + " " + side).strip();
    warnings.add(
        "something that is neither template nor ground lies on the edge in the "
            + (where.isEmpty() ? "middle" : where + " part")
            + " of the picture (pixel "
            + digits(0, at.x())
            + ", "
            + digits(0, at.y())
            + "), such as a thumb, tape or a shadow; the edge there is not the template's");
  }

  void quality(EdgeQuality quality, double pixel, double noise, ScanSettings settings) {
    double blur = quality.blur();
    notes.add(
        "a pixel is "
            + digits(3, pixel)
            + " mm; the traced edge wavers by "
            + digits(3, noise)
            + " mm at most places");
    if (blur > BLURRED) {
      warnings.add(
          "the picture is blurred: the edge takes "
              + digits(1, 4 * blur)
              + " pixels ("
              + digits(2, 4 * blur * pixel)
              + " mm) from light to dark; hold the camera still, focus on the edge");
    }
    quality
        .shadow()
        .ifPresent(
            side ->
                warnings.add(
                    "the edge is soft on the "
                        + side
                        + " side of the picture, as a shadow makes it; light from all sides, or from"
                        + " above"));
    double carries = Math.max(noise, Math.max(pixel / 3, BLUR_SHARE * blur * pixel));
    if (carries > settings.tolerance()) {
      warnings.add(
          "the picture is too coarse: with pixels of "
              + digits(2, pixel)
              + " mm it is true to about "
              + digits(2, carries)
              + " mm, not to "
              + digits(2, settings.tolerance())
              + " mm; scan at 300 dpi or more, or photograph from nearer");
    }
  }
}
