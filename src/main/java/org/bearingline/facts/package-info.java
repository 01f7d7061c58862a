/**
 * Facts as data: small tables that stand beside the room that owns them, each row with its source.
 * A broken table is a defect of the program, not of its user, so it fails with an {@link
 * java.lang.IllegalStateException}.
 */
package org.bearingline.facts;
