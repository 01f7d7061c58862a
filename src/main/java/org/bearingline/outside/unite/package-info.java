/**
 * Makes one outline of filled shapes that lie over or against each other. Read {@link
 * org.bearingline.outside.unite.Uniting} first.
 */
package org.bearingline.outside.unite;
