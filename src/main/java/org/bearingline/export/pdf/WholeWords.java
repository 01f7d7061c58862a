package org.bearingline.export.pdf;

import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * Keeps the words that the printed pages show whole, once they are joined, and the dimensions that
 * one page shows whole: half a number would be worse than none, and a dimension's line that runs
 * over several pages could be taken for the line to work to. Neither asks for a page of its own.
 */
final class WholeWords {

  private static final int SAMPLES = 8;

  private WholeWords() {}

  static Drawing on(SheetPlan plan, Drawing drawing, Units units) {
    List<Layer> layers =
        drawing.layers().stream().map(layer -> kept(plan, drawing, layer, units)).toList();
    return new Drawing(drawing.title(), layers, drawing.enlargement());
  }

  private static Layer kept(SheetPlan plan, Drawing drawing, Layer layer, Units units) {
    List<Item> items =
        layer.items().stream()
            .filter(
                item ->
                    !(item instanceof Item.Text || item instanceof Item.Dimension)
                        || isWhole(plan, drawing, layer, item, units))
            .toList();
    return new Layer(layer.name(), layer.role(), layer.title(), items);
  }

  private static boolean isWhole(
      SheetPlan plan, Drawing drawing, Layer layer, Item item, Units units) {
    Layer alone = new Layer(layer.name(), layer.role(), layer.title(), List.of(item));
    Drawing one = new Drawing(drawing.title(), List.of(alone), drawing.enlargement());
    Bounds box = Plot.of(one, units, Typeface.REGULAR::width).content();
    if (item instanceof Item.Dimension) {
      return plan.sheets().stream().anyMatch(sheet -> isOn(List.of(sheet), plan, box));
    }
    return isOn(plan.sheets(), plan, box);
  }

  private static boolean isOn(List<Sheet> sheets, SheetPlan plan, Bounds box) {
    for (int i = 0; i <= SAMPLES; i++) {
      for (int j = 0; j <= SAMPLES; j++) {
        Point p =
            new Point(
                box.minX() + box.width() * i / SAMPLES, box.minY() + box.height() * j / SAMPLES);
        Point planned = plan.placement().apply(p);
        if (sheets.stream().noneMatch(sheet -> sheet.cell().contains(planned))) {
          return false;
        }
      }
    }
    return true;
  }
}
