/**
 * The speed and the truth of offsets, against the JTS buffer of a flattened copy of the same shape.
 * Start it with {@code mvn -Pbench verify}.
 */
package org.bearingline.bench;
