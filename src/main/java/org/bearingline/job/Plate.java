package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.routing.Template;

/**
 * One plate to make for a part, with the drawings of it.
 *
 * @param worked the part
 * @param template the plate; empty where nothing of the part is routed
 */
record Plate(WorkedPart worked, Optional<Template> template) {

  /** The layers that help at the bench, on paper glued to the plate. */
  private static final Set<LayerName> ON_PAPER =
      EnumSet.of(
          LayerName.LEFTOVER,
          LayerName.RECESS,
          LayerName.PART,
          LayerName.ROUGH_LINE,
          LayerName.TEMPLATE,
          LayerName.MARKS);

  /** Every plate of the part, at least one. */
  static List<Plate> of(WorkedPart worked) {
    List<Plate> plates = new ArrayList<>();
    for (Template template : worked.result().templates()) {
      plates.add(new Plate(worked, Optional.of(template)));
    }
    if (plates.isEmpty()) {
      plates.add(new Plate(worked, Optional.empty()));
    }
    return plates;
  }

  /** The part's name, a number from the second plate on, and the ending. */
  String fileName(String ending) {
    int number = template.map(Template::number).orElse(1);
    return worked.order().name() + (number > 1 ? "-template-" + number : "") + ending;
  }

  String title() {
    String what = template.map(Template::title).orElse("outline");
    return worked.order().name() + ", " + what;
  }

  Drawing fullSize(Units units) {
    return new Drawing(title(), PartLabels.with(worked.result(), units, layers(1), 1));
  }

  /** For a laser or a machine: the template's line moved into the waste by half the kerf. */
  Drawing forMachine(Units units) {
    double kerf = Settings.kerf(worked.order().wishes());
    if (kerf == 0 || template.isEmpty()) {
      return fullSize(units);
    }
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : fullSize(units).layers()) {
      layers.add(layer.name() == LayerName.TEMPLATE ? widened(kerf / 2) : layer);
    }
    return new Drawing(title(), layers);
  }

  private Layer widened(double distance) {
    Region plate = Region.of(template.orElseThrow().plate());
    List<Item> items = new ArrayList<>();
    for (Loop loop : Morphology.dilate(plate, distance).region().loops()) {
      items.add(new Item.Stroke(Path.of(loop)));
    }
    return PartDrawing.layer(LayerName.TEMPLATE, items);
  }

  Drawing forPaper(Units units) {
    List<Layer> layers =
        PartLabels.with(
            worked.result(),
            units,
            layers(1).stream().filter(layer -> ON_PAPER.contains(layer.name())).toList(),
            1);
    return new Drawing(title(), layers);
  }

  /** The whole at a glance, with lettering that is legible in a small picture. */
  Drawing picture(Units units) {
    return picture(units, Drawing.enlargementFor(box()));
  }

  /** The whole for the card, with lettering that is legible at arm's length. */
  Drawing cardPicture(Units units) {
    return picture(units, CardPdf.enlargementFor(box()));
  }

  private Bounds box() {
    return new Drawing(title(), layers(1)).bounds();
  }

  private Drawing picture(Units units, double enlargement) {
    return PictureLegend.under(
        new Drawing(
            title(),
            PartLabels.with(worked.result(), units, layers(enlargement), enlargement),
            enlargement));
  }

  private List<Layer> layers(double enlargement) {
    return template.isPresent()
        ? PartDrawing.layers(worked.result(), template.get(), enlargement)
        : PartDrawing.layers(worked.result());
  }
}
