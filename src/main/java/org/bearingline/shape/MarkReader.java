package org.bearingline.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.outline.Point;
import org.bearingline.part.Mark;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Formula;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.Listed;
import org.bearingline.shape.step.PointFormula;
import org.bearingline.yaml.YamlNode;

/** Reads centre lines, shoulder lines and drill centres. */
final class MarkReader {

  private static final List<String> WORDS = List.of("centre_line", "shoulder_line", "drill");

  private MarkReader() {}

  static Listed<MarkPlan> read(Optional<YamlNode> list, Scope scope) {
    return list.isPresent()
        ? Listed.read(list.get(), scope, "marks", MarkReader::one)
        : (values, action) -> {};
  }

  private static MarkPlan one(YamlNode item, Scope scope) {
    Map<String, YamlNode> fields = item.fields();
    String word = fields.keySet().stream().findFirst().orElse("");
    if (fields.size() != 1 || !WORDS.contains(word)) {
      throw new Problem(
          item.placeOfName(word),
          "“"
              + word
              + "” is no mark"
              + NearestName.among(WORDS, word)
                  .map(near -> "; did you mean " + near + "?")
                  .orElse("; the marks are " + String.join(", ", WORDS) + ", repeat, when"));
    }
    Fields f = new Fields(fields.get(word), scope);
    return word.equals("drill") ? drill(f) : line(f, word.equals("centre_line"));
  }

  private static MarkPlan drill(Fields f) {
    f.allowOnly("at", "diameter", "label");
    PointFormula at = f.point("at");
    Formula diameter = f.length("diameter");
    String label = label(f);
    return values ->
        new Mark.DrillCentre(
            at.at(values), diameter.positive(values, "the diameter of a hole"), label);
  }

  private static MarkPlan line(Fields f, boolean centre) {
    f.allowOnly("from", "to", "label");
    PointFormula from = f.point("from");
    PointFormula to = f.point("to");
    String label = label(f);
    return values -> drawn(f, from.at(values), to.at(values), centre, label);
  }

  private static Mark drawn(Fields f, Point from, Point to, boolean centre, String label) {
    if (from.distanceTo(to) < 1e-6) {
      throw f.problem("this mark has no length; leave it out with “when” where it vanishes");
    }
    return centre ? new Mark.CentreLine(from, to, label) : new Mark.ShoulderLine(from, to, label);
  }

  private static String label(Fields f) {
    return f.has("label") ? ShapeCheck.sentence(f.node().field("label")) : "";
  }
}
