package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.kit.SlotCutter;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;
import org.bearingline.routing.FrameOpening;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.Panel;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.Target;
import org.bearingline.yaml.YamlNode;

/** The panels of a job: each becomes a part, and the rails that hold it get their grooves. */
final class PanelFile {

  private static final Set<String> FIELDS =
      Set.of(
          "name",
          "quantity",
          "top-rail",
          "bottom-rail",
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

  private final List<PartOrder> orders;
  private final JobFile job;
  private final Wishes command;

  private PanelFile(List<PartOrder> orders, JobFile job, Wishes command) {
    this.orders = new ArrayList<>(orders);
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
    return file.orders;
  }

  private void add(YamlNode node) {
    node.allowOnly(FIELDS);
    String name = name(node.field("name"));
    Wishes own =
        JobFile.wishes(
            node,
            Map.of(),
            Optional.empty(),
            JobFile.length(node, "thickness", job.units()),
            Optional.empty());
    Wishes wishes = command.over(own.over(job.general()));
    Units units = Settings.units(wishes);
    Optional<PartOrder> top = rail(node, "top-rail");
    Optional<PartOrder> bottom = rail(node, "bottom-rail");
    PanelFields fields = new PanelFields(node, job, units);
    SlotCutter slot = fields.slot();
    PanelPlaces places = new PanelPlaces(node);
    Panel panel =
        places.placed(
            () -> {
              FrameOpening opening =
                  FrameOpening.of(
                      fields.opening("width"),
                      fields.opening("height"),
                      top.map(PanelFile::part),
                      bottom.map(PanelFile::part),
                      units);
              return Panel.fit(name, opening, fields.settings(slot, wishes));
            });
    top.ifPresent(rail -> groove(rail, node, slot, fields));
    bottom.filter(rail -> !top.equals(bottom)).ifPresent(r -> groove(r, node, slot, fields));
    orders.add(
        new PartOrder(
            name,
            node.optional("quantity").map(JobFile::count).orElse(1),
            new PanelDesign(panel),
            wishes,
            OperationFile.NONE,
            stock(panel),
            WrittenPlaces.of(job.top(), node).outdoneBy(command)));
  }

  private StockWishes stock(Panel panel) {
    return new StockWishes(
        panel.settings().species().solid() ? Grain.ALONG : Grain.NONE,
        JobFile.length(job.top(), "template-thickness", job.units()),
        Optional.of(panel.settings().species().name()));
  }

  private String name(YamlNode written) {
    String name = written.text();
    if (!JobFile.FILE_NAME.matcher(name).matches()) {
      throw written.problem(
          "“" + name + "” names files, so write it in small letters, digits and hyphens");
    }
    if (orders.stream().anyMatch(order -> order.name().equals(name))) {
      throw written.problem("a part “" + name + "” stands above; give each its own name");
    }
    return name;
  }

  private Optional<PartOrder> rail(YamlNode node, String field) {
    Optional<YamlNode> written = node.optional(field);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    String name = written.get().text();
    List<String> known =
        orders.stream()
            .filter(order -> !(order.shape() instanceof PanelDesign))
            .map(PartOrder::name)
            .toList();
    if (!known.contains(name)) {
      throw written
          .get()
          .problem(
              "no part of the job is called “"
                  + name
                  + "”"
                  + NearestName.hint(known, name)
                  + "; leave “"
                  + field
                  + "” out where the rail is straight");
    }
    return orders.stream().filter(order -> order.name().equals(name)).findFirst();
  }

  private static Part part(PartOrder rail) {
    return rail.placed(() -> rail.shape().part().named(rail.name()));
  }

  /** Grooves a rail, once for all panels of one groove. */
  private void groove(PartOrder rail, YamlNode node, SlotCutter slot, PanelFields fields) {
    Part part = part(rail);
    fields.checkFollows(part, slot);
    Target edge = Target.outside(part.contour());
    double thickness = Settings.thickness(rail.wishes());
    EdgeGroove groove =
        new EdgeGroove(
            new Head("groove", Face.A, node.field("groove").place()),
            slot,
            edge,
            GrooveExtent.through().alongEdge(edge.of()),
            EdgeGroove.Rides.WORK,
            fields.fromFace(slot, thickness),
            OptionalDouble.empty());
    int at = orders.stream().map(PartOrder::name).toList().indexOf(rail.name());
    PartOrder now = orders.get(at);
    Optional<EdgeGroove> before = now.operations().grooves().stream().findFirst();
    if (before.isEmpty()) {
      orders.set(at, now.grooved(groove));
    } else if (!before.get().cutter().equals(slot)
        || before.get().fromFace() != groove.fromFace()) {
      throw new Problem(
          node.field("groove").place(),
          "“"
              + rail.name()
              + "” holds another panel in a groove of other size; give both panels the same groove");
    }
  }
}
