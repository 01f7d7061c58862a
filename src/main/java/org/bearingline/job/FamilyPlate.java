package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.labels.LabelPlacer;
import org.bearingline.drawing.labels.Wish;
import org.bearingline.export.font.Typeface;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.routing.family.Registration;

/**
 * The drawings of a template that serves several parts: its edge and the lines of each.
 *
 * @param name of its files
 * @param parts that it serves
 * @param outline of the plate
 * @param lines to which they are laid
 * @param units of its measures
 */
record FamilyPlate(
    String name, List<String> parts, Outline outline, List<Registration> lines, Units units) {

  FamilyPlate {
    parts = List.copyOf(parts);
    lines = List.copyOf(lines);
  }

  String title() {
    return name + ", template of " + Words.list(parts);
  }

  Drawing fullSize() {
    return drawing(0, 1);
  }

  /** For a laser or a machine: the edge moved out by half the kerf, mm. */
  Drawing forMachine(double kerf) {
    return drawing(kerf / 2, 1);
  }

  Drawing picture() {
    double enlargement = Drawing.enlargementFor(box());
    return PictureLegend.under(drawing(0, enlargement), PictureLegend.Meant.NOTHING);
  }

  Drawing cardPicture() {
    double enlargement = CardPdf.enlargementFor(box());
    return PictureLegend.under(drawing(0, enlargement), PictureLegend.Meant.NOTHING);
  }

  private Bounds box() {
    return fullSize().bounds();
  }

  private Drawing drawing(double wider, double enlargement) {
    double height = Drawing.TEXT_HEIGHT * enlargement;
    LabelPlacer placer = new LabelPlacer(Typeface.REGULAR::width, height / 4);
    List<Item> edge = new ArrayList<>();
    for (Loop loop : edge(wider)) {
      edge.add(new Item.Stroke(Path.of(loop)));
      placer.avoid(Path.of(loop));
    }
    PlateMarks marks = RegistrationMarks.of(lines);
    for (Item mark : marks.marks()) {
      placer.avoid(((Item.Stroke) mark).path());
    }
    List<Item> words = new ArrayList<>();
    Bounds box = outline.bounds();
    Point low = new Point(box.minX(), box.minY());
    words.add(size(placer, low, new Point(box.maxX(), box.minY()), -2.5 * height, height));
    words.add(size(placer, low, new Point(box.minX(), box.maxY()), 2.5 * height, height));
    for (PlateMarks.Said said : marks.words()) {
      words.addAll(placer.place(Wish.at(said.at(), said.text(), height)));
    }
    return new Drawing(
        title(),
        List.of(
            PartDrawing.layer(LayerName.TEMPLATE, edge),
            PartDrawing.layer(LayerName.MARKS, marks.marks()),
            PartDrawing.layer(LayerName.LABELS, words)),
        enlargement);
  }

  private List<Loop> edge(double wider) {
    Region plate = Region.of(outline);
    return wider == 0 ? plate.loops() : Morphology.dilate(plate, wider).region().loops();
  }

  private Item size(LabelPlacer placer, Point from, Point to, double offset, double height) {
    double value = from.distanceTo(to);
    return placer.place(
        new Item.Dimension(from, to, offset, "", value), Length.printDrawn(value, units), height);
  }
}
