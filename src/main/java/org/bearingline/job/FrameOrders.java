package org.bearingline.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.BoardSide;
import org.bearingline.routing.FrameMember;
import org.bearingline.routing.GrooveExtent;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.Target;
import org.bearingline.shape.MeasuredShape;
import org.bearingline.yaml.YamlNode;

/** The parts of a job while its panels are read: which of their edges are grooved for which. */
final class FrameOrders {

  /** The measure by which a shape leaves wood for its groove. */
  private static final String GROOVE = "groove";

  /** A depth that differs by less than this, in mm, is the same. */
  private static final double SAME_DEPTH = 0.05;

  private static final double ROUNDING = 1e-4;

  private final List<PartOrder> orders;
  private final List<Use> uses = new ArrayList<>();

  /** An edge of a part that a panel sits in. */
  private record Use(String part, String panel, BoardSide role, BoardSide side) {}

  FrameOrders(List<PartOrder> orders) {
    this.orders = new ArrayList<>(orders);
  }

  List<PartOrder> all() {
    return List.copyOf(orders);
  }

  boolean has(String name) {
    return orders.stream().anyMatch(order -> order.name().equals(name));
  }

  void add(PartOrder order) {
    orders.add(order);
  }

  /**
   * The parts round one panel.
   *
   * @param quantity how many of that panel the job makes
   */
  PanelFrame frame(YamlNode node, String panel, int quantity, Units units) {
    if (node.optional("stiles").isPresent()) {
      for (String field : List.of("left-stile", "right-stile")) {
        if (node.optional(field).isPresent()) {
          throw node.field(field).problem("“stiles” names both; keep one of the two");
        }
      }
    }
    Map<BoardSide, PartOrder> named = new EnumMap<>(BoardSide.class);
    Map<BoardSide, FrameMember> members = new EnumMap<>(BoardSide.class);
    for (BoardSide role : BoardSide.values()) {
      String field = PanelFrame.field(node, role);
      Optional<YamlNode> written = node.optional(field);
      if (written.isPresent()) {
        PartOrder order = known(written.get(), field);
        Part part = order.placed(() -> order.shape().part().named(order.name()));
        FrameMember member = member(order, part, panel, role, quantity, written.get());
        uses.add(new Use(order.name(), panel, role, member.side()));
        named.put(role, order);
        members.put(role, member);
      }
    }
    return new PanelFrame(node, named, members, rightIsLeft(named), units);
  }

  /** Whether the right stile's part is drawn as a left one, here or at an earlier panel. */
  private boolean rightIsLeft(Map<BoardSide, PartOrder> named) {
    PartOrder right = named.get(BoardSide.RIGHT);
    return right != null
        && uses.stream()
            .anyMatch(use -> use.part().equals(right.name()) && use.role() == BoardSide.LEFT);
  }

  private PartOrder known(YamlNode written, String field) {
    String name = written.text();
    List<String> known =
        orders.stream()
            .filter(order -> !(order.shape() instanceof PanelDesign))
            .map(PartOrder::name)
            .toList();
    if (!known.contains(name)) {
      throw written.problem(
          "no part of the job is called “"
              + name
              + "”"
              + NearestName.hint(known, name)
              + "; leave “"
              + field
              + "” out where "
              + (field.endsWith("rail") ? "the rail is straight" : "it is grooved elsewhere"));
    }
    return orders.get(index(name));
  }

  private int index(String name) {
    return orders.stream().map(PartOrder::name).toList().indexOf(name);
  }

  /** A shape that reckons with a groove reckons with this one. */
  private static PartOrder fitted(PartOrder order, EdgeGroove groove) {
    double deep = groove.cutter().depth();
    Double depth = order.shape().lengths().get(GROOVE);
    boolean written =
        order.wishes().measures().containsKey(GROOVE) || !(order.shape() instanceof MeasuredShape);
    if (depth == null || Math.abs(depth - deep) < (written ? SAME_DEPTH : ROUNDING)) {
      return order;
    }
    Units units = Settings.units(order.wishes());
    if (written || !(order.shape() instanceof MeasuredShape shape)) {
      throw order
          .places()
          .at(
              new Problem(
                  Place.field(GROOVE),
                  "the panel's slot cutter goes "
                      + Length.print(deep, units)
                      + " in and the measure “groove” says "
                      + Length.print(depth, units)
                      + "; leave the measure out, or give both the same depth"));
    }
    try {
      return order.of(
          shape.with(
              GROOVE,
              BigDecimal.valueOf(deep).setScale(4, RoundingMode.HALF_EVEN).toPlainString() + "mm",
              order.wishes().units()));
    } catch (Problem refused) {
      throw groove.problem("“" + order.name() + "”: " + refused.spoken());
    }
  }

  private FrameMember member(
      PartOrder order, Part part, String panel, BoardSide role, int quantity, YamlNode written) {
    boolean onePiece = order.quantity() < 2 * quantity;
    for (Use use : uses) {
      if (!use.part().equals(order.name())) {
        continue;
      }
      boolean otherEdge = onePiece && use.role() != role && isRail(use.role()) == isRail(role);
      if (otherEdge && use.panel().equals(panel)) {
        throw written.problem(
            "a frame has two of these, and the job makes only "
                + order.quantity()
                + " of “"
                + order.name()
                + "”; give the part a quantity of "
                + 2 * quantity);
      }
      return new FrameMember(part, otherEdge ? opposite(use.side()) : use.side());
    }
    return order.placed(() -> FrameMember.of(part));
  }

  private static boolean isRail(BoardSide role) {
    return role == BoardSide.TOP || role == BoardSide.BOTTOM;
  }

  private static BoardSide opposite(BoardSide side) {
    return switch (side) {
      case LEFT -> BoardSide.RIGHT;
      case RIGHT -> BoardSide.LEFT;
      case TOP -> BoardSide.BOTTOM;
      case BOTTOM -> BoardSide.TOP;
    };
  }

  /** Grooves a member for a panel, once for all panels of one groove. */
  void groove(FrameMember member, EdgeGroove groove, List<String> notes) {
    PartOrder now = fitted(orders.get(index(member.part().name())), groove);
    PartOrder noted = now.of(FramedDesign.of(now.shape(), notes));
    List<EdgeGroove> grooves = new ArrayList<>(noted.operations().grooves());
    for (int i = 0; i < grooves.size(); i++) {
      EdgeGroove before = grooves.get(i);
      if (before.extent().side().equals(groove.extent().side())) {
        if (!before.cutter().equals(groove.cutter()) || before.fromFace() != groove.fromFace()) {
          throw groove.problem(
              "“"
                  + now.name()
                  + "” holds another panel in a groove of other size; give both panels the same"
                  + " groove");
        }
        grooves.set(i, longer(before, groove.extent()));
        orders.set(index(now.name()), noted.grooved(grooves));
        return;
      }
    }
    grooves.add(groove);
    orders.set(index(now.name()), noted.grooved(grooves));
  }

  /** One groove that holds both panels. */
  private static EdgeGroove longer(EdgeGroove groove, GrooveExtent other) {
    GrooveExtent own = groove.extent();
    return new EdgeGroove(
        groove.head(),
        groove.cutter(),
        groove.edge(),
        new GrooveExtent(
            own.edge(),
            own.side(),
            least(own.fromStart(), other.fromStart()),
            least(own.fromEnd(), other.fromEnd())),
        groove.rides(),
        groove.fromFace(),
        groove.into());
  }

  private static OptionalDouble least(OptionalDouble a, OptionalDouble b) {
    return a.isEmpty() || b.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.min(a.getAsDouble(), b.getAsDouble()));
  }

  /** The edge that a member's groove follows. */
  static Target edge(FrameMember member) {
    return Target.outside(member.part().contour());
  }
}
