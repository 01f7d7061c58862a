package org.bearingline.routing.grain;

import java.util.List;

/**
 * A step before it has a number and its sentence.
 *
 * @param what is routed, in words
 * @param how in words, with a space before; may be empty
 */
record StepDraft(
    Approach approach,
    List<GrainStretch> stretches,
    List<BackingBlock> blocks,
    String what,
    String how) {}
