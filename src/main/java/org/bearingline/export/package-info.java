/**
 * Files from a drawing. This room holds what all formats share: the look of each layer ({@link
 * org.bearingline.export.Style}), the plain figures a drawing comes down to ({@link
 * org.bearingline.export.Plot}) and the staging folder that puts files in place all at once. One
 * room below it for each format; none of them knows another.
 */
package org.bearingline.export;
