package org.bearingline.routing.family;

import java.util.List;

/**
 * A part that a family's template serves.
 *
 * @param part its name
 * @param settings the positions in which it is routed, at least one
 * @param deviation mm by which its routed edge and the template's differ at most
 * @param sentence how it is laid on the template
 */
public record FamilyMember(String part, List<Setting> settings, double deviation, String sentence) {

  public FamilyMember {
    settings = List.copyOf(settings);
  }

  /** Whether its other face lies up. */
  public boolean isTurnedOver() {
    return settings.stream().anyMatch(setting -> setting.lay().turnsOver());
  }
}
