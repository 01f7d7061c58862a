package org.bearingline.routing.operation;

import java.util.List;

/** Whether pockets and plugs belong together and fit. */
final class InlayCheck {

  private InlayCheck() {}

  static void check(List<Operation> operations) {
    for (Operation operation : operations) {
      if (operation instanceof InlayPlug plug) {
        InlayPocket pocket =
            operations.stream()
                .filter(InlayPocket.class::isInstance)
                .map(InlayPocket.class::cast)
                .filter(one -> one.name().equals(plug.pocket()))
                .findFirst()
                .orElseThrow(
                    () ->
                        plug.problem(
                            plug.name()
                                + ": there is no inlay pocket “"
                                + plug.pocket()
                                + "” for this plug; name one"));
        check(pocket, plug);
      }
    }
  }

  private static void check(InlayPocket pocket, InlayPlug plug) {
    InlayFit fit = InlayFit.of(pocket.tool(), plug.tool());
    if (!fit.fits()) {
      double wanted =
          InlayFit.collarForPocket(pocket.tool().cutter().diameter(), plug.tool()).diameter();
      throw plug.problem(
          plug.name()
              + ": with the "
              + Sentences.mm(pocket.tool().follower().diameter())
              + " "
              + pocket.tool().follower().kind()
              + " for the pocket and the "
              + Sentences.mm(plug.tool().follower().diameter())
              + " "
              + plug.tool().follower().kind()
              + " for the plug, "
              + fit.words()
              + "; cut the pocket with a collar of "
              + Sentences.mm(wanted));
    }
  }
}
