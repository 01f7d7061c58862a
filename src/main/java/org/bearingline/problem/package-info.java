/**
 * What a user can cause and where: one exception, one place. The lowest room; it imports nothing.
 */
package org.bearingline.problem;
