/** Files packed into one: zip archives whose bytes depend on their content alone. */
package org.bearingline.archive;
