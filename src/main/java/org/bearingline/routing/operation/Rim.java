package org.bearingline.routing.operation;

import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Contour;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;

/**
 * A rim of even width between an opening and the ledge round it: ledge = opening ⊕ D(w), opening =
 * ledge ⊖ D(w).
 */
public final class Rim {

  /** The widest rim is found to this, in mm. */
  private static final double FOUND_TO = 0.01;

  private static final double CRUMB_AREA = 0.01;

  private Rim() {}

  /** The edge of the ledge round an opening; refused where it leaves the part. */
  public static Contour around(Head head, Part part, Target opening, double width) {
    Region inner = region(opening);
    Region wood = Region.of(Outline.of(part.contour().loop()));
    Region outer = Morphology.dilate(inner, width).region();
    if (Overlay.difference(outer, wood).area() > CRUMB_AREA) {
      double most = 0;
      double least = width;
      while (least - most > FOUND_TO) {
        double middle = (most + least) / 2;
        boolean fits =
            Overlay.difference(Morphology.dilate(inner, middle).region(), wood).area()
                <= CRUMB_AREA;
        most = fits ? middle : most;
        least = fits ? least : middle;
      }
      throw refusal(
          head,
          "a ledge "
              + Sentences.mm(width)
              + " wide round "
              + opening.of()
              + " runs out of the part",
          most);
    }
    return Contour.routed(outer.pieces().get(0).outer());
  }

  /** The edge of the opening inside a ledge; refused where nothing, or no one opening, is left. */
  public static Contour inside(Head head, Target ledge, double width) {
    Region outer = region(ledge);
    Region inner = Morphology.erode(outer, width).region();
    if (inner.pieces().size() != 1) {
      double most = 0;
      double least = width;
      while (least - most > FOUND_TO) {
        double middle = (most + least) / 2;
        boolean fits = Morphology.erode(outer, middle).region().pieces().size() == 1;
        most = fits ? middle : most;
        least = fits ? least : middle;
      }
      throw refusal(
          head,
          "a ledge "
              + Sentences.mm(width)
              + " wide leaves no "
              + (inner.isEmpty() ? "" : "single ")
              + "opening inside "
              + ledge.of(),
          most);
    }
    return Contour.routed(inner.pieces().get(0).outer());
  }

  private static Problem refusal(Head head, String what, double most) {
    double rounded = Math.floor((most + FOUND_TO) * 10) / 10;
    return new Problem(
        head.place(),
        head.name() + ": " + what + "; it may be at most about " + Sentences.mm(rounded) + " wide");
  }

  private static Region region(Target target) {
    Loop loop = target.contour().loop();
    return Region.of(Outline.of(loop));
  }
}
