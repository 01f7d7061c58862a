/**
 * Reads DXF drawings in ASCII, from R12 to 2018. Start at {@link
 * org.bearingline.outside.dxf.DxfReader}: pairs of group code and value become entities, blocks and
 * layers of a {@link org.bearingline.outside.dxf.DxfFile}, and the walk over what can be seen turns
 * entities into strokes. Meanings of group codes are those of the public DXF reference.
 */
package org.bearingline.outside.dxf;
