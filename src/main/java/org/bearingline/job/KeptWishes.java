package org.bearingline.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.length.Length;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;
import org.bearingline.yaml.YamlText;

/**
 * What is said of a drawing or picture that is to be kept.
 *
 * @param drawn fields of a drawing in a job file
 * @param picture options of {@code keep} for a photo or scan
 */
record KeptWishes(DrawnWishes drawn, PictureWishes picture) {

  private static final String SAWN = "sawn-edges";

  /** Reads what was said by name; what is unknown or cannot be read is refused at its name. */
  static KeptWishes of(Map<String, String> said) {
    Map<String, String> rest = new LinkedHashMap<>(said);
    PictureWishes picture =
        new PictureWishes(
            Optional.ofNullable(rest.remove("dpi")),
            Optional.ofNullable(rest.remove("marks-apart")),
            length("speck", rest.remove("speck")),
            length("face-above", rest.remove("face-above")),
            length("camera-above", rest.remove("camera-above")));
    return new KeptWishes(drawn(rest), picture);
  }

  private static OptionalDouble length(String name, String text) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Length.parse(text));
    } catch (Problem unread) {
      throw unread.at(Place.field(name));
    }
  }

  private static DrawnWishes drawn(Map<String, String> said) {
    if (said.isEmpty()) {
      return DrawnWishes.NONE;
    }
    Map<String, Object> fields = new LinkedHashMap<>(said);
    fields.computeIfPresent(SAWN, (name, sides) -> List.of(((String) sides).split("\\s*,\\s*")));
    YamlNode top = YamlFile.read(JobInHand.FILE, YamlText.write(fields));
    try {
      top.allowOnly(Set.copyOf(DrawnFields.OF_A_DRAWING));
      return DrawnFields.of(top, Optional.empty());
    } catch (Problem wrong) {
      throw new Refused(JobFields.of(top).view(wrong, null), wrong);
    }
  }

  /** For a drawing: what belongs to a picture is refused. */
  void refusePicture() {
    if (picture.saidFirst().isPresent()) {
      throw new Problem(
          Place.option(picture.saidFirst().get()),
          "this is for a photo or scan, and the source is a drawing");
    }
  }

  /** For a picture: what belongs to a drawing is refused. */
  void refuseDrawn() {
    Optional<String> ofDrawing = drawn.ofDrawingOnly();
    if (ofDrawing.isPresent()) {
      throw new Problem(
          Place.option(ofDrawing.get()), "this is for a drawing, and the source is a picture");
    }
  }
}
