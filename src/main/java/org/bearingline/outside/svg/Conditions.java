package org.bearingline.outside.svg;

import java.util.Optional;

/**
 * Which child of a {@code switch} is shown (SVG 1.1, section 5.8): the first that needs nothing.
 */
final class Conditions {

  private Conditions() {}

  /** Whether an element may be shown by a reader that speaks English and knows no extension. */
  static boolean hold(SvgElement element) {
    Optional<String> languages = element.attribute("systemLanguage");
    return element.attribute("requiredExtensions").isEmpty()
        && (languages.isEmpty() || languages.get().matches("(?i)(.*,)?\\s*en\\b.*"))
        && !element.isA("foreignObject")
        && !element.name().isEmpty();
  }
}
