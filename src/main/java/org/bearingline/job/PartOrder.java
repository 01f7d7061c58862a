package org.bearingline.job;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.EdgeGroove;
import org.bearingline.shape.Design;

/**
 * One part to make.
 *
 * @param name fit for a file name, unique in the job
 * @param quantity how many, 1 or more
 * @param shape what it looks like
 * @param wishes tool, stock and paper, the job's and the command's already worked in
 * @param operations what a job file says of operations, faces and hands
 * @param stock its wood and the stuff of its templates
 * @param places where a job file says so
 */
record PartOrder(
    String name,
    int quantity,
    Design shape,
    Wishes wishes,
    OperationFile operations,
    StockWishes stock,
    WrittenPlaces places) {

  PartOrder {
    Objects.requireNonNull(name);
    Objects.requireNonNull(shape);
    Objects.requireNonNull(operations);
    Objects.requireNonNull(stock);
    if (quantity < 1) {
      throw new IllegalArgumentException("a part is made at least once");
    }
  }

  /** The same with these grooves for panels and no other. */
  PartOrder grooved(List<EdgeGroove> grooves) {
    return new PartOrder(name, quantity, shape, wishes, operations.with(grooves), stock, places);
  }

  /** The same of another shape. */
  PartOrder of(Design other) {
    return new PartOrder(name, quantity, other, wishes, operations, stock, places);
  }

  /** The other piece of a pair: half of all, with a name and grain of its own. */
  PartOrder otherPiece(String otherName, StockWishes otherStock) {
    return new PartOrder(otherName, quantity / 2, shape, wishes, operations, otherStock, places);
  }

  /** Does some work on this part; what is wrong is told where it was written. */
  <T> T placed(Supplier<T> work) {
    try {
      return work.get();
    } catch (Problem found) {
      throw places.at(found);
    }
  }
}
