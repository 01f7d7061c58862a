/**
 * What is to be drawn, full size, without paper and without format: layers that carry a role, and
 * items on them.
 */
package org.bearingline.drawing;
