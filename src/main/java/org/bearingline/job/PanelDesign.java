package org.bearingline.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.part.Part;
import org.bearingline.routing.Fibres;
import org.bearingline.routing.Panel;
import org.bearingline.shape.Design;
import org.bearingline.shape.formula.Scope;
import org.bearingline.shape.formula.Values;

/**
 * A panel of a job, fitted to its frame; no formula names any of it.
 *
 * @param panel the panel
 */
record PanelDesign(Panel panel) implements Design {

  @Override
  public Part part() {
    return panel.part();
  }

  @Override
  public Scope scope(Optional<Units> bareUnits) {
    return new Scope(Map.of(), List.of(), bareUnits);
  }

  @Override
  public Values named() {
    return Values.of(Map.of());
  }

  @Override
  public Map<String, Double> lengths() {
    return Map.of(
        "opening width", panel.opening().width(), "opening height", panel.opening().height());
  }

  @Override
  public Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put("opening width", "");
    settings.put("opening height", "");
    settings.put("fibres", panel.settings().fibres() == Fibres.UPRIGHT ? "upright" : "level");
    return settings;
  }
}
