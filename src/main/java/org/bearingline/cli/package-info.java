/**
 * The commands: each reads its options into a request, calls {@code job} and prints the answer.
 * {@link org.bearingline.cli.Main} is the door.
 */
package org.bearingline.cli;
