package org.bearingline.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.FrameMember;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.Panel;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.yaml.YamlNode;

/** The panels of a job: each becomes a part, and the rails that hold it get their grooves. */
final class PanelFile {

  private static final Set<String> FIELDS =
      Set.of(
          "name",
          "quantity",
          "top-rail",
          "bottom-rail",
          "stiles",
          "left-stile",
          "right-stile",
          "stile-grooves",
          "foot",
          "from-left",
          "opening",
          "groove",
          "species",
          "sawn",
          "fibres",
          "thickness",
          "moisture",
          "moisture-range",
          "humidity",
          "temperature",
          "gap-along",
          "gap-across",
          "start-gap",
          "least-seat",
          "bit",
          "bearing",
          "collar",
          "allowance",
          "saw-blade",
          "run-out",
          "kerf",
          "paper",
          "margin",
          "printed");

  private final FrameOrders orders;
  private final JobFile job;
  private final Wishes command;

  private PanelFile(List<PartOrder> orders, JobFile job, Wishes command) {
    this.orders = new FrameOrders(orders);
    this.job = job;
    this.command = command;
  }

  /**
   * The parts of a job with their grooves, and its panels after them.
   *
   * @param command the wishes of the command; they go before those of the file
   */
  static List<PartOrder> added(List<PartOrder> parts, JobFile job, Wishes command) {
    PanelFile file = new PanelFile(parts, job, command);
    for (YamlNode node : job.top().field("panels").items()) {
      file.add(node);
    }
    return file.orders.all();
  }

  private void add(YamlNode node) {
    node.allowOnly(FIELDS);
    String name = name(node.field("name"));
    Wishes own =
        WishFields.of(
            node,
            Map.of(),
            Optional.empty(),
            WishFields.length(node, "thickness", job.units()),
            Optional.empty(),
            DrawnWishes.NONE);
    Wishes wishes = command.over(own.over(job.general()));
    Units units = Settings.units(wishes);
    int quantity = node.optional("quantity").map(JobFile::count).orElse(1);
    PanelFields fields = new PanelFields(node, job, units);
    SlotCutter slot = fields.slot();
    PanelFrame frame = orders.frame(node, name, quantity, units);
    PanelPlaces places = new PanelPlaces(node);
    Panel panel =
        places.placed(
            () ->
                Panel.fit(
                    name,
                    frame.opening(
                        fields.opening("width"), fields.opening("height"), fields.fromLeft()),
                    fields.settings(slot, wishes)));
    places.placing(() -> groove(frame, panel, slot, fields));
    orders.add(
        new PartOrder(
            name,
            quantity,
            new PanelDesign(panel),
            wishes,
            OperationFile.NONE,
            stock(panel),
            WrittenPlaces.of(job.top(), node).outdoneBy(command)));
  }

  private StockWishes stock(Panel panel) {
    return new StockWishes(
        panel.settings().species().solid() ? Grain.ALONG : Grain.NONE,
        WishFields.length(job.top(), "template-thickness", job.units()),
        Optional.of(panel.settings().species().name()));
  }

  private String name(YamlNode written) {
    String name = written.text();
    if (!JobFile.FILE_NAME.matcher(name).matches()) {
      throw written.problem(
          "“" + name + "” names files, so write it in small letters, digits and hyphens");
    }
    if (orders.has(name)) {
      throw written.problem("a part “" + name + "” stands above; give each its own name");
    }
    return name;
  }

  /** Grooves every member that is named, all at the same distance from the face. */
  private void groove(PanelFrame frame, Panel panel, SlotCutter slot, PanelFields fields) {
    boolean through = fields.stilesThrough();
    Map<BoardSide, GrooveExtent> extents = frame.extents(panel.opening(), slot, through);
    Map<BoardSide, List<String>> notes = frame.notes(panel.opening(), slot, through);
    double thinnest =
        frame.named().values().stream()
            .mapToDouble(order -> Settings.thickness(order.wishes()))
            .min()
            .orElse(0);
    extents.forEach(
        (side, extent) -> {
          // Of two stiles that are one part, the left one is drawn.
          if (side == BoardSide.RIGHT && frame.oneStile()) {
            return;
          }
          FrameMember member = frame.members().get(side);
          fields.checkFollows(member, slot);
          EdgeGroove groove =
              new EdgeGroove(
                  new Head("groove", Face.A, frame.node().field("groove").place()),
                  slot,
                  FrameOrders.edge(member),
                  extent,
                  EdgeGroove.Rides.WORK,
                  fields.fromFace(slot, thinnest),
                  OptionalDouble.empty());
          orders.groove(member, groove, notes.getOrDefault(side, List.of()));
        });
  }
}
