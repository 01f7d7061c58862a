package org.bearingline.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.bearingline.outline.Point;
import org.bearingline.part.EdgeKind;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.EdgeOperation;
import org.bearingline.routing.operation.Face;
import org.bearingline.routing.operation.Head;
import org.bearingline.routing.operation.Ledge;
import org.bearingline.routing.operation.Mortise;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.Recess;
import org.bearingline.routing.operation.Rim;
import org.bearingline.routing.operation.StoppedSlot;
import org.bearingline.routing.operation.Target;
import org.bearingline.routing.operation.ThroughOpening;
import org.bearingline.routing.operation.Tooling;
import org.bearingline.yaml.YamlNode;

/** Reads one operation: its word, with its name as the value, and the fields of that word. */
final class OperationReader {

  private static final Map<String, BiFunction<OperationFields, String, List<Operation>>> BY_WORD =
      words();

  private OperationReader() {}

  private static Map<String, BiFunction<OperationFields, String, List<Operation>>> words() {
    Map<String, BiFunction<OperationFields, String, List<Operation>>> words = new LinkedHashMap<>();
    words.put("edge", OperationReader::edge);
    words.put("groove", GrooveReader::read);
    words.put("recess", OperationReader::recess);
    words.put("through", OperationReader::through);
    words.put("ledge", OperationReader::ledge);
    words.put("stopped-slot", OperationReader::slot);
    words.put("mortise", OperationReader::mortise);
    words.put("hinge-leaf", HingeReader::leaf);
    words.put("hinge-cups", HingeReader::cups);
    words.put("inlay", InlayReader::read);
    words.put("drill", HingeReader::drill);
    return Collections.unmodifiableMap(words);
  }

  static List<Operation> read(OperationFields fields) {
    Map<String, YamlNode> written = fields.node().fields();
    List<String> found = written.keySet().stream().filter(BY_WORD::containsKey).toList();
    if (found.size() != 1) {
      if (found.isEmpty() && !written.isEmpty()) {
        String first = written.keySet().iterator().next();
        throw new Problem(
            fields.node().placeOfName(first),
            "“"
                + first
                + "” is no operation"
                + NearestName.hint(BY_WORD.keySet(), first)
                + "; begin with one of "
                + String.join(", ", BY_WORD.keySet()));
      }
      throw fields.problem("one operation is wanted here: " + String.join(", ", BY_WORD.keySet()));
    }
    String word = found.get(0);
    return BY_WORD.get(word).apply(fields, written.get(word).text());
  }

  private static List<Operation> edge(OperationFields f, String name) {
    f.allowOnly(OperationTools.FIELDS, "edge", "depth");
    Target target = Target.outside(f.part().contour());
    if (f.part().contour().isAll(EdgeKind.SAWN)) {
      throw f.problem("every outer edge of this part is sawn, so there is none to rout");
    }
    return List.of(
        new EdgeOperation(
            f.head(name, Face.A), f.tools().forEdge(f, target), target, f.optionalLength("depth")));
  }

  private static List<Operation> recess(OperationFields f, String name) {
    f.allowFigureAnd(OperationTools.FIELDS, "recess", "cavity", "depth");
    Target target = f.opening(name);
    return List.of(
        new Recess(f.head(name, Face.A), f.tools().forEdge(f, target), target, depth(f, target)));
  }

  /** As written, else that of the part's cavity. */
  private static double depth(OperationFields f, Target target) {
    if (f.has("depth")) {
      return f.length("depth");
    }
    return f.part().cavities().stream()
        .filter(cavity -> cavity.name().equals(target.of()))
        .flatMapToDouble(cavity -> cavity.depth().stream())
        .findFirst()
        .orElseThrow(() -> f.problem("“depth:” is missing here"));
  }

  private static List<Operation> through(OperationFields f, String name) {
    Head head = f.head(name, Face.A);
    if (f.has("inside")) {
      f.allowOnly(OperationTools.FIELDS, "through", "inside", "width");
      Target ledge = f.edge("inside");
      Target target = Target.opening(name, Rim.inside(head, ledge, f.length("width")));
      return List.of(new ThroughOpening(head, f.tools().forEdge(f, target), target));
    }
    f.allowFigureAnd(OperationTools.FIELDS, "through", "cavity");
    Target target = f.opening(name);
    return List.of(new ThroughOpening(head, f.tools().forEdge(f, target), target));
  }

  private static List<Operation> ledge(OperationFields f, String name) {
    Head head = f.head(name, Face.A);
    if (f.has("around")) {
      f.allowOnly(OperationTools.FIELDS, "ledge", "around", "width", "depth");
      Target target =
          Target.opening(name, Rim.around(head, f.part(), f.edge("around"), f.length("width")));
      return List.of(new Ledge(head, f.tools().forEdge(f, target), target, f.length("depth")));
    }
    f.allowFigureAnd(OperationTools.FIELDS, "ledge", "cavity", "depth");
    Target target = f.opening(name);
    return List.of(new Ledge(head, f.tools().forEdge(f, target), target, depth(f, target)));
  }

  private static List<Operation> slot(OperationFields f, String name) {
    f.allowOnly(OperationTools.FIELDS, "stopped-slot", "from", "to", "width", "depth");
    double width = f.length("width");
    Point from = f.point("from");
    Point to = f.point("to");
    Head head = f.head(name, Face.A);
    Tooling tool = f.tools().forSlot(f, width, StoppedSlot.target(head, from, to, width));
    return List.of(StoppedSlot.between(head, tool, from, to, width, f.length("depth")));
  }

  private static List<Operation> mortise(OperationFields f, String name) {
    f.allowOnly(OperationTools.UNSHARED, "mortise", "centre", "length", "width", "tilt", "depth");
    double width = f.length("width");
    double length = f.length("length");
    Tooling tool = f.tools().forMortise(f, Math.min(width, length));
    OptionalDouble depth = f.optionalLength("depth");
    return List.of(
        Mortise.about(
            f.head(name, Face.A), tool, f.point("centre"), length, width, f.angle("tilt"), depth));
  }
}
