package org.bearingline.routing.setup;

import org.bearingline.kit.Bit;
import org.bearingline.length.Units;

/** Chooses the way of working by what guides the bit. */
final class SetupPlanner {

  private final SetupDraft draft;

  SetupPlanner(SetupRequest request, Units units) {
    draft = new SetupDraft(request, units);
  }

  Setup plan() {
    SetupTool tool = draft.tool();
    // Asked for its refusal, whichever way the passes are then laid out.
    draft.deepestPass();
    if (tool.hasCollar()) {
      new CollarWay(draft).work();
    } else if (tool.seat() == Bit.BearingSeat.TIP) {
      new TipWay(draft).work();
    } else if (tool.seat() == Bit.BearingSeat.NONE) {
      throw draft.problem(
          "this bit carries no bearing, so nothing rides the template; use a bit with a bearing or"
              + " a collar");
    } else {
      new ShankWay(draft).work();
    }
    return draft.finished();
  }
}
