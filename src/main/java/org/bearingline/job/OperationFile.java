package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.routing.operation.FaceWishes;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.routing.operation.UsualOperations;
import org.bearingline.shape.Design;
import org.bearingline.yaml.YamlNode;

/**
 * What a part of a job file says of its operations, faces and hands.
 *
 * @param list the operations as written; empty where the part's own edge and cavities are meant
 * @param faces pair and registration
 * @param register where the registration is written
 * @param half where half a template is asked for
 * @param units of a bare length; empty to refuse one
 * @param grooves for the panels that the part holds
 */
record OperationFile(
    Optional<YamlNode> list,
    FaceWishes faces,
    Optional<YamlNode> register,
    Optional<YamlNode> half,
    Optional<Units> units,
    List<EdgeGroove> grooves) {

  OperationFile {
    grooves = List.copyOf(grooves);
  }

  /** A part that says nothing. */
  static final OperationFile NONE =
      new OperationFile(
          Optional.empty(),
          FaceWishes.NONE,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  /** Reads a part's fields; the operations themselves wait until its shape is known. */
  static OperationFile in(YamlNode part, Optional<Units> units) {
    Optional<YamlNode> register = part.optional("register");
    return new OperationFile(
        part.optional("operations"),
        new FaceWishes(
            part.optional("pair").map(OperationFile::pair), register.map(OperationFile::register)),
        register,
        part.optional("template").filter(OperationFile::isHalf),
        units,
        List.of());
  }

  private static boolean isHalf(YamlNode node) {
    return switch (node.text()) {
      case "half" -> true;
      case "whole" -> false;
      default ->
          throw node.problem(
              "“"
                  + node.text()
                  + "” is no kind of template"
                  + NearestName.hint(List.of("whole", "half"), node.text())
                  + "; write whole or half");
    };
  }

  private static FaceWishes.Pair pair(YamlNode node) {
    return switch (node.text()) {
      case "left-right" -> FaceWishes.Pair.LEFT_RIGHT;
      case "right-left" -> FaceWishes.Pair.RIGHT_LEFT;
      default ->
          throw node.problem(
              "“"
                  + node.text()
                  + "” is no pair; write left-right where the shape as drawn is the left piece, or"
                  + " right-left");
    };
  }

  private static FaceWishes.Register register(YamlNode node) {
    return switch (node.text()) {
      case "pins" -> FaceWishes.Register.PINS;
      case "stops" -> FaceWishes.Register.STOPS;
      case "lines" -> FaceWishes.Register.LINES;
      default ->
          throw node.problem(
              "“"
                  + node.text()
                  + "” registers nothing"
                  + NearestName.hint(List.of("pins", "stops", "lines"), node.text())
                  + "; write pins, stops or lines");
    };
  }

  /** Whether the part says anything that the usual way of working it does not. */
  boolean isWritten() {
    return list.isPresent() || !grooves.isEmpty() || !faces.isNone();
  }

  /**
   * The operations of a part, the usual ones where none are written.
   *
   * @param usual the part's own bit and follower
   */
  List<Operation> operations(Part part, Design shape, Tooling usual, OperationTools tools) {
    List<Operation> operations =
        list.isPresent()
            ? written(part, shape, tools)
            : new ArrayList<>(
                UsualOperations.of(part, usual, tools.handling(usual.cutter(), usual.follower())));
    for (EdgeGroove groove : grooves) {
      refuseSecond(operations, groove, part);
      EdgeGroove own =
          groove.with(tools.handling(groove.cutter().cutter(), groove.cutter().bearing()));
      operations.add(own.named(freeName(operations, groove.name())));
    }
    return operations;
  }

  /** A groove that the part names itself must lie along another edge than the panel's. */
  private static void refuseSecond(List<Operation> operations, EdgeGroove groove, Part part) {
    for (Operation operation : operations) {
      if (operation instanceof EdgeGroove own
          && own.edge().of().equals(groove.edge().of())
          && (own.extent().side().isEmpty()
              || own.extent().side().equals(groove.extent().side()))) {
        throw new Problem(
            own.place() instanceof Place.Nowhere ? groove.place() : own.place(),
            "“"
                + part.name()
                + "” is grooved along this edge for a panel; leave the groove out of its"
                + " operations, the panel brings its own");
      }
    }
  }

  private static String freeName(List<Operation> operations, String wanted) {
    String name = wanted;
    for (int number = 2; isTaken(operations, name); number++) {
      name = wanted + "-" + number;
    }
    return name;
  }

  private static boolean isTaken(List<Operation> operations, String name) {
    return operations.stream().anyMatch(one -> one.name().equals(name));
  }

  /** The same part with these grooves for panels. */
  OperationFile with(List<EdgeGroove> others) {
    return new OperationFile(list, faces, register, half, units, others);
  }

  private List<Operation> written(Part part, Design shape, OperationTools tools) {
    List<Operation> operations = new ArrayList<>();
    for (YamlNode item : list.orElseThrow().items()) {
      OperationFields fields =
          new OperationFields(
              item, shape.scope(units), shape.named(), part, List.copyOf(operations), tools);
      operations.addAll(OperationReader.read(fields));
    }
    if (operations.isEmpty()) {
      throw list.get()
          .problem("the list of operations is empty; leave “operations:” out for the usual ones");
    }
    return operations;
  }

  /** A problem of the plan, told where its field is written. */
  Problem located(Problem problem) {
    return problem.place() instanceof Place.Field field
            && field.name().equals("register")
            && register.isPresent()
        ? new Problem(register.get().place(), problem.getMessage(), problem)
        : problem;
  }
}
