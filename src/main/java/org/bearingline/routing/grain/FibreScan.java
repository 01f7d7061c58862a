package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.ScanLine;
import org.bearingline.outline.Similarity;

/**
 * The wood cut by lines along the fibres, a step apart. A line meets the wood in chords; chords of
 * neighbouring lines that overlap hang together. From a chord the wood reaches across the fibres
 * upwards as far as chords go on hanging together without turning back, downwards likewise, and the
 * shorter of both is its reach: what hangs on it as on a lever. A chord is short-grained where its
 * length is less than the given share of its reach; chords that hang together are one place, told
 * by its chord of the least ratio. Chords are exact; a reach is true to one step.
 */
final class FibreScan {

  /** More lines than this are not searched: the step grows instead. */
  private static final int MOST_LINES = 4000;

  /** Fewer lines than this would miss a small part's neck: the step shrinks instead. */
  private static final int FEWEST_LINES = 200;

  /** Ratios nearer than this are one: then the longer lever counts. */
  private static final double SAME_RATIO = 1e-6;

  private final GrainSettings settings;
  private final Similarity back;
  private final double step;
  private final List<List<Chord>> lines = new ArrayList<>();

  /** A chord with what it reaches and the place it belongs to. */
  private static final class Chord {
    private final double y;
    private final double from;
    private final double to;
    private final List<Chord> above = new ArrayList<>();
    private final List<Chord> below = new ArrayList<>();
    private double up;
    private double down;
    private boolean seen;

    Chord(double y, double from, double to) {
      this.y = y;
      this.from = from;
      this.to = to;
    }

    double along() {
      return to - from;
    }

    double across() {
      return Math.min(up, down);
    }

    double ratio() {
      return along() / across();
    }

    boolean overlaps(Chord other) {
      return from < other.to && other.from < to;
    }
  }

  FibreScan(Outline wood, GrainSettings settings) {
    this.settings = settings;
    Point about = wood.bounds().center();
    Outline turned = wood.transformed(Similarity.rotation(-settings.fibreDegrees(), about));
    back = Similarity.rotation(settings.fibreDegrees(), about);
    Bounds box = turned.bounds();
    double wanted =
        Math.max(
            box.height() / MOST_LINES, Math.min(settings.scanStep(), box.height() / FEWEST_LINES));
    // The same part from another drawing is higher by a rounding: no reason for one line more.
    int count = Math.max(1, (int) Math.ceil(box.height() / wanted - 1e-6));
    step = box.height() / count;
    for (int i = 0; i < count; i++) {
      double y = box.minY() + (i + 0.5) * step;
      List<Chord> chords = new ArrayList<>();
      for (double[] ends : ScanLine.chords(turned, y, step)) {
        chords.add(new Chord(y, ends[0], ends[1]));
      }
      lines.add(chords);
    }
    link();
    measure();
  }

  private void link() {
    for (int i = 1; i < lines.size(); i++) {
      for (Chord low : lines.get(i - 1)) {
        for (Chord high : lines.get(i)) {
          if (low.overlaps(high)) {
            low.above.add(high);
            high.below.add(low);
          }
        }
      }
    }
  }

  private void measure() {
    for (List<Chord> line : lines) {
      for (Chord chord : line) {
        chord.down = step / 2;
        for (Chord low : chord.below) {
          chord.down = Math.max(chord.down, low.down + step);
        }
      }
    }
    for (int i = lines.size() - 1; i >= 0; i--) {
      for (Chord chord : lines.get(i)) {
        chord.up = step / 2;
        for (Chord high : chord.above) {
          chord.up = Math.max(chord.up, high.up + step);
        }
      }
    }
  }

  private boolean isShort(Chord chord) {
    return chord.across() >= settings.leastReach() && chord.ratio() < settings.shortRatio();
  }

  List<ShortGrain> places(Units units) {
    List<Chord> worst = new ArrayList<>();
    for (List<Chord> line : lines) {
      for (Chord chord : line) {
        if (!chord.seen && isShort(chord)) {
          worst.add(worstOf(chord));
        }
      }
    }
    worst.sort(Comparator.comparingDouble(Chord::ratio));
    List<ShortGrain> places = new ArrayList<>();
    for (Chord chord : worst) {
      places.add(place(places.size() + 1, chord, units));
    }
    return places;
  }

  private Chord worstOf(Chord first) {
    List<Chord> open = new ArrayList<>(List.of(first));
    first.seen = true;
    Chord worst = first;
    for (int i = 0; i < open.size(); i++) {
      Chord chord = open.get(i);
      worst = worse(worst, chord);
      for (List<Chord> neighbours : List.of(chord.below, chord.above)) {
        for (Chord next : neighbours) {
          if (!next.seen && isShort(next)) {
            next.seen = true;
            open.add(next);
          }
        }
      }
    }
    return worst;
  }

  private static Chord worse(Chord a, Chord b) {
    if (Math.abs(a.ratio() - b.ratio()) > SAME_RATIO) {
      return a.ratio() < b.ratio() ? a : b;
    }
    return b.across() > a.across() ? b : a;
  }

  private ShortGrain place(int number, Chord chord, Units units) {
    Point from = back.apply(new Point(chord.from, chord.y));
    Point to = back.apply(new Point(chord.to, chord.y));
    // A reach is true to a step of the search only, and is told no finer.
    double fine = units == Units.INCH ? 25.4 / 16 : 1;
    String sentence =
        String.format(
            Locale.ROOT,
            "Short grain %d: only %s of wood along the fibres carry %s across them (ratio %.2f), and"
                + " it splits there easily; lay the fibres along this limb, make it wider, or"
                + " strengthen it with a loose tongue or a glued-on strip.",
            number,
            Length.print(chord.along(), units),
            Length.print(Math.round(chord.across() / fine) * fine, units),
            chord.ratio());
    return new ShortGrain(
        number,
        Path.of(new Line(from, to)),
        chord.along(),
        chord.across(),
        chord.ratio(),
        sentence);
  }
}
