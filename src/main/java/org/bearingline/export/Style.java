package org.bearingline.export;

import java.util.Arrays;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;

/**
 * The look of each layer, the same in every format. No two layers differ by colour alone: each has
 * its own dashes or width too. Widths come from the series of ISO 128 (0.13, 0.18, 0.25, 0.35, 0.5,
 * 0.7 mm; from memory). The colours keep apart for the usual kinds of colour blindness.
 */
public final class Style {

  /** A line to work to is never wider than this, in mm. */
  public static final double WIDEST_CUT = 0.25;

  private static final Ink BLACK = new Ink(0x14, 0x14, 0x14);
  private static final Ink GREY = new Ink(0x6b, 0x6b, 0x6b);
  private static final Ink SKY = new Ink(0x7f, 0xb2, 0xe0);
  private static final Ink NAVY = new Ink(0x1f, 0x3f, 0x8a);
  private static final Ink RUST = new Ink(0xb3, 0x4a, 0x12);
  private static final Ink PLUM = new Ink(0x86, 0x2a, 0x78);
  private static final Ink MOSS = new Ink(0x4f, 0x6b, 0x2f);
  private static final Ink TEAL = new Ink(0x00, 0x6d, 0x6a);
  private static final Ink ROSE = new Ink(0xd0, 0x3c, 0x62);

  /** The colour of words. */
  public static final Ink LETTERING = BLACK;

  private Style() {}

  /** The line style of a layer at full size. */
  public static LineStyle of(Layer layer) {
    return of(layer.name(), layer.role());
  }

  /** The line style of a layer that plays the given role, at full size. */
  public static LineStyle of(LayerName name, Role role) {
    LineStyle usual = usual(name);
    if (role == Role.CUT) {
      // Whatever layer it is on, the line to work to is dark, fine and unbroken.
      return line(BLACK, Math.min(usual.width(), WIDEST_CUT));
    }
    return usual;
  }

  private static LineStyle usual(LayerName name) {
    return switch (name) {
      case STOCK -> line(GREY, 0.18, 8, 1.5, 0.6, 1.5, 0.6, 1.5);
      case HOLDING -> line(MOSS, 0.25, 0.5, 1.7);
      case LEFTOVER -> line(ROSE, 0.18);
      case GROOVE -> line(TEAL, 0.25, 3, 1.2);
      case PANEL -> line(TEAL, 0.35, 7, 1.5);
      case RECESS -> line(PLUM, 0.25, 1.6, 1);
      case PART -> line(SKY, 0.7);
      case ROUGH_LINE -> line(RUST, 0.35, 5, 2.5);
      case CUTTER_CENTRE -> line(NAVY, 0.18, 4, 1, 0.5, 1);
      case TEMPLATE -> line(BLACK, WIDEST_CUT);
      case MARKS -> line(BLACK, 0.13, 10, 1.5, 1, 1.5);
      case FEED -> line(NAVY, 0.5);
      case LABELS -> line(BLACK, 0.13);
    };
  }

  /** The colour that areas on a layer are filled with. */
  public static Ink fill(Layer layer) {
    return usual(layer.name()).ink().tint(0.35);
  }

  private static LineStyle line(Ink ink, double width, double... dashes) {
    return new LineStyle(ink, width, Arrays.stream(dashes).boxed().toList());
  }
}
