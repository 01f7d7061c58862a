package org.bearingline.job;

import java.util.function.Supplier;
import org.bearingline.kit.Kit;

/**
 * The kit of one request, read when it is first looked into: a reach with a named bit needs none. A
 * kit file that the maker names is read at once, so that its mistakes are always told.
 */
final class KitOnDemand implements Supplier<Kit> {

  private Kit kit;

  KitOnDemand(Wishes wishes) {
    wishes.kit().ifPresent(file -> kit = Kit.read(file.name(), file.text()));
  }

  @Override
  public Kit get() {
    if (kit == null) {
      kit = Kit.usual();
    }
    return kit;
  }
}
