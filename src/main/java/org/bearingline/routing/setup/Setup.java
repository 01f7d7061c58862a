package org.bearingline.routing.setup;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.bearingline.length.Units;

/**
 * How one operation is set up.
 *
 * @param request what was asked
 * @param passes in order
 * @param speedCeiling revolutions a minute not to be passed; empty where only the bit's own marking
 *     tells
 * @param template what thickness of template it takes
 * @param sentences for the card, in the reader's units
 * @param advice those of the sentences that say more than the figures of passes and speed
 */
public record Setup(
    SetupRequest request,
    List<SetupPass> passes,
    OptionalInt speedCeiling,
    TemplateThickness template,
    List<String> sentences,
    List<String> advice) {

  public Setup {
    Objects.requireNonNull(request);
    passes = List.copyOf(passes);
    Objects.requireNonNull(speedCeiling);
    Objects.requireNonNull(template);
    sentences = List.copyOf(sentences);
    advice = List.copyOf(advice);
  }

  /**
   * Works out the setup.
   *
   * @throws org.bearingline.problem.Problem where a pass would be deeper than the cutter is long,
   *     where a template is no thicker than the collar's tube, or where a bearing at the tip would
   *     have to run in a blind recess
   */
  public static Setup of(SetupRequest request, Units units) {
    return new SetupPlanner(request, units).plan();
  }
}
