package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.length.Length;
import org.bearingline.outside.scan.MarkLetter;
import org.bearingline.outside.scan.MarksApart;
import org.bearingline.outside.scan.RaisedFace;
import org.bearingline.outside.scan.ScanSettings;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What the maker says of a photo or scan; empty where nothing was said. Lengths in mm.
 *
 * @param dpi pixels in an inch, as written
 * @param marksApart what was measured between loose corner marks, as written
 * @param speck what is smaller is dust or grain
 * @param faceAbove how far the template's face lies above the marks
 * @param cameraAbove how far the lens was above the marks
 */
public record PictureWishes(
    Optional<String> dpi,
    Optional<String> marksApart,
    OptionalDouble speck,
    OptionalDouble faceAbove,
    OptionalDouble cameraAbove) {

  /** Nothing said. */
  public static final PictureWishes NONE =
      new PictureWishes(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());

  private static final Pattern NAMED = Pattern.compile("([A-Da-d])\\s*[-–]\\s*([A-Da-d])\\s*=(.*)");

  public PictureWishes {
    Objects.requireNonNull(dpi);
    Objects.requireNonNull(marksApart);
    Objects.requireNonNull(speck);
    Objects.requireNonNull(faceAbove);
    Objects.requireNonNull(cameraAbove);
  }

  /** The option that was said, where one was. */
  Optional<String> saidFirst() {
    if (dpi.isPresent()) {
      return Optional.of("--dpi");
    }
    if (marksApart.isPresent()) {
      return Optional.of("--marks-apart");
    }
    if (speck.isPresent()) {
      return Optional.of("--speck");
    }
    if (faceAbove.isPresent()) {
      return Optional.of("--face-above");
    }
    return cameraAbove.isPresent() ? Optional.of("--camera-above") : Optional.empty();
  }

  /** The settings that the words make; a Problem where they make none. */
  ScanSettings settings() {
    return new ScanSettings(
        dpi.map(text -> OptionalDouble.of(dpi(text))).orElse(OptionalDouble.empty()),
        marksApart.map(PictureWishes::apart),
        speck.orElse(ScanSettings.DEFAULT_SPECK),
        ScanSettings.DEFAULT_TOLERANCE,
        raised());
  }

  private static double dpi(String text) {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException unread) {
      throw new Problem(
          Place.option("--dpi"), "“" + text + "” is no number; write --dpi 300", unread);
    }
  }

  private Optional<RaisedFace> raised() {
    if (faceAbove.isEmpty() && cameraAbove.isEmpty()) {
      return Optional.empty();
    }
    if (faceAbove.isEmpty() || cameraAbove.isEmpty()) {
      throw new Problem(
          Place.option(faceAbove.isEmpty() ? "--face-above" : "--camera-above"),
          "give both, as in --face-above 6mm --camera-above 1000mm, measured from the marks");
    }
    return Optional.of(new RaisedFace(faceAbove.getAsDouble(), cameraAbove.getAsDouble()));
  }

  /** Two bare lengths are A–B and B–C; named ones are in any order. */
  private static MarksApart apart(String text) {
    List<MarksApart.Distance> distances = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Matcher named = NAMED.matcher(part.strip());
      if (named.matches()) {
        distances.add(
            new MarksApart.Distance(
                letter(named.group(1)), letter(named.group(2)), length(named.group(3))));
      } else if (distances.size() < 2) {
        MarkLetter from = MarkLetter.values()[distances.size()];
        MarkLetter to = MarkLetter.values()[distances.size() + 1];
        distances.add(new MarksApart.Distance(from, to, length(part)));
      } else {
        throw new Problem(
            Place.option("--marks-apart"),
            "“" + part.strip() + "” does not say between which marks; write A-C=671mm");
      }
    }
    return new MarksApart(distances);
  }

  private static MarkLetter letter(String text) {
    return MarkLetter.valueOf(text.toUpperCase(Locale.ROOT));
  }

  private static double length(String text) {
    try {
      return Length.parse(text.strip());
    } catch (Problem unread) {
      throw new Problem(
          Place.option("--marks-apart"),
          "“"
              + text.strip()
              + "” is no distance of two marks; write A to B and B to C as in 600mm,300mm, or"
              + " A-B=600mm,B-C=300mm",
          unread);
    }
  }
}
