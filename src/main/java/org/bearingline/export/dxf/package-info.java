/** DXF for laser and machining shops: true arcs, millimetres, one layer per layer. */
package org.bearingline.export.dxf;
