package org.bearingline.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.MirroredDrawing;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Region;
import org.bearingline.outline.Similarity;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Station;
import org.bearingline.routing.Template;
import org.bearingline.routing.family.HalfTemplate;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.setup.ClampZones;

/**
 * One plate to make for a part, with the drawings of it.
 *
 * @param worked the part
 * @param template the plate; empty where nothing of the part is routed along one
 * @param result what routing found of all that the plate makes
 * @param marks what its drawing shows besides
 * @param mirror where the paper is printed mirrored
 * @param zones where clamps and tape may stand
 */
record Plate(
    WorkedPart worked,
    Optional<Template> template,
    RoutingResult result,
    PlateMarks marks,
    Optional<Similarity> mirror,
    Supplier<Optional<ClampZones>> zones) {

  /** The layers that help at the bench, on paper glued to the plate. */
  private static final Set<LayerName> ON_PAPER =
      EnumSet.of(
          LayerName.LEFTOVER,
          LayerName.GROOVE,
          LayerName.RECESS,
          LayerName.PART,
          LayerName.ROUGH_LINE,
          LayerName.TEMPLATE,
          LayerName.MARKS);

  /** Every plate of the part, at least one. */
  static List<Plate> of(WorkedPart worked) {
    if (worked.whole().isPresent()) {
      return WholePlates.of(worked, worked.whole().get());
    }
    List<Plate> plates = new ArrayList<>();
    for (Template template : worked.result().templates()) {
      plates.add(plain(worked, Optional.of(template)));
    }
    if (plates.isEmpty()) {
      plates.add(plain(worked, Optional.empty()));
    }
    return plates;
  }

  private static Plate plain(WorkedPart worked, Optional<Template> template) {
    return new Plate(
            worked,
            template,
            worked.result(),
            PlateMarks.NONE,
            Optional.empty(),
            HoldingZones.plain(worked, template))
        .registered();
  }

  /** With the lines of half a template, where it is one. */
  Plate registered() {
    if (isShared()) {
      // Where clamps may stand on a plate that is not drawn here would say nothing.
      return new Plate(worked, template, result, marks, mirror, Optional::empty);
    }
    return half()
        .map(
            half ->
                new Plate(
                    worked,
                    template,
                    result,
                    marks.and(RegistrationMarks.of(half.registration())),
                    mirror,
                    zones))
        .orElse(this);
  }

  private Optional<HalfTemplate> half() {
    return worked.way() instanceof PlateWay.Half way && isForEdge()
        ? Optional.of(way.half())
        : Optional.empty();
  }

  private boolean isShared() {
    return JobFamilies.isFromElsewhere(worked) && isForEdge();
  }

  private boolean isForEdge() {
    return serves().contains(Template.OUTSIDE_EDGE);
  }

  /** Whether it is made from this part's drawing, not from that of another. */
  boolean isMadeHere() {
    return !(worked.way() instanceof PlateWay.TurnedOver) && !isShared();
  }

  /** Names of the edges that the plate shapes. */
  List<String> serves() {
    return template.map(Template::serves).orElse(List.of());
  }

  /** Where the router is for what the plate makes. */
  Set<Station> stations() {
    Set<Station> stations = EnumSet.noneOf(Station.class);
    worked
        .whole()
        .ifPresent(
            whole ->
                whole
                    .from(template.map(Template::number).orElse(0))
                    .forEach(one -> stations.add(one.operation().station())));
    return stations.isEmpty() ? EnumSet.of(result.settings().station()) : stations;
  }

  /** The faces that lie up for what its arrows show. */
  Set<Face> facesFed() {
    FaceOrder faces = new FaceOrder(worked.grain());
    return worked
        .whole()
        .map(
            whole ->
                whole.from(template.map(Template::number).orElse(0)).stream()
                    .filter(one -> one.operation().tooling().isPresent())
                    .map(one -> faces.of(one.operation()).get(0))
                    .collect(Collectors.toSet()))
        .orElseGet(
            () ->
                serves().stream()
                    .flatMap(
                        edge ->
                            worked.grain().stream()
                                .flatMap(grain -> grain.faces(edge).stream().limit(1)))
                    .collect(Collectors.toSet()));
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
    List<Layer> layers = withZones(PartDrawing.layers(this, 1, isMadeHere()), 1);
    return new Drawing(title(), PartLabels.with(this, units, layers, 1));
  }

  /** For a laser or a machine: the template's line moved into the waste by half the kerf. */
  Drawing forMachine(Units units) {
    double kerf = Settings.kerf(worked.order().wishes());
    boolean asDrawn = kerf == 0 || template.isEmpty() || !isMadeHere();
    List<Layer> layers = new ArrayList<>();
    // A machine has no use for the hatch of the zones, and might follow it.
    List<Layer> drawn = PartDrawing.layers(this, 1, isMadeHere());
    for (Layer layer : PartLabels.with(this, units, drawn, 1)) {
      layers.add(layer.name() == LayerName.TEMPLATE && !asDrawn ? widened(kerf / 2) : layer);
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

  /** Full size, for the sheets that are glued to the plate. */
  Drawing forPaper(Units units) {
    return half().map(this::halved).orElse(this).sheets(units);
  }

  private Plate halved(HalfTemplate half) {
    return new Plate(
        worked,
        template,
        HalfOnPaper.of(result, half),
        RegistrationMarks.of(half.registration()),
        mirror,
        Optional::empty);
  }

  private Drawing sheets(Units units) {
    List<Layer> layers =
        PartLabels.with(
            this,
            units,
            lines(1).stream().filter(layer -> ON_PAPER.contains(layer.name())).toList(),
            1);
    Drawing drawing = new Drawing(title(), layers);
    return mirror.map(seen -> MirroredDrawing.of(drawing, seen)).orElse(drawing);
  }

  /** The whole for a screen, with lettering that is legible when all of it is in sight. */
  Drawing screen(Units units) {
    return screen(units, Drawing.enlargementFor(box()));
  }

  /** The whole for a screen. */
  Drawing screen(Units units, double enlargement) {
    return new Drawing(
        title(), PartLabels.with(this, units, seen(enlargement), enlargement), enlargement);
  }

  /** The whole at a glance, with lettering that is legible in a small picture. */
  Drawing picture(Units units) {
    return picture(units, Drawing.enlargementFor(box()));
  }

  /** The whole for the card, with lettering that is legible at arm's length. */
  Drawing cardPicture(Units units) {
    return picture(units, CardPdf.enlargementFor(box()));
  }

  private boolean hasZone(boolean forClamps) {
    return zones.get().stream()
        .flatMap(all -> all.zones().stream())
        .anyMatch(zone -> zone.reachesEdge() == forClamps);
  }

  private Bounds box() {
    return new Drawing(title(), seen(1)).bounds();
  }

  private Drawing picture(Units units, double enlargement) {
    return PictureLegend.under(
        screen(units, enlargement),
        new PictureLegend.Meant(
            worked.grain().map(grain -> grain.classes(serves())).orElse(Set.of()),
            FeedWords.legend(stations(), facesFed()),
            hasZone(true),
            hasZone(false)));
  }

  private List<Layer> seen(double enlargement) {
    return withZones(lines(enlargement), enlargement);
  }

  /** A shared plate is so much longer than some parts that they would not be seen beside it. */
  private List<Layer> lines(double enlargement) {
    return PartDrawing.layers(this, enlargement, !isShared());
  }

  private List<Layer> withZones(List<Layer> lines, double enlargement) {
    List<Item> hatch = zones.get().map(new ZoneHatch(enlargement)::items).orElse(List.of());
    if (hatch.isEmpty()) {
      return lines;
    }
    List<Layer> layers = new ArrayList<>();
    layers.add(PartDrawing.layer(LayerName.HOLDING, hatch));
    layers.addAll(lines);
    return layers;
  }
}
