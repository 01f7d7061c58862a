/** Facts of the tools a maker owns; no geometry of the part. */
package org.bearingline.kit;
