package org.bearingline.outside.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bearingline.outline.Point;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * Where a picture's pixels lie: by its corner marks, by the dpi the maker gives, or by what the
 * file says, in this order unless the maker gives the dpi.
 *
 * @param mapping from pixels to mm
 * @param field what of the picture is looked at
 * @param trust how true the mapping is, where it is by loose marks
 */
record ScanPlace(Mapping mapping, Field field, Optional<MarksTrust> trust) {

  private static final double MM_PER_INCH = 25.4;

  static ScanPlace of(
      String file, ImageDecoder.Decoded decoded, ScanSettings settings, ScanWords words) {
    if (settings.dpi().isPresent()) {
      double dpi = settings.dpi().getAsDouble();
      return byDpi(decoded, dpi, dpi);
    }
    List<SeenMark> seen = MarkFinder.find(decoded.grey());
    ImageFacts facts = decoded.facts();
    boolean byFile = facts.saysDpi() && !facts.camera() && !facts.saysUsualDpi();
    boolean wanted = settings.apart().isPresent() || !seen.isEmpty() || !byFile;
    if (wanted && !isSet(seen) && isSet(MarkFinder.find(decoded.grey().mirrored()))) {
      throw new Problem(
          Place.file(file),
          "the picture is mirrored: its corner marks read backwards; mirror it back, or save it as"
              + " the camera took it");
    }
    if (!seen.isEmpty() || settings.apart().isPresent()) {
      return byMarks(file, decoded.grey(), settings, seen, words);
    }
    if (facts.contradiction().isPresent() && !facts.camera()) {
      throw new Problem(
          Place.file(file),
          "the file says "
              + facts.contradiction().get()
              + ", so it is not known how large it is; give --dpi as it was scanned");
    }
    if (!byFile) {
      throw new Problem(
          Place.file(file),
          "nothing tells how large it is: no corner marks are seen"
              + (facts.camera() ? " and a camera's dpi mean nothing" : "")
              + (facts.saysUsualDpi() && !facts.camera()
                  ? " and %.0f dpi is what programs write that know of none"
                      .formatted(facts.dpiX().getAsDouble())
                  : "")
              + "; give --dpi for a flatbed scan, or lay the template on a marks sheet (bearingline"
              + " corner-marks)");
    }
    words.dpiOfFile(facts);
    return byDpi(decoded, facts.dpiX().getAsDouble(), facts.dpiY().getAsDouble());
  }

  private static ScanPlace byDpi(ImageDecoder.Decoded decoded, double dpiX, double dpiY) {
    GreyImage image = decoded.grey();
    return new ScanPlace(
        new DpiMapping(
            image.width(),
            image.height(),
            MM_PER_INCH / dpiX,
            MM_PER_INCH / dpiY,
            decoded.facts().orientation()),
        Field.whole(image),
        Optional.empty());
  }

  private static ScanPlace byMarks(
      String file, GreyImage image, ScanSettings settings, List<SeenMark> seen, ScanWords words) {
    List<SeenMark> marks = sorted(file, seen);
    MarkSet set =
        MarkSet.all().stream()
            .filter(known -> known.number() == marks.get(0).set())
            .findFirst()
            .orElseThrow(
                () ->
                    new Problem(
                        Place.file(file),
                        "the corner marks are of no sheet that is known; print one with bearingline"
                            + " corner-marks"));
    MarksFit.Found found =
        new MarksFit(file, marks, set, settings.apart()).fit(image, settings.raised());
    words.marks(found, settings);
    return new ScanPlace(found.mapping(), Field.between(image, marks), found.trust());
  }

  /** Whether these are A to D of one set, each once. */
  private static boolean isSet(List<SeenMark> seen) {
    return seen.size() == MarkLetter.values().length
        && seen.stream().map(SeenMark::letter).distinct().count() == seen.size()
        && seen.stream().mapToInt(SeenMark::set).distinct().count() == 1;
  }

  /** Whether A to D go round as a clock's hand does; with y downwards that is to the left. */
  private static boolean areClockwise(List<SeenMark> marks) {
    for (int i = 0; i < marks.size(); i++) {
      Point at = marks.get(i).centre();
      Point next = marks.get((i + 1) % marks.size()).centre();
      Point then = marks.get((i + 2) % marks.size()).centre();
      if (next.minus(at).cross(then.minus(next)) <= 0) {
        return false;
      }
    }
    return true;
  }

  /** The marks A to D of one set; fails where one is missing or seen twice. */
  private static List<SeenMark> sorted(String file, List<SeenMark> seen) {
    List<SeenMark> marks = new ArrayList<>();
    List<MarkLetter> missing = new ArrayList<>();
    for (MarkLetter letter : MarkLetter.values()) {
      List<SeenMark> same = seen.stream().filter(mark -> mark.letter() == letter).toList();
      if (same.size() > 1) {
        throw new Problem(
            Place.file(file), "corner mark " + letter + " is seen twice; show one of each");
      }
      same.forEach(marks::add);
      if (same.isEmpty()) {
        missing.add(letter);
      }
    }
    if (!missing.isEmpty()) {
      String names = missing.stream().map(MarkLetter::name).collect(Collectors.joining(", "));
      throw new Problem(
          Place.file(file),
          "of the four corner marks "
              + names
              + (missing.size() == 1 ? " is" : " are")
              + " not seen; show all four whole, with white round them, sharp and without glare");
    }
    if (marks.stream().mapToInt(SeenMark::set).distinct().count() > 1) {
      throw new Problem(
          Place.file(file), "the corner marks are of different sheets; use the four of one sheet");
    }
    if (!areClockwise(marks)) {
      throw new Problem(
          Place.file(file),
          "the corner marks do not lie A, B, C, D as a clock's hand goes; lay them so, with the"
              + " template between them, and photograph again");
    }
    return marks;
  }
}
