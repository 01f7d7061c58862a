package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.cutlist.Blank;
import org.bearingline.cutlist.CutBoard;
import org.bearingline.cutlist.Placement;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * The boards of a job with what is cut from them, one above the other; without boards, one of each
 * blank. Every blank bears its number in the cut list.
 */
final class CuttingPicture {

  private final List<Item> boards = new ArrayList<>();
  private final List<Item> blanks = new ArrayList<>();
  private final List<Item> words = new ArrayList<>();
  private final JobCuts cuts;
  private final Units units;
  private final double text;
  private double y;

  private CuttingPicture(JobCuts cuts, Units units, double text) {
    this.cuts = cuts;
    this.units = units;
    this.text = text;
  }

  static Drawing of(JobCuts cuts, Units units) {
    Drawing plain = drawn(cuts, units, Drawing.TEXT_HEIGHT, 1);
    // Room for the titles grows with the lettering, which the first round tells the size of.
    double enlargement = CardPdf.enlargementFor(plain.bounds());
    double second =
        CardPdf.enlargementFor(
            drawn(cuts, units, Drawing.TEXT_HEIGHT * enlargement, enlargement).bounds());
    return drawn(cuts, units, Drawing.TEXT_HEIGHT * second, second);
  }

  private static Drawing drawn(JobCuts cuts, Units units, double text, double enlargement) {
    CuttingPicture picture = new CuttingPicture(cuts, units, text);
    if (cuts.packing().isPresent()) {
      cuts.packing().get().boards().forEach(picture::board);
    } else {
      picture.loose();
    }
    return new Drawing(cuts.name(), picture.layers(), enlargement);
  }

  private void board(CutBoard cut) {
    y -= cut.board().width();
    rectangle(boards, new Bounds(0, y, cut.board().length(), y + cut.board().width()));
    for (Placement placement : cut.placements()) {
      Bounds at = placement.at();
      blank(new Bounds(at.minX(), at.minY() + y, at.maxX(), at.maxY() + y), placement.blank());
    }
    y -= 1.2 * text;
    words.add(
        new Item.Text(new Point(0, y), JobCard.title(cut, units), text, 0, Item.Text.Anchor.START));
    y -= 1.5 * text;
  }

  /** Rows no longer than the longest blank, or than a square of all of them. */
  private void loose() {
    double longest = cuts.list().all().stream().mapToDouble(Blank::length).max().orElse(0);
    double area = cuts.list().all().stream().mapToDouble(Blank::area).sum();
    double row = Math.max(longest, 2 * Math.sqrt(area));
    double x = 0;
    double high = 0;
    for (Blank blank : cuts.list().all()) {
      if (x > 0 && x + blank.length() > row) {
        y -= high + text;
        x = 0;
        high = 0;
      }
      blank(new Bounds(x, y - blank.width(), x + blank.length(), y), blank);
      x += blank.length() + text;
      high = Math.max(high, blank.width());
    }
  }

  private void blank(Bounds at, Blank blank) {
    rectangle(blanks, at);
    String number = String.valueOf(cuts.list().all().indexOf(blank) + 1);
    double height = Math.min(text, 0.9 * Math.min(at.width(), at.height()));
    words.add(new Item.Text(at.center(), number, height, 0, Item.Text.Anchor.MIDDLE));
  }

  private static void rectangle(List<Item> items, Bounds box) {
    items.add(new Item.Stroke(Path.of(Loop.rectangle(box))));
  }

  private List<Layer> layers() {
    List<Layer> layers = new ArrayList<>();
    if (!boards.isEmpty()) {
      layers.add(new Layer(LayerName.STOCK, Role.NOTE, "board", boards));
    }
    layers.add(new Layer(LayerName.PART, Role.NOTE, "blank", blanks));
    layers.add(new Layer(LayerName.LABELS, Role.NOTE, "numbers of the cut list", words));
    return layers;
  }
}
