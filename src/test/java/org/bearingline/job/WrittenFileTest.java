package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WrittenFileTest {

  private static final String JOB =
      """
      job: shelf
      kit: my-kit.yaml
      margin: 5mm
      printed: 99.4,99.8
      parts:
        - name: board
          shape: board.yaml
          bit: 1/2in
      """;

  private static final String BOARD =
      """
      name: board
      about: a board
      outline:
        - start: [0mm, 0mm]
        - line: {right: 200mm}
        - line: {up: 50mm}
        - line: {left: 200mm}
        - close: routed
      """;

  private static final String KIT = "bits: [1/2in]\n";

  @TempDir Path folder;

  static Wishes nothing() {
    return Wishes.NONE;
  }

  @Test
  void aJobInHandAsksForTheSameAsTheJobOnTheDisk() throws IOException {
    Map<String, String> texts = Map.of("job.yaml", JOB, "board.yaml", BOARD, "my-kit.yaml", KIT);
    for (Map.Entry<String, String> text : texts.entrySet()) {
      Files.writeString(folder.resolve(text.getKey()), text.getValue());
    }
    PartOrder disk = Source.orders(folder.resolve("job.yaml").toString(), nothing()).get(0);
    PartOrder hand =
        Source.asked(new WrittenFile.InHand("job.yaml", texts), nothing()).orders().get(0);
    assertEquals(disk.shape().part().outline(), hand.shape().part().outline());
    assertEquals(disk.wishes().bits(), hand.wishes().bits());
    assertEquals(OptionalDouble.of(5), hand.wishes().margin());
    assertEquals(Optional.of("99.4,99.8"), hand.wishes().printed());
    assertEquals(5, Settings.paper(hand.wishes()).margins().foot());
    assertEquals("my-kit.yaml", new KitOnDemand(hand.wishes()).get().name());
  }

  @Test
  void aJobInHandNeverReachesForTheDisk() throws IOException {
    Path board = Files.writeString(folder.resolve("board.yaml"), BOARD);
    for (String name : List.of(board.toString(), "../board.yaml", "board.yaml")) {
      Map<String, String> texts = Map.of("job.yaml", JOB.replace("board.yaml", name));
      Problem refused =
          assertThrows(
              Problem.class,
              () -> Source.asked(new WrittenFile.InHand("job.yaml", texts), nothing()));
      assertEquals(Place.file(name), refused.place());
      assertTrue(refused.getMessage().contains("did not come with it"), refused.getMessage());
    }
  }
}
