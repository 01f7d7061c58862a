package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.CleaningReport;
import org.bearingline.outside.clean.DrawnPaths;
import org.bearingline.outside.clean.Fault;

/**
 * The picture of a drawing and what cleaning made of it: the drawn line broad and pale, the clean
 * one dark and fine on it, a tick where its pieces meet, a ring where gaps were closed and where
 * the line moved most, and numbered rings round faults; of several outlines the numbers by which
 * one is chosen.
 */
final class KeptPreview {

  /** Faults that get a number; more would cover the drawing. */
  private static final int MOST_FAULTS = 40;

  /** Pieces beyond which ticks would run together. */
  private static final int MOST_TICKS = 300;

  /** Faults or outlines that are told in words. */
  private static final int MOST_SAID = 8;

  /** Lettering of the number of an outline beside that of words. */
  private static final double NUMBER = 2;

  /** Lines of words under the picture. */
  private static final double LINE_PITCH = 1.6;

  private final CleanedOutline cleaned;
  private final Bounds box;
  private final double enlargement;
  private final double text;
  private final List<Item> faults = new ArrayList<>();
  private final List<Item> marks = new ArrayList<>();
  private final List<Item> words = new ArrayList<>();

  private KeptPreview(CleanedOutline cleaned, List<Item> drawn) {
    this.cleaned = cleaned;
    box = drawn.stream().map(Item::bounds).reduce(Bounds::union).orElseThrow();
    enlargement = Math.max(1e-3, Drawing.enlargementFor(box));
    text = Drawing.TEXT_HEIGHT * enlargement;
  }

  static Drawing of(String name, CleanedOutline cleaned) {
    List<Item> drawn = new ArrayList<>();
    DrawnPaths.of(cleaned.drawn()).forEach(path -> drawn.add(new Item.Stroke(path)));
    KeptPreview preview = new KeptPreview(cleaned, drawn);
    return preview.drawing(name, drawn);
  }

  private Drawing drawing(String name, List<Item> drawn) {
    List<Item> clean = new ArrayList<>();
    List<Path> paths = new ArrayList<>(cleaned.open());
    for (Outline outline : cleaned.outlines()) {
      for (Loop loop : outline.loops()) {
        paths.add(Path.of(loop));
      }
    }
    paths.forEach(path -> clean.add(new Item.Stroke(path)));
    ticks(paths);
    places();
    legend();
    List<Layer> layers = new ArrayList<>();
    add(layers, LayerName.LEFTOVER, Role.NOTE, "faults, numbered", faults);
    add(layers, LayerName.PART, Role.NOTE, "as drawn", drawn);
    add(layers, LayerName.TEMPLATE, Role.CUT, "clean line", clean);
    add(layers, LayerName.MARKS, Role.NOTE, "joints and places", marks);
    add(layers, LayerName.LABELS, Role.NOTE, "words", words);
    return new Drawing(name, layers, enlargement);
  }

  private static void add(
      List<Layer> layers, LayerName name, Role role, String title, List<Item> items) {
    if (!items.isEmpty()) {
      layers.add(new Layer(name, role, title, items));
    }
  }

  private void ticks(List<Path> paths) {
    if (paths.stream().mapToInt(path -> path.primitives().size()).sum() > MOST_TICKS) {
      return;
    }
    for (Path path : paths) {
      for (Primitive piece : path.primitives()) {
        if (!(piece instanceof Arc arc && arc.isFullCircle())) {
          Point half = piece.tangentAt(0).left().times(text / 3);
          marks.add(stroke(piece.start().minus(half), piece.start().plus(half)));
        }
      }
    }
  }

  private static Item stroke(Point from, Point to) {
    return new Item.Stroke(Path.of(new Line(from, to)));
  }

  private void places() {
    CleaningReport report = cleaned.report();
    int shown = Math.min(MOST_FAULTS, report.faults().size());
    for (int i = 0; i < shown; i++) {
      Fault fault = report.faults().get(i);
      faults.add(ring(fault.at(), 0.9 * text));
      Point beside = fault.at().plus(new Point(1.3 * text, 1.1 * text));
      word(beside, Integer.toString(i + 1), text * 1.2);
    }
    for (Point gap : report.gaps().places()) {
      marks.add(ring(gap, text / 2));
    }
    if (report.faults().isEmpty() && report.largestMove() > 1e-4) {
      marks.add(ring(report.largestMoveAt(), text / 2));
    }
    if (cleaned.isSeveral()) {
      numbers();
    }
  }

  private void numbers() {
    double numberHeight = NUMBER * text;
    int number = 0;
    for (Outline outline : cleaned.outlines().stream().limit(MOST_FAULTS).toList()) {
      number++;
      String shown = Integer.toString(number);
      words.add(
          new Item.Text(RoomyPlace.in(outline), shown, numberHeight, 0, Item.Text.Anchor.MIDDLE));
    }
  }

  private static Item ring(Point at, double radius) {
    return new Item.Stroke(Path.of(Arc.circle(at, radius)));
  }

  private void word(Point at, String what, double height) {
    words.add(new Item.Text(at, what, height, 0, Item.Text.Anchor.START));
  }

  private void legend() {
    double y = box.minY() - 3 * text;
    for (String sentence : sentences()) {
      word(new Point(box.minX(), y), sentence, text);
      y -= LINE_PITCH * text;
    }
  }

  private List<String> sentences() {
    CleaningReport report = cleaned.report();
    List<String> all = new ArrayList<>();
    all.add("broad and pale: as drawn; fine and dark: the clean line, a tick where pieces meet");
    if (report.faults().isEmpty()) {
      all.add(
          String.format(
              Locale.ROOT,
              "%d pieces became %d; largest move %.3f mm%s",
              report.piecesBefore(),
              report.piecesAfter(),
              report.largestMove(),
              report.gaps().count() == 0
                  ? " (ring)"
                  : ", %d gaps closed (rings)".formatted(report.gaps().count())));
      if (cleaned.isSeveral()) {
        all.add("several outlines, one of which is the part: choose it by its number");
        all.addAll(SeparateOutlines.numbered(cleaned, MOST_SAID));
        more(all, cleaned.outlines().size());
      }
      return all;
    }
    int shown = Math.min(MOST_FAULTS, report.faults().size());
    for (int i = 0; i < Math.min(MOST_SAID, shown); i++) {
      all.add((i + 1) + ": " + report.faults().get(i).sentence(cleaned.drawn()));
    }
    more(all, report.faults().size());
    return all;
  }

  private static void more(List<String> all, int count) {
    if (count > MOST_SAID) {
      all.add("and " + (count - MOST_SAID) + " more");
    }
  }
}
