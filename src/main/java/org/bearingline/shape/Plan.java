package org.bearingline.shape;

import java.util.List;
import org.bearingline.problem.Place;
import org.bearingline.shape.figure.Cavities;
import org.bearingline.shape.step.Listed;
import org.bearingline.shape.step.Step;

/**
 * What a checked shape draws.
 *
 * @param outline the steps of the outer edge
 * @param outlinePlace where they stand in the file
 */
record Plan(
    Listed<Step> outline,
    Place outlinePlace,
    Cavities cavities,
    Listed<MarkPlan> marks,
    List<String> notes) {

  Plan {
    notes = List.copyOf(notes);
  }
}
