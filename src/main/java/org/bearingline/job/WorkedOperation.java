package org.bearingline.job;

import java.util.List;
import java.util.Optional;
import org.bearingline.routing.operation.Operation;
import org.bearingline.routing.operation.PlannedOperation;
import org.bearingline.routing.setup.GrooveSetup;
import org.bearingline.routing.setup.Setup;

/**
 * One operation at its place in the order of work.
 *
 * @param number from 1, in working order
 * @param planned what is done and from which template
 * @param setup passes and spacers; empty for a groove and for what is drilled
 * @param groove heights and bites of a groove; empty for all else
 */
record WorkedOperation(
    int number, PlannedOperation planned, Optional<Setup> setup, Optional<GrooveSetup> groove) {

  Operation operation() {
    return planned.operation();
  }

  /** What the setting up asks for beside the figures of its table. */
  List<String> sentences() {
    return setup.map(Setup::advice).or(() -> groove.map(GrooveSetup::sentences)).orElse(List.of());
  }
}
