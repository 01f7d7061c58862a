package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.export.pdf.Card;
import org.bearingline.routing.operation.FaceWishes;

/** What a card says where the part's edge does not simply come from a whole plate of its own. */
final class PlateSections {

  private PlateSections() {}

  /** Whose card it is: the part, which piece of a pair, and how many. */
  static String title(WorkedPart worked) {
    int quantity = worked.order().quantity();
    if (worked.way() instanceof PlateWay.TurnedOver other) {
      return other.of() + ", " + other.hand() + " piece" + times(quantity);
    }
    return worked
        .hand()
        .map(hand -> worked.order().name() + ", " + hand + " piece" + times(quantity / 2))
        .orElse(worked.order().name() + times(quantity));
  }

  private static String times(int quantity) {
    return quantity > 1 ? " × " + quantity : "";
  }

  static List<Card.Section> of(WorkedPart worked) {
    List<Card.Section> sections = new ArrayList<>();
    if (worked.way() instanceof PlateWay.TurnedOver other) {
      sections.add(Card.Section.of("Left and right", turnedOver(other)));
    } else if (worked.hand().isPresent()) {
      FaceWishes.Pair pair = worked.order().operations().faces().pair().orElseThrow();
      sections.add(Card.Section.of("Left and right", drawn(worked, pair)));
    }
    if (worked.way() instanceof PlateWay.Shared shared) {
      sections.add(Card.Section.of("Shared template", JobFamilyWords.onCard(shared)));
    }
    if (worked.way() instanceof PlateWay.Short way) {
      sections.add(Card.Section.of("Short template", ShortCard.onCard(way)));
    }
    return sections;
  }

  private static List<String> turnedOver(PlateWay.TurnedOver other) {
    return List.of(
        "The template of "
            + other.of()
            + " makes this piece too: on face A it lies with its side B up, on face B with its side"
            + " A up. The picture shows face A.",
        "The full-size sheets are those of " + other.of() + ".");
  }

  private static List<String> drawn(WorkedPart worked, FaceWishes.Pair pair) {
    return List.of(
        "One template makes both pieces. For this "
            + pair.drawn()
            + " one it lies on face A with its side A up, on face B with its side B up.",
        "For the "
            + pair.mirrored()
            + " one it is the other way round; "
            + OtherPiece.name(worked.order().name(), pair)
            + "-card.pdf shows that piece with its own feed and grain.");
  }
}
