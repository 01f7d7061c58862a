package org.bearingline.outside.dxf;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.outside.Quoted;

/**
 * What entities that are not read are called.
 *
 * @param one of them
 * @param many of them
 */
record EntityWords(String one, String many) {

  private static final Set<String> READ =
      Set.of("LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE", "SPLINE");

  private static final Map<String, EntityWords> WORDS =
      Map.ofEntries(
          Map.entry("TEXT", new EntityWords("text", "texts")),
          Map.entry("MTEXT", new EntityWords("text", "texts")),
          Map.entry("ATTDEF", new EntityWords("text", "texts")),
          Map.entry("ATTRIB", new EntityWords("text", "texts")),
          Map.entry("DIMENSION", new EntityWords("dimension", "dimensions")),
          Map.entry("LEADER", new EntityWords("leader", "leaders")),
          Map.entry("MULTILEADER", new EntityWords("leader", "leaders")),
          Map.entry("HATCH", new EntityWords("hatch", "hatches")),
          Map.entry("POINT", new EntityWords("point", "points")),
          Map.entry("3DFACE", new EntityWords("face", "faces")),
          Map.entry("SOLID", new EntityWords("filled face", "filled faces")),
          Map.entry("TRACE", new EntityWords("filled face", "filled faces")),
          Map.entry("IMAGE", new EntityWords("image", "images")),
          Map.entry("VIEWPORT", new EntityWords("viewport", "viewports")),
          Map.entry("XLINE", new EntityWords("endless line", "endless lines")),
          Map.entry("RAY", new EntityWords("endless line", "endless lines")),
          Map.entry("MESH", new EntityWords("mesh", "meshes")));

  /** The words for an entity that is not read; empty for one that is. */
  static Optional<EntityWords> of(DxfEntity entity) {
    String kind = entity.kind();
    if (kind.equals("POLYLINE") && (entity.flags(70) & PolylineStrokes.MESH) != 0) {
      return Optional.of(WORDS.get("MESH"));
    }
    if (READ.contains(kind)) {
      return Optional.empty();
    }
    return Optional.of(
        WORDS.getOrDefault(
            kind,
            new EntityWords(
                "entity “" + Quoted.of(kind) + "”", "entities “" + Quoted.of(kind) + "”")));
  }
}
