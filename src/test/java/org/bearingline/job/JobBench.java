package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.problem.Problem;

/** Works out job files written into a folder. */
record JobBench(Path folder) {

  /** A plain board, 24 × 16 in, its four sides of the given kind. */
  JobBench withBoard(String kind) throws IOException {
    return withShape(
        "board",
        """
          - start: [0, 0]
          - line: {right: 24in, edge: KIND}
          - line: {up: 16in, edge: KIND}
          - line: {left: 24in, edge: KIND}
          - close: KIND
        """
            .replace("KIND", kind));
  }

  /** A shape of a fixed outline. */
  JobBench withShape(String name, String steps) throws IOException {
    Files.writeString(
        folder.resolve(name + ".yaml"),
        "name: " + name + "\nabout: A trial piece\noutline:\n" + steps);
    return this;
  }

  JobBench with(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
    return this;
  }

  WorkedPart worked(String job) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), job);
    PartOrder order = Source.orders(file.toString(), Wishes.NONE).get(0);
    return order.placed(() -> WorkedPart.of(order));
  }

  /** The one sentence of a refusal, with its file, line and column. */
  String refusal(String job) {
    return assertThrows(Problem.class, () -> worked(job)).spoken();
  }
}
