package org.bearingline.routing.grain;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Path;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/** Cuts one edge into stretches of one class and joins neighbours of the same class. */
final class EdgeReader {

  private final String name;
  private final List<GrainStretch> stretches = new ArrayList<>();
  private final List<Primitive> run = new ArrayList<>();
  private GrainClass grain;

  private EdgeReader(String name) {
    this.name = name;
  }

  static List<GrainStretch> read(GrainEdge edge, GrainSettings settings, Approach approach) {
    boolean left = approach.isWoodOnLeft();
    Contour contour = left ? edge.contour() : edge.contour().reversed();
    Lean lean = new Lean(settings, left);
    EdgeReader reader = new EdgeReader(edge.name());
    for (int i = 0; i < contour.loop().size(); i++) {
      if (contour.kinds().get(i) == EdgeKind.SAWN) {
        reader.finish();
        continue;
      }
      for (Primitive part : lean.cut(contour.loop().primitives().get(i))) {
        reader.take(part, lean.classAt(part, 0.5));
      }
    }
    reader.finish();
    boolean routedAtEnds =
        contour.kinds().get(0) == EdgeKind.ROUTED
            && contour.kinds().get(contour.kinds().size() - 1) == EdgeKind.ROUTED;
    if (routedAtEnds) {
      reader.joinOverTheStart();
    }
    return reader.stretches;
  }

  private void take(Primitive part, GrainClass its) {
    if (its != grain) {
      finish();
      grain = its;
    }
    run.add(part);
  }

  private void finish() {
    if (!run.isEmpty()) {
      stretches.add(new GrainStretch(name, new Path(run), grain));
      run.clear();
    }
    grain = null;
  }

  /** A loop's first primitive is no place where anything changes. */
  private void joinOverTheStart() {
    int last = stretches.size() - 1;
    if (last < 1 || stretches.get(0).grain() != stretches.get(last).grain()) {
      return;
    }
    List<Primitive> joined = new ArrayList<>(stretches.get(last).path().primitives());
    joined.addAll(stretches.get(0).path().primitives());
    stretches.set(0, new GrainStretch(name, new Path(joined), stretches.get(0).grain()));
    stretches.remove(last);
  }
}
