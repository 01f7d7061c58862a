package org.bearingline.shape.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.step.Fields;
import org.bearingline.shape.step.Listed;
import org.bearingline.shape.step.Outlines;
import org.bearingline.shape.step.Step;
import org.bearingline.yaml.YamlNode;

/** Reads the figure of an opening: a closed form, steps, or a union of figures. */
public final class Figures {

  private static final Map<String, Function<Fields, Figure>> BY_WORD = words();

  private Figures() {}

  private static Map<String, Function<Fields, Figure>> words() {
    Map<String, Function<Fields, Figure>> words = new LinkedHashMap<>();
    words.put("rectangle", RectangleFigure::read);
    words.put("circle", RoundFigures::circle);
    words.put("ellipse", RoundFigures::ellipse);
    words.put("slot", SlotFigure::read);
    words.put("cross", CrossFigure::read);
    words.put("steps", Figures::steps);
    words.put("union", UnionFigure::read);
    return java.util.Collections.unmodifiableMap(words);
  }

  /** The words that begin a figure. */
  public static Set<String> names() {
    return BY_WORD.keySet();
  }

  /** The one figure among the fields of a node; {@code others} are the fields beside it. */
  public static Figure read(YamlNode node, Scope scope, Set<String> others) {
    Map<String, YamlNode> fields = node.fields();
    List<String> found = fields.keySet().stream().filter(BY_WORD::containsKey).toList();
    for (String field : fields.keySet()) {
      if (!BY_WORD.containsKey(field) && !others.contains(field)) {
        Set<String> known = new java.util.TreeSet<>(BY_WORD.keySet());
        known.addAll(others);
        throw new Problem(
            node.placeOfName(field),
            "“" + field + "” is not known here" + NearestName.hint(known, field));
      }
    }
    if (found.size() != 1) {
      throw node.problem("one figure is wanted here: " + String.join(", ", BY_WORD.keySet()));
    }
    String word = found.get(0);
    return BY_WORD.get(word).apply(new Fields(fields.get(word), scope));
  }

  private static Figure steps(Fields f) {
    Listed<Step> steps = Outlines.read(f.node(), f.scope());
    Place place = f.place();
    return values -> Outlines.drawn(steps, values).contour(place);
  }
}
