package org.bearingline.job;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.bearingline.drawing.sheet.Margins;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.kit.Kit;
import org.bearingline.routing.Cautions;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.ShapeLibrary;
import org.bearingline.wood.Species;
import org.bearingline.wood.SpeciesTable;

/**
 * What there is to work with: shapes, the usual kit, papers and woods.
 *
 * @param shapes in alphabetical order
 * @param kit the usual kit, as the fields of a kit file
 * @param papers by name
 * @param species woods and sheets
 * @param cautions what holds for all work
 * @param margin what a printer usually leaves white, mm
 */
public record ShopView(
    List<ShapeView> shapes,
    Map<String, Object> kit,
    List<PaperView> papers,
    List<SpeciesView> species,
    List<String> cautions,
    MarginView margin) {

  /** A shape with what can be set of it. */
  public record ShapeView(String name, String about, List<MeasureView> measures) {}

  /** A paper, mm; the height of a roll is null. */
  public record PaperView(String name, double width, Double height) {}

  /** A wood, or a sheet material. */
  public record SpeciesView(String name, boolean solid) {}

  /** mm at the sides and the head, and at the foot. */
  public record MarginView(double side, double foot) {}

  /** What comes with the program. */
  public static ShopView shipped() {
    ShapeLibrary library = ShapeLibrary.builtIn();
    Margins margins = Margins.usual();
    return new ShopView(
        library.names().stream().map(library::find).map(ShopView::shape).toList(),
        KitTree.of(Kit.usual()),
        Paper.named().stream().map(ShopView::paper).toList(),
        SpeciesTable.all().stream().map(ShopView::species).toList(),
        Cautions.always(),
        new MarginView(margins.side(), margins.foot()));
  }

  private static ShapeView shape(CheckedShape shape) {
    return new ShapeView(
        shape.name(), shape.about(), shape.measures().stream().map(MeasureView::of).toList());
  }

  private static PaperView paper(Paper paper) {
    OptionalDouble height = paper.height();
    return new PaperView(
        paper.name(), paper.width(), height.isPresent() ? height.getAsDouble() : null);
  }

  private static SpeciesView species(Species species) {
    return new SpeciesView(species.name(), species.solid());
  }
}
